/** The page as text, and the part of it that is read before sheets are asked for. */
export const buildPage: () => Promise<{ readonly html: string; readonly first: string }>;
