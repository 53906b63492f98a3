import * as z from 'zod';
import { startApp } from './app.ts';

// The page lets no script be made at run time, so the checker of plans must not try.
z.config({ jitless: true });

startApp();
