import type { Browser } from 'playwright-core';

export const launchChromium: () => Promise<Browser>;
