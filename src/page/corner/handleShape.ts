import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { px } from '../browser/dom.ts';
import type { Handle } from '../model/handles.ts';
import type { CornerSheet } from './cornerSheet.ts';
import { FINGER, lineTarget, spacerTarget, type Target, uprightTarget } from './touchTargets.ts';

/** How a handle looks: SVG path data, and where its middle is, in px. */
export interface HandleShape {
  /** Where it is taken hold of. */
  readonly targets: () => HandleTargets;
  /** The mark that is highlighted. */
  readonly trace: string;
  readonly grip: string;
  /** Written over an upright. */
  readonly text?: string;
  readonly middle: readonly [x: number, y: number];
}

/** SVG path data. */
export interface HandleTargets {
  /** For a mouse: anywhere on the line. */
  readonly hit: string;
  /** For a finger: at its grip, so that the rest of the drawing scrolls the page. */
  readonly touch: string;
}

/** The least height in px where a mouse takes hold of a spacer or a shoulder. */
const SPACER = 14;

const rectangle = (x0: number, y0: number, x1: number, y1: number): string =>
  `M${px(x0)} ${px(y0)}H${px(x1)}V${px(y1)}H${px(x0)}Z`;

const area = ({ x0, x1, top, bottom }: Target): string => rectangle(x0, top, x1, bottom);

export const handleShape = (handle: Handle, sheet: CornerSheet, unit: Notation): HandleShape => {
  const { on } = handle;
  switch (on.kind) {
    case 'line':
      return lineShape(on, handle.value, sheet);
    case 'groove':
      return grooveShape(on, sheet);
    case 'shoulder':
      return shoulderShape(on, sheet);
    case 'spacer':
      return spacerShape(on, sheet);
    case 'upright':
      return uprightShape(handle, sheet[on.x], sheet, unit);
  }
};

type On<Kind> = Extract<Handle['on'], { kind: Kind }>;

/** A line can be grabbed anywhere between the baselines; neighbours share the space between them. */
const lineShape = ({ line, below, above }: On<'line'>, value: number, sheet: CornerSheet): HandleShape => {
  const { y, tailEnd, pinEnd } = sheet;
  const here = y(value);
  const top = here - Math.min(FINGER / 2, (here - y(above)) / 2);
  const bottom = here + Math.min(FINGER / 2, (y(below) - here) / 2);
  const way = sheet.lines[line] ?? [];
  // A grip lies in the gap, on the side of its target.
  const isLeft = line % 2 === 0;
  return {
    targets: () => ({
      touch: area(
        lineTarget(
          sheet.lines.map((each) => y(each[2]?.[1] ?? 0)),
          line,
          (tailEnd.x1 + pinEnd.x0) / 2,
          sheet.top - 2,
        ),
      ),
      hit: rectangle(sheet.tailBaseline, top, sheet.pinBaseline, bottom),
    }),
    trace: `M${way.map(([x, u]) => `${px(x)} ${px(y(u))}`).join('L')}`,
    grip: isLeft
      ? `M${px(tailEnd.x1 + 3)} ${px(here)}l9 -5v10z`
      : `M${px(pinEnd.x0 - 3)} ${px(here)}l-9 -5v10z`,
    middle: [pinEnd.x0, here],
  };
};

/** How far across a finger takes hold of the groove. */
const besideEdge = (edge: number): Pick<Target, 'x0' | 'x1'> => ({ x0: edge - 8, x1: edge + FINGER - 8 });

