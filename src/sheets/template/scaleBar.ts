import type { Path, Point } from '../../drawing/drawing.ts';
import { stroke } from '../../drawing/shapes.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { MM_PER_INCH, type Unit } from '../../units/unit.ts';
import type { Label, Turn, Wording } from './lettering.ts';

/** Bars, longest first: length and distance between ticks, mm, and name. */
const BARS: Readonly<Record<Unit, readonly [Bar, ...Bar[]]>> = {
  mm: [
    { length: 50, tick: 10, name: '50 mm' },
    { length: 20, tick: 10, name: '20 mm' },
    { length: 10, tick: 5, name: '10 mm' },
  ],
  in: [
    { length: 2 * MM_PER_INCH, tick: MM_PER_INCH / 2, name: '2"' },
    { length: MM_PER_INCH, tick: MM_PER_INCH / 2, name: '1"' },
    { length: MM_PER_INCH / 2, tick: MM_PER_INCH / 4, name: '½"' },
  ],
};

interface Bar {
  readonly length: number;
  readonly tick: number;
  readonly name: string;
}

/** Gap between the bar and its name, mm. */
const GAP = 1.2;

/** Height of the bar above the baseline of its text, and of its end ticks, mm: 1 mm clear of the next line's letters. */
const UP = 0.3;
const TICK = 1.7;

/** A bar to measure with a rule, and its length, as a label on a line of lettering. */
export const scaleBar = (unit: Notation): Label => {
  const [longest, ...shorter] = BARS[unitOf(unit)];
  return [barWording(longest), ...shorter.map(barWording)];
};

const barWording = ({ length, tick, name }: Bar): Wording => ({
  width: (size) => length + GAP + textWidth(name, size, 'regular'),
  marks: (at, size, turn) => {
    const paths: Path[] = [{ points: [along(at, turn, 0, UP), along(at, turn, length, UP)] }];
    for (let i = 0; i <= Math.round(length / tick); i++) {
      const height = i === 0 || i * tick >= length - EPSILON ? TICK : TICK / 2;
      paths.push({ points: [along(at, turn, i * tick, UP), along(at, turn, i * tick, UP + height)] });
    }
    return [
      stroke('scale', 'medium', paths),
      {
        kind: 'text',
        role: 'label',
        text: name,
        at: along(at, turn, length + GAP, 0),
        size,
        turn,
        anchor: 'start',
        weight: 'regular',
      },
    ];
  },
});

/** The point `forward` mm along a line of text and `up` mm above its baseline. */
const along = ([x, y]: Point, turn: Turn, forward: number, up: number): Point =>
  turn === 0 ? [x + forward, y + up] : [x - up, y + forward];
