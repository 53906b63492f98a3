import { type Drawer, madeOf } from '../drawer/drawer.ts';
import type { Fittings } from '../drawer/fittings/fittings.ts';
import { frontZones } from '../drawer/fittings/frontZones.ts';
import { setFittings } from '../drawer/fittings/setFittings.ts';
import { entryName } from '../drawer/made/built.ts';
import { type Interval, type Joint, tailParts } from '../joint/joint.ts';
import { stems } from '../sheets/fileStem.ts';
import { type DrilledFront, drillingPieces } from '../sheets/fittings/drillingPiece.ts';
import type { TemplatePiece } from '../sheets/template/templatePiece.ts';
import { groupNames } from '../units/shortNames.ts';
import { boardsDrawn } from './only.ts';
import type { Project } from './project.ts';

/** The part of a project that its drilling templates depend on. */
type Drilled = Pick<Project, 'set' | 'joints' | 'units' | 'only'>;

/**
 * The templates to drill the fronts of a project by, for pulls and locks; none where there are none, or where they cannot be made.
 * Each is drawn when it is needed.
 */
export const drillingOf = ({ set, joints, units, only }: Drilled): TemplatePiece[] => {
  if (set.drawers.every(({ spec }) => spec.fittings === undefined)) return [];
  const fitted = setFittings(set.drawers);
  if (!fitted.ok) return [];
  // The files of a front and of its corners begin alike.
  const stem = stems();
  const fronts = madeOf(set).map((drawer) => ({
    ...frontOf(drawer, fitted.value.of.get(drawer)),
    names: [drawer.spec.name],
    stem: stem(drawer.spec.name),
    count: drawer.spec.count,
    isDrawn: boardsDrawn(only, entryName(drawer.spec), 'front').includes('pin'),
  }));
  const alike = merged(fronts.filter(({ isDrawn }) => isDrawn));
  const nameOf = groupNames(
    [...fronts.map(({ names: [name = ''] }) => name), ...joints.map(({ name }) => name)],
    alike.map(({ names }) => names),
  );
  return alike.flatMap(({ names, ...front }) => drillingPieces({ ...front, units, itemName: nameOf(names) }));
};

/** What of a front its templates depend on. */
type FrontShape = Pick<DrilledFront, 'zones' | 'sockets' | 'pulls' | 'lock'>;

const frontOf = ({ spec, sizes, front, right }: Drawer, fittings: Fittings | undefined): FrontShape => {
  const zones = frontZones(spec, sizes);
  const socketsOf = (joint: Joint): Interval[] =>
    tailParts(joint, 'tip').map(([from, to]): Interval => [zones.box.y0 + from, zones.box.y0 + to]);
  const { pulls = [], lock } = fittings ?? {};
  return {
    zones,
    sockets: { left: socketsOf(front), right: socketsOf(right?.front ?? front) },
    pulls,
    ...(lock && { lock }),
  };
};

interface NamedFront extends FrontShape, Pick<DrilledFront, 'stem' | 'count'> {
  readonly names: readonly string[];
}

/** Equal fronts of several drawers once, named for them all. */
const merged = (fronts: readonly NamedFront[]): NamedFront[] => {
  const byShape = new Map<string, NamedFront>();
  for (const front of fronts) {
    const { zones, sockets, pulls, lock } = front;
    const key = JSON.stringify([zones, sockets, pulls, lock]);
    const equal = byShape.get(key);
    byShape.set(
      key,
      equal === undefined
        ? front
        : { ...equal, names: [...equal.names, ...front.names], count: equal.count + front.count },
    );
  }
  return [...byShape.values()];
};
