import { type Document, parseDocument } from 'yaml';

let last: { readonly text: string; readonly plan: Document } | undefined;

/**
 * A plan's text with the place of every sign in it. The last one is remembered, as every move of a drag edits the same
 * text; it is to be read only.
 */
export const parsePlan = (text: string): Document => {
  if (last?.text !== text) last = { text, plan: parseDocument(text, { keepSourceTokens: true }) };
  return last.plan;
};
