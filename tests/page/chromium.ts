import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { launchChromium } from './launchChromium.mjs';

/** The page in a real browser, opened as a file. */
export interface Visit {
  readonly browser: Browser;
  /** Opens the page anew, as a visitor who has never been there, without a network; errors in it fail the test. */
  readonly open: (options?: BrowserContextOptions & { readonly hash?: string }) => Promise<Page>;
  readonly close: () => Promise<void>;
}

let running: Promise<Browser> | undefined;

/** One for all files of a thread, as each visitor has a context of its own; it ends with the thread, whose pipe it reads. */
const browserOfThread = (): Promise<Browser> => {
  running ??= launchChromium().then((browser) =>
    browser.on('disconnected', () => {
      running = undefined;
    }),
  );
  return running;
};

export const visit = async (): Promise<Visit> => {
  const address = pathToFileURL('dist/halfpin.html').href;
  const browser = await browserOfThread();
  const contexts: BrowserContext[] = [];
  const faults: string[] = [];
  return {
    browser,
    open: async ({ hash = '', ...options } = {}) => {
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
      // On a busy machine a click may take long to arrive.
      context.setDefaultTimeout(120_000);
      contexts.push(context);
      await context.setOffline(true);
      context.on('request', (request) => {
        if (!/^(file|data|blob):/u.test(request.url())) faults.push(`asked for ${request.url()}`);
      });
      const page = await context.newPage();
      page.on('pageerror', (error) => faults.push(String(error)));
      page.on('console', (message) => {
        if (message.type() === 'error') faults.push(message.text());
      });
      await page.goto(address + hash);
      return page;
    },
    close: async () => {
      await Promise.all(contexts.map((context) => context.close()));
      if (faults.length > 0) throw new Error(faults.join('\n'));
    },
  };
};
