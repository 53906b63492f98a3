import type { Page } from 'playwright-core';

/** Watches how long a page is busy without a pause; what is returned tells the longest so far, in ms. */
export declare const watchTasks: (page: Page) => Promise<() => Promise<number>>;
