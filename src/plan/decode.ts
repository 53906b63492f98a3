import type { Phrase } from '../units/phrase.ts';
import { say } from '../units/phrase.ts';

/** The largest plan that is read, in bytes: some 100,000 drawers. */
export const LARGEST_PLAN = 20e6;

/** A plan's text, or why the bytes are none and at which offset of what could be read. */
export type Decoded =
  | { readonly ok: true; readonly text: string }
  | {
      readonly ok: false;
      readonly text: string;
      readonly offset: number;
      readonly says: Phrase;
      readonly hint?: Phrase;
    };

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROL = /[\0-\x08\x0b\x0c\x0e-\x1f\x7f]/u;
const NOT_TEXT = say`this is not text, so it is no plan: a plan is written in YAML or JSON`;
const START = say`the plan that "halfpin start" writes`;

/** Reads bytes as the UTF-8 text they must be. */
export const decode = (given: Uint8Array | string): Decoded => {
  if (given.length > LARGEST_PLAN)
    return {
      ok: false,
      text: '',
      offset: 0,
      says: say`the plan is ${megabytes(given.length)} MB long; a plan may have up to ${megabytes(LARGEST_PLAN)} MB`,
      hint: say`several plans, one for each piece of furniture`,
    };
  if (typeof given === 'string') return judge(given.replace(/^\uFEFF/u, ''));
  if ((given[0] === 0xff && given[1] === 0xfe) || (given[0] === 0xfe && given[1] === 0xff))
    return {
      ok: false,
      text: '',
      offset: 0,
      says: say`this text is saved as UTF-16; a plan must be UTF-8`,
      hint: say`saving it again as UTF-8`,
    };
  try {
    return judge(new TextDecoder('utf-8', { fatal: true }).decode(given));
  } catch {
    const text = new TextDecoder('utf-8').decode(given);
    const broken = text.indexOf('\uFFFD');
    const controlled = text.search(CONTROL);
    if (controlled >= 0) return { ok: false, text: '', offset: 0, says: NOT_TEXT, hint: START };
    return {
      ok: false,
      text,
      offset: broken,
      says: say`here is a letter that is not UTF-8, as a plan must be`,
      hint: say`saving it again as UTF-8`,
    };
  }
};

const megabytes = (bytes: number): string => String(Math.round(bytes / 1e5) / 10);

const judge = (text: string): Decoded => {
  if (text.trim() === '') return { ok: false, text, offset: 0, says: say`the plan is empty`, hint: START };
  const offset = text.search(CONTROL);
  if (offset < 0) return { ok: true, text };
  const code = text.charCodeAt(offset);
  if (code === 0) return { ok: false, text: '', offset: 0, says: NOT_TEXT, hint: START };
  return {
    ok: false,
    text,
    offset,
    says: say`here is a character that cannot be seen (U+${code.toString(16).toUpperCase().padStart(4, '0')})`,
    hint: say`deleting it and typing it anew`,
  };
};
