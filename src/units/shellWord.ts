/** Text as a shell reads it as one word. */
export const shellWord = (text: string): string =>
  /[^\p{L}\p{M}\p{N},./_-]/u.test(text) ? `"${text.replace(/["\\$`]/gu, '\\$&')}"` : text;
