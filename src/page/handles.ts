import { formatLength, type Unit } from '../units/length.ts';
import { dragQuantity, type Scope } from './adjust.ts';
import type { Corner } from './corner.ts';
import { dragLine, type Moved } from './edits.ts';
import { type Quantity, quantity } from './quantities.ts';
import { isTail, linesOf, widthName, widthsOf } from './widths.ts';
import type { Snapshot } from './work.ts';

/** Something on a corner that can be taken hold of and moved along one line. */
export interface Handle {
  /** Stays the same while it is moved. */
  readonly id: string;
  /** Said to those who do not see it. */
  readonly label: string;
  /** Up and down, or across. */
  readonly axis: 'u' | 'x';
  /** mm that its value grows by for 1 mm up or to the right. */
  readonly sense: 1 | -1;
  /** In mm. */
  readonly value: number;
  readonly most: number;
  readonly move: (now: Snapshot, corner: Corner, to: number, scope: Scope) => Moved;
}

export const lineHandles = (corner: Corner): Handle[] => {
  const widths = widthsOf(corner.joint);
  return linesOf(widths).map((value, line) => ({
    id: `line ${line}`,
    label: lineLabel(line, widths.length),
    axis: 'u',
    sense: 1,
    value,
    most: corner.joint.width,
    move: (now, at, to) => dragLine(now, at, line, to),
  }));
};

/** `tail 2, lower edge`: a line is the edge of the tail beside it. */
const lineLabel = (line: number, count: number): string =>
  isTail(line) ? `${widthName(line, count)}, upper edge` : `${widthName(line + 1, count)}, lower edge`;

const quantityHandle = (
  corner: Corner,
  id: string,
  measure: Quantity | undefined,
  label: string,
  { axis, sense }: Pick<Handle, 'axis' | 'sense'>,
): Handle[] => {
  const value = measure?.get(corner);
  if (measure === undefined || value === undefined) return [];
  return [
    {
      id,
      label,
      axis,
      sense,
      value,
      most: corner.joint.width,
      move: (now, at, to, scope) => dragQuantity(now, at, measure, to, scope),
    },
  ];
};

/** The uprights and the groove. Where a tail's length and its lap make up the front, one follows from the other. */
const quantityHandles = (corner: Corner): Handle[] => {
  const { joint, ref } = corner;
  const of = (key: string) => quantity(corner, key);
  const across = (sense: 1 | -1) => ({ axis: 'x', sense }) as const;
  const side = ref.of === 'joint' ? of('tailBoard') : of('side');
  const end = ref.of === 'joint' ? of('pinBoard') : ref.end === 'front' ? of('front') : of('back');
  return [
    ...(joint.kind === 'lapped'
      ? [
          ...quantityHandle(
            corner,
            'tail baseline',
            of('lap'),
            'baseline of the tails, by the lap',
            across(1),
          ),
          ...quantityHandle(corner, 'lap', of('lap'), 'lap', across(1)),
        ]
      : quantityHandle(
          corner,
          'tail baseline',
          end,
          "baseline of the tails, by the pin board's thickness",
          across(-1),
        )),
    ...quantityHandle(
      corner,
      'pin baseline',
      side,
      "baseline of the pins, by the tail board's thickness",
      across(1),
    ),
    ...(corner.groove === undefined
      ? []
      : quantityHandle(corner, 'groove', of('grooveOffset'), 'groove, from the reference edge', {
          axis: 'u',
          sense: 1,
        })),
  ];
};

export const handleText = ({ value }: Handle, unit: Unit): string => formatLength(value, unit);

export const handlesOf = (corner: Corner): Handle[] => [...quantityHandles(corner), ...lineHandles(corner)];
