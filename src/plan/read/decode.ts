import { type Phrase, say } from '../../units/phrase.ts';
import { unicode } from '../../units/quote.ts';
import { BEGIN_A_PLAN } from './planComplaint.ts';

/** The largest plan that is read, in bytes: ten times what 2,000 drawers take, as reading needs much more memory. */
const LARGEST_PLAN = 4e6;

/** A plan's text, or why the bytes are no text, and the offset in what could be decoded. */
export type Decoded = { readonly ok: true; readonly text: string } | ({ readonly ok: false } & Undecodable);

interface Undecodable {
  readonly text: string;
  readonly offset: number;
  readonly says: Phrase;
  readonly remedy: Phrase;
}

/** Decodes UTF-8; refuses other encodings, binary files, control characters and more than 4 MB. */
export const decode = (given: Uint8Array | string): Decoded => {
  if (given.length > LARGEST_PLAN)
    return undecodable({
      says: say`the plan is ${megabytes(given.length)} MB long; it may have up to ${megabytes(LARGEST_PLAN)} MB`,
      remedy: say`divide it into several plans`,
    });
  if (typeof given === 'string') return checkCharacters(given.replace(/^\uFEFF/u, ''));
  if ((given[0] === 0xff && given[1] === 0xfe) || (given[0] === 0xfe && given[1] === 0xff))
    return undecodable({ says: say`this text is saved as UTF-16; a plan must be UTF-8`, remedy: SAVE_AGAIN });
  try {
    return checkCharacters(new TextDecoder('utf-8', { fatal: true }).decode(given));
  } catch {
    const text = new TextDecoder('utf-8').decode(given);
    if (CONTROL.test(text)) return undecodable(BINARY);
    return undecodable({
      text,
      offset: text.indexOf('\uFFFD'),
      says: say`here is a letter that is not UTF-8, as a plan must be`,
      remedy: SAVE_AGAIN,
    });
  }
};

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROL = /[\0-\x08\x0b\x0c\x0e-\x1f\x7f]/u;
const SAVE_AGAIN = say`save it again as UTF-8`;
const BINARY = {
  says: say`this is not text, so it is no plan: a plan is written in YAML or JSON`,
  remedy: BEGIN_A_PLAN,
};

const undecodable = (why: Partial<Undecodable> & Pick<Undecodable, 'says' | 'remedy'>): Decoded => ({
  ok: false,
  text: '',
  offset: 0,
  ...why,
});

const megabytes = (bytes: number): string => String(Math.round(bytes / 1e5) / 10);

const checkCharacters = (text: string): Decoded => {
  const offset = text.search(CONTROL);
  if (offset < 0) return { ok: true, text };
  const code = text.charCodeAt(offset);
  if (code === 0) return undecodable(BINARY);
  return undecodable({
    text,
    offset,
    says: say`here is a character that cannot be seen (${unicode(code)})`,
    remedy: say`delete it and type it again`,
  });
};
