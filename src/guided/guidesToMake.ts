import type { Unit } from '../units/unit.ts';
import type { GuideTitles } from './drawGuide.ts';
import type { GuideBoard } from './guideBoard.ts';

/** The guides of one corner. */
export interface CornerGuides {
  /** The drawer and its corner, or the joint that belongs to none. */
  readonly item: string;
  /** What the pieces' names begin with, safe as a file name and its own. */
  readonly stem: string;
  readonly guides: readonly GuideBoard[];
}

/** A guide with what stands on it. */
export interface NamedGuide {
  readonly guide: GuideBoard;
  readonly titles: GuideTitles;
}

/** Every guide to make, equal ones of several corners only once, named for them all. */
export const guidesToMake = (corners: readonly CornerGuides[], units: Unit): NamedGuide[] => {
  const byShape = new Map<string, NamedGuide>();
  for (const { item, stem, guides } of corners)
    for (const guide of guides) {
      const key = JSON.stringify(guide);
      const equal = byShape.get(key)?.titles;
      const titles = equal ? { ...equal, item: `${equal.item}, ${item}` } : { item, stem, units };
      byShape.set(key, { guide, titles });
    }
  return [...byShape.values()];
};
