import { shoulderZones } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { isTail, widthName } from '../../joint/widthName.ts';
import { dragQuantity } from './adjust.ts';
import type { EditedCorner } from './editedCorner.ts';
import { dragLine, dragSpacer, type Moved, type Preview, previewLine } from './edits.ts';
import { dragSharedSpacer, sharesSpacers } from './fingers/sharedSpacer.ts';
import { groupPinMeasure, groupPins, type Quantity, quantity, smallPinMeasure } from './quantities.ts';
import type { Scope } from './scope.ts';
import type { Snapshot } from './snapshot.ts';
import { linesOf, widthsOf } from './widths.ts';

/** Something on a corner that can be dragged along one line. */
export interface Handle {
  /** Does not change while it is dragged. */
  readonly id: string;
  /** For screen readers. */
  readonly label: string;
  /** What it moves, in a sentence: `lap`, `tail 2 lower edge`. */
  readonly name: string;
  /** The tail that follows it, of a spacer; its width in mm. */
  readonly tail?: { readonly name: string; readonly width: number };
  /** The measure that it changes; a line between two widths changes both of them. */
  readonly measure?: Quantity;
  /** Up and down, or across. */
  readonly axis: 'u' | 'x';
  /** mm that its value grows by for 1 mm up or to the right. */
  readonly sense: 1 | -1;
  /** In mm. */
  readonly value: number;
  readonly most: number;
  /** What it moves: a line between two widths, the groove, a shoulder's line, a spacer or a pin that widens from its middle, or an upright of the drawing. Heights in mm. */
  readonly on:
    | { readonly kind: 'line'; readonly line: number; readonly below: number; readonly above: number }
    | { readonly kind: 'groove'; readonly from: number; readonly to: number }
    | { readonly kind: 'shoulder'; readonly at: number; readonly from: number; readonly to: number }
    | { readonly kind: 'spacer'; readonly from: number; readonly to: number }
    | {
        readonly kind: 'upright';
        readonly x: 'tailBaseline' | 'tailTip' | 'tailLapLine' | 'lapLine' | 'pinBaseline';
      };
  readonly move: (now: Snapshot, corner: EditedCorner, to: number, scope: Scope) => Moved;
  /** The same for its corner alone, where that is found sooner. */
  readonly preview?: (now: Snapshot, corner: EditedCorner, to: number) => Preview;
}

const lineHandles = (corner: EditedCorner): Handle[] => {
  const widths = widthsOf(corner.joint);
  const lines = linesOf(widths, corner.joint.shoulder.lower);
  return lines.map((value, line) => ({
    id: `line ${line}`,
    label: lineWords(line, widths.length).join(', '),
    name: lineWords(line, widths.length).join(' '),
    axis: 'u',
    sense: 1,
    value,
    most: corner.joint.width,
    on: {
      kind: 'line',
      line,
      below: lines[line - 1] ?? Number.NEGATIVE_INFINITY,
      above: lines[line + 1] ?? Number.POSITIVE_INFINITY,
    },
    move: (now, at, to) => dragLine(now, at, line, to),
    preview: (now, at, to) => previewLine(now, at, line, to),
  }));
};

/** `tail 2`, `lower edge`: a line is the edge of the tail beside it. */
const lineWords = (line: number, count: number): readonly [string, string] =>
  isTail(line) ? [widthName(line, count), 'upper edge'] : [widthName(line + 1, count), 'lower edge'];

const quantityHandle = (
  corner: EditedCorner,
  measure: Quantity | undefined,
  handle: Pick<Handle, 'id' | 'label' | 'axis' | 'sense' | 'on'>,
): Handle[] => {
  const value = measure?.get(corner);
  if (measure === undefined || value === undefined) return [];
  return [
    {
      ...handle,
      name: measure.name,
      measure,
      value,
      most: corner.joint.width,
      move: (now, at, to, scope) => dragQuantity(now, at, measure, to, scope),
    },
  ];
};

/**
 * The uprights. Where the joint depth and a length of the kind's own add up to the pin board's thickness, each follows
 * from the other.
 */
