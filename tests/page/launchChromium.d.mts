import type { Browser } from 'playwright-core';

export const launchChromium: (...more: readonly string[]) => Promise<Browser>;
