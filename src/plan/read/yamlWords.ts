import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { closing, openAt } from './openAt.ts';

type Words = Omit<Complaint, 'at'>;

/** What is wrong with a text, and the offset at which it can be put right. */
interface Fault {
  readonly words: Words;
  readonly offset: number;
}

/** The parser's messages, and the same in plain words for those who do not know YAML. */
const WORDS: readonly (readonly [reason: RegExp, words: Words])[] = [
  [
    /non-printable/u,
    { says: say`here is a character that cannot be seen`, remedy: say`delete it and type it again` },
  ],
  [/tab characters/u, { says: say`this line is indented with a tab`, remedy: say`indent it with blanks` }],
  [/^missed comma/u, { says: say`a comma is missing before this` }],
  [/found ','$/u, { says: say`there is nothing between two commas` }],
  [/whitespace character is expected after the key/u, { says: say`a blank is missing after the colon` }],
  [
    /escape sequence|hexadecimal/u,
    { says: say`inside double quotes a backslash begins a special sign`, remedy: say`use single quotes` },
  ],
  [/^nesting exceeded/u, { says: say`this is nested too deeply; no plan goes down more than a few levels` }],
];

/** For what the parser calls bad indentation: the words by the character at which it stopped. */
const wordsAt = (reason: string, text: string, offset: number): Words => {
  if (!/^(?:bad|deficient) indentation|document separator/u.test(reason))
    return { says: say`this is not YAML that can be read: ${reason}` };
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

/** What the parser notices only at a later line, or at the end of the text: at the sign that was left open. */
const leftOpen = (text: string, at: number): Fault | undefined => {
  const opened = openAt(text, at);
  if (opened === undefined) return undefined;
  const { sign, offset } = opened;
  const what = sign === '{' || sign === '[' ? 'bracket' : 'quote';
  const rest = text.slice(at).trim() === '' ? say`` : say`, or indent the lines below that belong inside it`;
  return {
    offset,
    words: {
      says: say`the ${what} ${sign} that is opened here is not closed`,
      remedy: say`add ${what === 'quote' ? 'the closing quote' : closing(opened)}${rest}`,
    },
  };
};

/** The words of a line, but for what a note or a dash of a list takes. */
const WORDS_OF_LINE = /^[ \t]*(?:-[ \t]+)*([^\s#][^\n\r]*)$/gmu;

/**
 * The offset of the words that lack a colon: in the line of an offset, or the line above it that is neither empty nor a
 * note. Undefined where neither has such words.
 */
const lineWithoutColon = (text: string, offset: number): number | undefined => {
  const rest = text.slice(offset).search(/[\n\r]/u);
  const lines = [...text.slice(0, rest < 0 ? text.length : offset + rest).matchAll(WORDS_OF_LINE)].slice(-2);
  const line = lines.findLast(([, words = '']) => /^\p{L}(?:[^{}[\]"',:#]|:(?=\S))*(?:#|$)/u.test(words));
  return line && line.index + line[0].length - (line[1] ?? '').length;
};

/** Words that lack a colon are noticed where the next one stands, which may be lines below. */
const noColon = (text: string, at: number): Fault | undefined => {
  const offset = lineWithoutColon(text, at);
  return offset === undefined
    ? undefined
    : {
        offset,
        words: {
          says: say`a colon is missing in this line`,
          remedy: say`write key: value, with a blank after the colon`,
        },
      };
};

/** @param reason the parser's message about the given offset in the text */
export const inPlainWords = (reason: string, text: string, offset: number): Fault => {
  const known = WORDS.find(([pattern]) => pattern.test(reason));
  if (known !== undefined) return { words: known[1], offset };
  const isOpen = /^deficient indentation|end of the (?:stream|document) within/u.test(reason);
  const isShort =
    /^expected ':'|multiline key/u.test(reason) ||
    (/^bad indentation|document separator/u.test(reason) && text.charAt(offset) !== '-');
  const before = isOpen ? leftOpen(text, offset) : isShort ? noColon(text, offset) : undefined;
  return before ?? { words: wordsAt(reason, text, offset), offset };
};