const uprightHandles = (corner: EditedCorner): Handle[] => {
  const { joint, ref } = corner;
  const of = (key: string) => quantity(corner, key);
  const side = of(ref.of === 'joint' ? 'tailBoard' : 'side');
  const end = of(ref.of === 'joint' ? 'pinBoard' : ref.end);
  const tails = { id: 'tail baseline', axis: 'x', on: { kind: 'upright', x: 'tailBaseline' } } as const;
  const { lengths } = kindOf(joint);
  // Between shoulders the lap sets how far the tails are cut back, and leaves their baseline where it is.
  const isCutBack = kindOf(joint)
    .gauges(joint)
    .some(({ line }) => line === 'cut back');
  return [
    ...lengths.flatMap(({ key, word, places, on }) =>
      places.flatMap((line) =>
        quantityHandle(
          corner,
          of(key),
          line === 'baseline'
            ? isCutBack
              ? {
                  id: 'tail tips',
                  label: `tips of the tails, by the ${word}`,
                  axis: 'x',
                  sense: -1,
                  on: { kind: 'upright', x: 'tailTip' },
                }
              : { ...tails, label: `baseline of the tails, by the ${word}`, sense: 1 }
            : on === 'tail'
              ? { id: key, label: word, axis: 'x', sense: -1, on: { kind: 'upright', x: 'tailLapLine' } }
              : { id: key, label: word, axis: 'x', sense: 1, on: { kind: 'upright', x: 'lapLine' } },
        ),
      ),
    ),
    ...(!isCutBack && lengths.some(({ places }) => places.includes('baseline'))
      ? []
      : quantityHandle(corner, end, {
          ...tails,
          label: "baseline of the tails, by the pin board's thickness",
          sense: -1,
        })),
    ...quantityHandle(corner, side, {
      id: 'pin baseline',
      label: "baseline of the pins, by the tail board's thickness",
      axis: 'x',
      sense: 1,
      on: { kind: 'upright', x: 'pinBaseline' },
    }),
  ];
};

const grooveHandle = (corner: EditedCorner): Handle[] => {
  const { groove } = corner;
  if (groove === undefined) return [];
  return quantityHandle(corner, quantity(corner, 'grooveOffset'), {
    id: 'groove',
    label: 'groove, from the reference edge',
    axis: 'u',
    sense: 1,
    on: { kind: 'groove', from: groove.offset, to: groove.offset + groove.width },
  });
};

/** Both shoulders are as wide as each other, once one has been moved. */
const shoulderHandles = (corner: EditedCorner): Handle[] => {
  const { joint, ref } = corner;
  const isBack = ref.of === 'drawer' && ref.end === 'back';
  const measure = quantity(corner, isBack ? 'backShoulderWidth' : 'shoulderWidth');
  return shoulderZones(joint).flatMap(([from, to]) =>
    quantityHandle(corner, measure, {
      id: from > 0 ? 'upper shoulder' : 'lower shoulder',
      label: `${from > 0 ? 'upper' : 'lower'} shoulder, in from the edge`,
      axis: 'u',
      sense: from > 0 ? -1 : 1,
      on: { kind: 'shoulder', at: from > 0 ? from : to, from, to },
    }),
  );
};

/** A pair's spacer lies in its middle, between its two fingers. */
const spacerHandles = ({ fingers, joint }: EditedCorner): Handle[] =>
  (fingers?.setting.pairs ?? []).map(({ from, to, spacer }, i) => {
    const name = `tail ${i + 1}`;
    const [bottom, top] = joint.tails[i]?.tip ?? [0, 0];
    const middle = (from + to) / 2;
    return {
      id: `spacer ${i}`,
      label: `spacer of ${name}`,
      name: 'spacer',
      tail: { name, width: top - bottom },
      axis: 'u',
      sense: 1,
      value: spacer,
      most: joint.width,
      on: { kind: 'spacer', from: middle - spacer / 2, to: middle + spacer / 2 },
      move: (now, at, width) =>
        (sharesSpacers(now.project, at.ref) ? dragSharedSpacer : dragSpacer)(now, at, i, width),
    };
  });

/** Its small pins, all as wide as each other: one handle in each tail. */
const smallPinHandles = (corner: EditedCorner): Handle[] =>
  (corner.joint.smallPins ?? []).flatMap(({ narrow: [from, to] }, i) =>
    quantityHandle(corner, smallPinMeasure(corner), {
      id: `small pin ${i + 1}`,
      label: `small pin in tail ${i + 1}`,
      axis: 'u',
      sense: 1,
      on: { kind: 'spacer', from, to },
    }),
  );

/** The pins between groups, all as wide as each other. */
const groupPinHandles = (corner: EditedCorner): Handle[] =>
  groupPins(corner).flatMap(([from, to], i) =>
    quantityHandle(corner, groupPinMeasure(corner), {
      id: `group pin ${i + 1}`,
      label: `pin between groups ${i + 1} and ${i + 2}`,
      axis: 'u',
      sense: 1,
      on: { kind: 'spacer', from, to },
    }),
  );

/** Everything on a corner that can be moved. */
export const handlesOf = (corner: EditedCorner): Handle[] => [
  ...uprightHandles(corner),
  ...grooveHandle(corner),
  ...shoulderHandles(corner),
  ...lineHandles(corner),
  ...smallPinHandles(corner),
  ...groupPinHandles(corner),
  ...spacerHandles(corner),
];
