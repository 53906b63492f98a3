/** What an edit of a measure changes that drawers may share. */
export interface Scope {
  /** Every drawer, those with a value of their own too, or the selected one alone. */
  readonly drawers: 'all' | 'this';
  /** Only the corners that are shown, front or back, or both. */
  readonly ends: 'shown' | 'both';
}

/** An edit goes where one looks, at every drawer. */
export const FIRST_SCOPE: Scope = { drawers: 'all', ends: 'shown' };
