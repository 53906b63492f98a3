/**
 * Breaks text at its spaces into lines that fit; a word too long to fit has a line of its own.
 * @param indent what every line but the first begins with
 */
export const wrapText = (text: string, fits: (line: string) => boolean, indent = ''): string[] => {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = `${last} ${word}`;
    if (last === undefined) lines.push(word);
    else if (fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(`${indent}${word}`);
  }
  return lines;
};