/** The groove is grabbed beside the tails, where no line is. */
const grooveShape = (
  { from, to }: On<'groove'>,
  { y, tailFace, tailBaseline, pinFace }: CornerSheet,
): HandleShape => {
  const { x0, x1 } = tailFace;
  const middle = (y(from) + y(to)) / 2;
  const half = Math.max(FINGER, y(from) - y(to)) / 2;
  const edge = (u: number): string =>
    `M${px(x0)} ${px(y(u))}H${px(x1)}M${px(pinFace.x0)} ${px(y(u))}H${px(pinFace.x1)}`;
  return {
    targets: () => ({
      touch: area({ ...besideEdge(x0), top: middle - FINGER / 2, bottom: middle + FINGER / 2 }),
      hit: rectangle(x0, middle - half, tailBaseline, middle + half),
    }),
    trace: edge(from) + edge(to),
    grip: `M${px(x0 + 14)} ${px(middle)}m-5 -3l5 -7l5 7zm0 6l5 7l5 -7z`,
    middle: [(x0 + tailBaseline) / 2, middle],
  };
};

/** A shoulder is grabbed beside the sockets, where no line is. */
const shoulderShape = ({ at }: On<'shoulder'>, sheet: CornerSheet): HandleShape => {
  const { y, tailBaseline, tailLapLine, pinBaseline, pinFace } = sheet;
  const here = y(at);
  const half = SPACER / 2;
  const x = pinFace.x1 - 14;
  return {
    targets: () => ({
      touch: area({ x0: x + 22 - FINGER, x1: x + 22, top: here - FINGER / 2, bottom: here + FINGER / 2 }),
      hit: rectangle(pinBaseline, here - half, pinFace.x1, here + half),
    }),
    trace: `M${px(tailBaseline)} ${px(here)}H${px(tailLapLine)}M${px(sheet.mitredFrom)} ${px(here)}H${px(pinBaseline)}`,
    grip: `M${px(x)} ${px(here)}m-5 -3l5 -7l5 7zm0 6l5 7l5 -7z`,
    middle: [(pinBaseline + pinFace.x1) / 2, here],
  };
};

/** A spacer is grabbed on the tail board's end, with a finger at its edge, between the groove's target and the lines'. */
const spacerShape = (
  { from, to }: On<'spacer'>,
  { y, tailFace, tailEnd, pinEnd, groove }: CornerSheet,
): HandleShape => {
  const { x0, x1 } = tailEnd;
  const middle = (y(from) + y(to)) / 2;
  const half = Math.max(SPACER, y(from) - y(to)) / 2;
  const grip = x0 - 7;
  const isNearGroove = groove !== undefined && Math.abs(y((groove.from + groove.to) / 2) - middle) < FINGER;
  return {
    targets: () => ({
      touch: area(
        spacerTarget(x0, middle, {
          from: isNearGroove ? besideEdge(tailFace.x0).x1 : Number.NEGATIVE_INFINITY,
          to: (x1 + pinEnd.x0) / 2 - FINGER,
        }),
      ),
      hit: rectangle(grip - 12, middle - half, x1, middle + half),
    }),
    trace: rectangle(x0, y(to), x1, y(from)),
    grip: `M${px(grip)} ${px(middle)}m-5 -3l5 -7l5 7zm0 6l5 7l5 -7z`,
    middle: [x1, middle],
  };
};

/** An upright is grabbed above the boards, where its distance from the end is written. */
const uprightShape = (
  { value, on }: Handle,
  x: number,
  { top, y, tailFace, tailEnd, scale, tailBaseline, tailTip, tailLapLine, lapLine, pinBaseline }: CornerSheet,
  unit: Notation,
): HandleShape => ({
  targets: () => ({
    touch: area(
      uprightTarget(
        x,
        [
          tailBaseline,
          ...(tailTip < tailFace.x1 ? [tailTip] : []),
          ...(tailLapLine < tailEnd.x1 ? [tailLapLine] : []),
          lapLine,
          pinBaseline,
        ],
        top - 2,
      ),
    ),
    hit: rectangle(x - FINGER / 2, top - FINGER - 4, x + FINGER / 2, top - 2),
  }),
  trace: `M${px(x)} ${px(top - 12)}V${px(y(0))}`,
  grip: `M${px(x)} ${px(top - 2)}l-5 -9h10z`,
  text: formatNumber(
    on.kind === 'upright' && on.x === 'tailBaseline' ? (tailFace.x1 - x) / scale : value,
    unit,
  ),
  middle: [x, top],
});
