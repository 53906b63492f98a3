import { madeOf } from '../../drawer/drawer.ts';
import type { Fittings } from '../../drawer/fittings/fittings.ts';
import { setFittings } from '../../drawer/fittings/setFittings.ts';
import type { Project } from '../../project/project.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { unitWords } from '../../units/notation.ts';
import { fitTable } from './fitTable.ts';
import { terminalLines } from './jointText.ts';

/** Where to drill for pulls and keys, and where stops are fixed; nothing where no drawer has any. */
export const fittingsText = ({ set: { drawers }, units }: Project): string[] => {
  const fitted = setFittings(drawers);
  if (!fitted.ok) return [];
  const each = madeOf({ drawers }).flatMap((drawer) => {
    const fittings = fitted.value.of.get(drawer);
    return fittings === undefined ? [] : [{ name: drawer.spec.name, fittings }];
  });
  const number = (value: number): string => formatNumber(value, units);
  const holes = each.flatMap(({ name, fittings }) =>
    holesOf(fittings).map(({ what, at: [x, y], diameter }) => [name, what, ...[x, y, diameter].map(number)]),
  );
  const bodies = each.flatMap(({ name, fittings: { lock } }) =>
    lock === undefined
      ? []
      : terminalLines(
          `${name}: the lock's body is let in from the upper edge of the inside face, in the middle: ${[lock.body.x1 - lock.body.x0, lock.body.y1 - lock.body.y0, lock.depth].map((value) => formatLength(value, units)).join(' x ')} (width x height x depth).`,
        ),
  );
  const stops = each.flatMap(({ name, fittings }) =>
    fittings.stops === undefined
      ? []
      : [
          [
            name,
            fittings.stops.at.map(number).join(' and '),
            ...[
              fittings.stops.behind,
              fittings.stops.width,
              fittings.stops.depth,
              fittings.stops.thickness,
            ].map(number),
          ],
        ],
  );
  return [
    ...(holes.length === 0
      ? []
      : [
          ...terminalLines(
            `Holes to drill in the fronts, in ${unitWords(units)}: from the left end and up from the lower edge, seen from the front.`,
          ),
          ...fitTable(['drawer', 'for', 'left', 'up', 'drill'], holes, [false, false, true, true, true], 1),
        ]),
    ...bodies,
    ...(stops.length === 0
      ? []
      : [
          ...(holes.length > 0 ? [''] : []),
          ...terminalLines(
            `Stops on the rail under each drawer, in ${unitWords(units)}: their middles from the left side of the opening, and their front from the rail's front edge.`,
          ),
          ...fitTable(
            ['drawer', 'left', 'behind', 'width', 'depth', 'thickness'],
            stops,
            [false, true, true, true, true, true],
            1,
          ),
        ]),
  ];
};

/** Every hole with what it is for. */
const holesOf = ({ pulls, lock }: Fittings) => [
  ...pulls.flatMap(({ holes }, i) =>
    holes.map((hole, j) => ({
      ...hole,
      what: [
        `pull${pulls.length > 1 ? ` ${i + 1}` : ''}`,
        ...(holes.length > 1 ? [`hole ${j + 1}`] : []),
      ].join(', '),
    })),
  ),
  ...(lock === undefined ? [] : [{ ...lock.keyhole, what: 'key' }]),
];
