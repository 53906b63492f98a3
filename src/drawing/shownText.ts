/**
 * A text as it is drawn, the same in every file and every measurement: accents joined to their letters (NFC); tabs, line
 * ends and no-break spaces as spaces; other control characters, noncharacters and halves of surrogate pairs as U+FFFD.
 */
export const shownText = (text: string): string =>
  // Most texts have only letters that stay as they are; the replacements would take most of the time.
  /^[ -~\u00A1-\u02FF\u2010-\u2027\u2190-\u2193]*$/u.test(text)
    ? text
    : text
        .normalize('NFC')
        .replace(/[\t-\r\u0085\u00A0\u2028\u2029]/gu, ' ')
        .replace(/[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu, '\uFFFD');
