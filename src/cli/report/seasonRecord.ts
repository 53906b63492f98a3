import type { GapSeason, Gaps } from '../../drawer/gaps.ts';
import type { Complaint } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import type { Climate } from '../../wood/climate.ts';
import { SOURCE_NOTES } from '../../wood/species.ts';
import type { SeasonedDrawer } from './seasonText.ts';

/** What the year does to a set, for other programs: lengths in mm, moisture contents in percent. */
export const seasonRecord = (
  { making, driest, dampest }: Climate,
  drawers: readonly SeasonedDrawer[],
  advice: readonly Complaint[],
  units: Notation,
) => ({
  climate: { making: { mc: making }, driest: { mc: driest }, dampest: { mc: dampest } },
  drawers: drawers.map(({ drawer: { spec, sizes }, season: { parts, gaps, bottom, corners } }) => ({
    name: spec.name,
    count: spec.count,
    height: sizes.height,
    gaps: gaps ? gapsRecord(gaps) : null,
    parts: parts.map(({ stock, ...part }) => ({
      ...part,
      species: stock === null ? null : stock.wood.name,
      grain: stock === null ? null : stock.cut,
      source: stock === null ? null : SOURCE_NOTES[stock.wood.source],
    })),
    bottom: { kind: spec.bottom.kind, ...bottom },
    corners: corners ?? null,
  })),
  advice: advice.map(({ says }) => speak(says, units)),
});

const gapsRecord = ({ front, side, beside, leave }: Gaps) => {
  const record = ({ gap, verdict }: GapSeason) => ({ ...gap, verdict });
  return { front: record(front), side: record(side), beside: record(beside), leave };
};
