import type { Drawer } from '../../drawer/drawer.ts';
import { isRound } from '../../drawer/fittings/fittings.ts';
import { setFittings } from '../../drawer/fittings/setFittings.ts';
import type { Project } from '../../project/project.ts';
import { sentence } from '../../units/complaint.ts';
import { px } from '../browser/dom.ts';

/** What is fixed to the fronts of a set. */
export interface FixedToFronts {
  /** Its outlines on a drawer's front as the data of an SVG path: in px, from the front's lower left corner, y downward. */
  outlines(drawer: Drawer, left: number, low: number, scale: number): string;
  /** What cannot be made, and what is advised, each on one line. */
  readonly notes: readonly string[];
}

/** Pulls and keyholes of the drawers, and what is wrong with them. */
export const fixedToFronts = ({ set, units }: Project): FixedToFronts => {
  const fitted = setFittings(set.drawers);
  const notes = fitted.ok ? fitted.value.advice : fitted.complaints;
  return {
    notes: notes.map((each) => sentence(each, units)),
    outlines: (drawer, left, low, scale) => {
      const { pulls = [], lock } = (fitted.ok ? fitted.value.of.get(drawer) : undefined) ?? {};
      const round = (x: number, y: number, diameter: number): string => {
        const r = (diameter / 2) * scale;
        return `M${px(left + x * scale - r)} ${px(low - y * scale)}a${px(r)} ${px(r)} 0 1 0 ${px(2 * r)} 0a${px(r)} ${px(r)} 0 1 0 ${px(-2 * r)} 0Z`;
      };
      return [
        ...pulls.map((pull) => {
          const { x0, y0, x1, y1 } = pull.outline;
          return isRound(pull)
            ? round(...pull.at, x1 - x0)
            : `M${px(left + x0 * scale)} ${px(low - y0 * scale)}h${px((x1 - x0) * scale)}v${px((y0 - y1) * scale)}h${px((x0 - x1) * scale)}Z`;
        }),
        ...(lock ? [round(...lock.keyhole.at, lock.keyhole.diameter)] : []),
      ].join('');
    },
  };
};
