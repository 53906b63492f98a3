/** A bracket or quote that is opened and not closed. */
export interface Opened {
  readonly sign: string;
  readonly offset: number;
}

const CLOSES: Readonly<Record<string, string>> = { '{': '}', '[': ']', '"': '"', "'": "'" };

/** The sign that closes one that is opened. */
export const closing = ({ sign }: Opened): string => CLOSES[sign] ?? '';

const isQuote = (sign: string | undefined): boolean => sign === '"' || sign === "'";

/** The innermost bracket or quote that stands open at an offset of a YAML text; undefined where none does. */
export const openAt = (text: string, end: number): Opened | undefined => {
  const open: Opened[] = [];
  // Only where a value may begin does a quote open; elsewhere it is a sign like any other, as in `Maker's chest`.
  let begins = true;
  let isNote = false;
  let before = '\n';
  for (let offset = 0; offset < end; offset++) {
    const sign = text.charAt(offset);
    const last = open.at(-1);
    const isInside = last !== undefined;
    if (sign === '\n' || sign === '\r') {
      begins ||= !isQuote(last?.sign);
      isNote = false;
    } else if (isNote) continue;
    else if (isQuote(last?.sign)) {
      // A sign that is escaped: \" or ''.
      if (last?.sign === '"' ? sign === '\\' : text.startsWith("''", offset)) offset++;
      else if (sign === last?.sign) open.pop();
      begins = false;
    } else if (sign === '#' && /\s/u.test(before)) isNote = true;
    else if (last !== undefined && sign === closing(last)) {
      open.pop();
      begins = false;
    } else if (CLOSES[sign] !== undefined && (begins || (isInside && !isQuote(sign)))) {
      open.push({ sign, offset });
      begins = true;
    } else if (/\s/u.test(sign)) begins ||= '-:?'.includes(before);
    else begins = isInside && (sign === ',' || sign === ':');
    before = sign;
  }
  return open.at(-1);
};
