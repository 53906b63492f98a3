import type { CornerEnd } from '../../drawer/cornerLetters.ts';
import type { GuideBoard } from '../../router/guide/guideBoard.ts';
import type { Notation } from '../../units/notation.ts';
import { groupNames, type ShortName } from '../../units/shortNames.ts';
import { REFERENCE_EDGE } from '../template/titles.ts';
import type { GuideTitles } from './drawGuide.ts';

/** The guides of one corner. */
export interface CornerGuides {
  /** The drawer and its corner, or the single corner. */
  readonly item: string;
  /** Beginning of the pieces' names, unique and safe as a file name. */
  readonly stem: string;
  /** The front or back corners of a drawer; a single corner has the letters of front corners. */
  readonly end: CornerEnd;
  /** The edge on a guide's edge line where it is not the reference edge, with a shorter wording. */
  readonly edges?: Partial<Readonly<Record<GuideBoard['board'], GuideTitles['edge']>>>;
  /** The edge on the line at the other edge where it is not the board's upper edge. */
  readonly uppers?: Partial<Readonly<Record<GuideBoard['board'], string>>>;
  /** Depth of the rebate whose shoulders are the ends of the pin board, mm. */
  readonly rebate?: number;
  readonly guides: readonly GuideBoard[];
}

/** A guide with its text. */
export interface NamedGuide {
  readonly guide: GuideBoard;
  readonly titles: GuideTitles;
}

/** Every guide to make; equal guides of several corners are one guide named for them all. */
export const guidesToMake = (corners: readonly CornerGuides[], units: Notation): NamedGuide[] => {
  const byShape = new Map<
    string,
    { guide: GuideBoard; titles: Omit<GuideTitles, Exclude<keyof ShortName, 'names'>> }
  >();
  for (const { item, stem, end, edges, uppers, rebate, guides } of corners)
    for (const guide of guides) {
      const edge = edges?.[guide.board] ?? REFERENCE_EDGE;
      const upper = uppers?.[guide.board] ?? 'upper edge';
      const shoulder = guide.board === 'pin' && rebate !== undefined ? { rebate } : {};
      const key = JSON.stringify([guide, edge, upper, shoulder]);
      const equal = byShape.get(key)?.titles;
      const titles = equal
        ? { ...equal, names: [...equal.names, item], ends: [...new Set([...equal.ends, end])] }
        : { names: [item], stem, units, ends: [end], edge, upper, ...shoulder };
      byShape.set(key, { guide, titles });
    }
  const made = [...byShape.values()];
  const nameOf = groupNames(
    corners.map(({ item }) => item),
    made.map(({ titles }) => titles.names),
    // Not the numbers of templates.
    'guide',
  );
  return made.map(({ guide, titles }) => ({ guide, titles: { ...titles, ...nameOf(titles.names) } }));
};
