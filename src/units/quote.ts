/** What no line may hold as it is: terminals act on it, or it turns the reading direction of what follows. */
const UNSEEN = /[\p{Cc}\u2028-\u202E\u2066-\u2069]/gu;

const MOST_SHOWN = 40;

/** What the user wrote, in quotes, cut short where it is long and with control characters made visible. */
export const quote = (text: string): string => {
  // A letter has one or two units of the text, so that these hold one letter more than is shown.
  const letters = [...text.slice(0, 2 * (MOST_SHOWN + 1))];
  const shown = JSON.stringify(letters.slice(0, MOST_SHOWN).join('')).replace(
    UNSEEN,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return letters.length > MOST_SHOWN ? `${shown.slice(0, -1)}…"` : shown;
};

/** How the standard names a character that cannot be shown: `U+001B`. */
export const unicode = (code: number): string => `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
