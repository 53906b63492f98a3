import type { CornerEnd } from '../../drawer/cornerLetters.ts';
import type { GuideBoard } from '../../router/guide/guideBoard.ts';
import type { Notation } from '../../units/notation.ts';
import { REFERENCE_EDGE } from '../template/titles.ts';
import type { GuideTitles } from './drawGuide.ts';

/** The guides of one corner. */
export interface CornerGuides {
  /** The drawer and its corner, or the joint that belongs to none. */
  readonly item: string;
  /** What the pieces' names begin with, safe as a file name and its own. */
  readonly stem: string;
  /** The front corners of a drawer, or its back ones; a joint that belongs to none has the letters of front corners. */
  readonly end: CornerEnd;
  /** What is laid on a guide's edge line where that is not the reference edge itself, with a shorter word for it. */
  readonly edges?: Partial<Readonly<Record<GuideBoard['board'], GuideTitles['edge']>>>;
  /** What lies on the line at the other edge where that is not the board's own upper edge. */
  readonly uppers?: Partial<Readonly<Record<GuideBoard['board'], string>>>;
  /** How deep the rebate is whose shoulders are the ends of the pin board. */
  readonly rebate?: number;
  readonly guides: readonly GuideBoard[];
}

/** A guide with what stands on it. */
export interface NamedGuide {
  readonly guide: GuideBoard;
  readonly titles: GuideTitles;
}

/** Every guide to make, equal ones of several corners only once, named for them all. */
export const guidesToMake = (corners: readonly CornerGuides[], units: Notation): NamedGuide[] => {
  const byShape = new Map<string, NamedGuide>();
  for (const { item, stem, end, edges, uppers, rebate, guides } of corners)
    for (const guide of guides) {
      const edge = edges?.[guide.board] ?? REFERENCE_EDGE;
      const upper = uppers?.[guide.board] ?? 'upper edge';
      const shoulder = guide.board === 'pin' && rebate !== undefined ? { rebate } : {};
      const key = JSON.stringify([guide, edge, upper, shoulder]);
      const equal = byShape.get(key)?.titles;
      const titles = equal
        ? { ...equal, item: `${equal.item}, ${item}`, ends: [...new Set([...equal.ends, end])] }
        : { item, stem, units, ends: [end], edge, upper, ...shoulder };
      byShape.set(key, { guide, titles });
    }
  return [...byShape.values()];
};
