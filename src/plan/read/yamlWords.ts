import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';

type Words = Omit<Complaint, 'at'>;

const UNBALANCED: Words = {
  says: say`a bracket or a quote that is opened above is not closed, or this line should be indented further`,
};
const NO_COLON: Words = {
  says: say`a colon is missing, in this line or the one above`,
  remedy: say`write key: value, with a blank after the colon`,
};

/** The parser's messages, and the same in plain words for those who do not know YAML. */
const WORDS: readonly (readonly [reason: RegExp, words: Words])[] = [
  [
    /non-printable/u,
    { says: say`here is a character that cannot be seen`, remedy: say`delete it and type it again` },
  ],
  [/tab characters/u, { says: say`this line is indented with a tab`, remedy: say`indent it with blanks` }],
  [
    /end of the (?:stream|document) within a (?:single|double) quoted/u,
    { says: say`this quote is not closed`, remedy: say`add the closing quote` },
  ],
  [
    /end of the stream within a flow/u,
    { says: say`a bracket { or [ is not closed`, remedy: say`add the closing bracket` },
  ],
  [/^deficient indentation/u, UNBALANCED],
  [/^missed comma/u, { says: say`a comma is missing before this` }],
  [/found ','$/u, { says: say`there is nothing between two commas` }],
  [/^expected ':'|multiline key/u, NO_COLON],
  [/whitespace character is expected after the key/u, { says: say`a blank is missing after the colon` }],
  [
    /escape sequence|hexadecimal/u,
    { says: say`inside double quotes a backslash begins a special sign`, remedy: say`use single quotes` },
  ],
  [/^nesting exceeded/u, { says: say`this is nested too deeply; no plan goes down more than a few levels` }],
];

/** For what the parser calls bad indentation: the words by the character at which it stopped. */
const wordsAt = (text: string, offset: number): Words => {
  const sign = text.charAt(offset);
  const before = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
  if (sign === ':' && /^\s+\S+$/u.test(before))
    return {
      says: say`this line is indented further than the one above, which has a value already`,
      remedy: say`begin both in the same column`,
    };
  if (sign === ':')
    return {
      says: say`there is a colon with a blank after it inside a value`,
      remedy: say`put the value in quotes`,
    };
  if (sign === '}' || sign === ']')
    return { says: say`the bracket ${sign} closes nothing`, remedy: say`remove it` };
  if (/["']\s*$/u.test(before)) return { says: say`something follows after the closing quote` };
  if ('@`%&*!|>'.includes(sign) && sign !== '')
    return { says: say`a value cannot begin with ${sign}`, remedy: say`put the value in quotes` };
  return {
    says: say`this does not fit what is above; lines that belong together begin in the same column`,
  };
};

/** @param reason the parser's message about the given offset in the text */
export const inPlainWords = (reason: string, text: string, offset: number): Words => {
  const known = WORDS.find(([pattern]) => pattern.test(reason));
  if (known !== undefined) return known[1];
  if (/^bad indentation|document separator/u.test(reason)) return wordsAt(text, offset);
  return { says: say`this is not YAML that can be read: ${reason}` };
};
