import { startApp } from './app.ts';
import { pageParts } from './browser/pageParts.ts';

// Where the build looks for it.
Object.assign(globalThis, { pageParts });

startApp();
