import { chromium } from 'playwright-core';

/**
 * Starts Debian's Chromium where there is no screen and no network.
 * @param more further arguments
 */
export const launchChromium = (...more) =>
  chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      ...more,
    ],
  });
