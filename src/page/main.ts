import { startApp } from './app.ts';

startApp();
