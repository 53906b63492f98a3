/** Most characters of a name in a file name. */
const MOST = 40;

/**
 * A name as the beginning of a file name that every system accepts: letters and digits of any language in lower case,
 * hyphens for all else. An empty name becomes `piece`. What follows in a file name keeps it off reserved device names.
 */
export const fileStem = (name: string): string => {
  const plain = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-');
  return (
    [...plain]
      .slice(0, MOST)
      .join('')
      .replace(/^-+|-+$/gu, '') || 'piece'
  );
};

/** A function that gives each name a stem of its own, numbered where two names have the same stem. */
export const stems = (): ((name: string) => string) => {
  const taken = new Set<string>();
  return (name) => {
    const stem = fileStem(name);
    let own = stem;
    for (let i = 2; taken.has(own); i++) own = `${stem}-${i}`;
    taken.add(own);
    return own;
  };
};
