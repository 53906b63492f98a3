/** How the standard names a character that cannot be shown: `U+001B`. */
export const unicode = (code: number): string => `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
