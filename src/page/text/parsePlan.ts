import { type Document, parseDocument } from 'yaml';

/** A plan's text with the place of every sign in it. */
export const parsePlan = (text: string): Document => parseDocument(text, { keepSourceTokens: true });
