/** Characters of a text, from one offset to another, and what is put in their place. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly put: string;
}

/** The text with some changes, none of which overlap; those at one offset are made in the order given. */
export const spliced = (text: string, splices: readonly Splice[]): string => {
  let made = '';
  let done = 0;
  for (const { from, to, put } of splices.toSorted((a, b) => a.from - b.from || a.to - b.to)) {
    made += text.slice(done, from) + put;
    done = to;
  }
  return made + text.slice(done);
};

/** Where the line of an offset begins. */
export const lineStart = (text: string, offset: number): number => text.lastIndexOf('\n', offset - 1) + 1;

/** Where the line of an offset ends, before its line break. */
export const lineEnd = (text: string, offset: number): number => {
  const end = text.indexOf('\n', offset);
  if (end < 0) return text.length;
  return end > offset && text[end - 1] === '\r' ? end - 1 : end;
};

/** The line break that the text is written with. */
export const lineBreakOf = (text: string): string => /\r?\n/u.exec(text)?.[0] ?? '\n';

/** Whether a piece of text has blanks in it alone, on one line. */
export const isBlank = (piece: string): boolean => /^[ \t]*$/u.test(piece);

/** Whether nothing but blanks is before an offset on its line. */
export const startsLine = (text: string, offset: number): boolean =>
  isBlank(text.slice(lineStart(text, offset), offset));

/** Whether what follows an offset on its line is nothing but blanks and a comment. */
export const endsLine = (text: string, offset: number): boolean =>
  /^[ \t]*(?:#.*)?$/u.test(text.slice(offset, lineEnd(text, offset)));

/** An offset after the blanks that follow it, on the same line. */
export const afterBlanks = (text: string, offset: number): number => {
  let at = offset;
  while (text[at] === ' ' || text[at] === '\t') at++;
  return at;
};

/** An offset before the blanks that lead to it, on the same line. */
export const beforeBlanks = (text: string, offset: number): number => {
  let at = offset;
  while (text[at - 1] === ' ' || text[at - 1] === '\t') at--;
  return at;
};

/** Takes out whole lines, from the one of an offset to the one of another; the line break before the last of a text. */
export const withoutLines = (text: string, first: number, last: number): Splice => {
  const [from, to] = [lineStart(text, first), lineEnd(text, last)];
  const next = text.indexOf('\n', to) + 1;
  return next > 0
    ? { from, to: next, put: '' }
    : { from: text[from - 2] === '\r' ? from - 2 : Math.max(0, from - 1), to, put: '' };
};
