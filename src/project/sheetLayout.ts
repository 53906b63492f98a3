import { IDENTITY } from '../drawing/affine.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Placed } from '../drawing/printPage.ts';
import type { Piece } from '../paper/piece.ts';
import { DEFAULT_MARGIN, type Size } from '../paper/printable.ts';
import type { Layout, LeadingPages } from '../paper/sheets.ts';
import type { Project } from './project.ts';
import type { SheetOptions } from './sheetsOf.ts';

/** The layout of pieces, or of leading pages alone, on the paper of some sheets. */
export const layoutOf = (
  { name, units }: Pick<Project, 'name' | 'units'>,
  { paper, margin = DEFAULT_MARGIN, correction }: SheetOptions,
  leading: LeadingPages,
  pieces: readonly Piece[] = [],
): Layout => ({
  planName: name,
  unit: units,
  paper,
  margin,
  leading,
  pieces,
  ...(correction && { correction }),
});

/** A page that holds one drawing. */
export const alone = (drawing: Drawing): Placed[] => [{ drawing, at: IDENTITY }];

/** Leading pages from drawings that each fill a page. */
export const asLeading =
  (draw: (area: Size) => readonly Drawing[]): LeadingPages =>
  (area) => {
    const pages = draw(area);
    return [{ count: pages.length, draw: () => pages.map(alone) }];
  };
