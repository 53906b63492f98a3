import * as z from 'zod';
import { startApp } from './app.ts';

// The page's security policy forbids code made at run time, so zod must not try to compile its schemas.
z.config({ jitless: true });

startApp();
