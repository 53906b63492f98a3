import { describe, expect, it } from 'vitest';
import type { Drawing, Point } from '../../src/drawing/drawing.ts';
import { textMark } from '../../src/drawing/shapes.ts';
import { CAP_HEIGHT } from '../../src/drawing/textWidth.ts';
import { correctDepth } from '../../src/router/trial/depthCorrection.ts';
import { correctGuide } from '../../src/router/trial/guideCorrection.ts';
import { drawDepthMove, drawGuideMove } from '../../src/sheets/trialDrawing.ts';
import { value } from '../value.ts';

/** A cutter that leans 1 in 4. */
const ANGLE = (Math.atan(1 / 4) * 180) / Math.PI;

const depthDrawing = (looseness: number): Drawing => {
  const setting = { angle: ANGLE, depth: 9.5 };
  const move = value(correctDepth(setting, { looseness }));
  return drawDepthMove(setting, move, 'mm');
};

const templateDrawing = (looseness: number): Drawing => {
  const setting = { slope: { run: 5 } };
  const move = value(correctGuide(setting, { looseness }));
  return drawGuideMove(setting, move, 'mm');
};

const SMALL = 2.4 / CAP_HEIGHT;
const LINE = 1.3 * SMALL;
const near = (points: readonly Point[]) =>
  points.map(([x, y]) => [expect.closeTo(x, 9), expect.closeTo(y, 9)]);
const inMiddle = (text: string, lines: number, weight: 'regular' | 'bold' = 'regular') => ({
  ...textMark(text, [0, 0], SMALL, { anchor: 'middle', weight }),
  at: [35, expect.closeTo(lines > 0 ? lines * LINE : -30 + lines * LINE, 9)],
});

/** Everything that a picture holds, its shapes given. */
const picture = (
  shapes: { before: readonly Point[]; after: readonly Point[]; arrow: readonly (readonly Point[])[] },
  closed: boolean,
  [above, below]: readonly [string, string],
  move: string,
) => ({
  box: { x0: -2, y0: expect.closeTo(-30 - 4 * LINE, 9), x1: 72, y1: expect.closeTo(2 * LINE, 9) },
  marks: [
    {
      kind: 'stroke',
      role: 'outline',
      pen: 'medium',
      paths: [
        {
          points: [
            [0, -30],
            [70, -30],
            [70, 0],
            [0, 0],
          ],
          closed: true,
        },
      ],
    },
    {
      kind: 'stroke',
      role: 'slope',
      pen: 'lap',
      paths: [{ points: near(shapes.before), ...(closed && { closed }) }],
    },
    {
      kind: 'stroke',
      role: 'slope',
      pen: 'edge',
      paths: [{ points: near(shapes.after), ...(closed && { closed }) }],
    },
    {
      kind: 'stroke',
      role: 'label',
      pen: 'medium',
      paths: shapes.arrow.map((points) => ({ points: near(points) })),
    },
    inMiddle(above, 0.4),
    inMiddle(below, -1),
    inMiddle(move, -2.2, 'bold'),
    inMiddle('dashed: the trial; the move is drawn larger', -3.3),
  ],
});

describe('the drawing of a corrected depth', () => {
  // The socket is 18 mm deep there and 27 wide at its bottom, 9 less at its mouth.
  const before: Point[] = [
    [26, 0],
    [21.5, -18],
    [48.5, -18],
    [44, 0],
  ];
  const faces = ['inside face', 'outside face'] as const;

  it('shows a loose socket cut deeper, and so narrower at its mouth', () => {
    const after: Point[] = [
      [27, 0],
      [21.5, -22],
      [48.5, -22],
      [43, 0],
    ];
    const arrow: Point[][] = [
      [
        [35, -18],
        [35, -22],
      ],
      [
        [34, -20.5],
        [35, -22],
        [36, -20.5],
      ],
    ];
    expect(depthDrawing(0.2)).toEqual(picture({ before, after, arrow }, false, faces, '0.4 mm deeper'));
  });

  it('shows a tight socket cut less deep, and so wider at its mouth', () => {
    const after: Point[] = [
      [25, 0],
      [21.5, -14],
      [48.5, -14],
      [45, 0],
    ];
    const arrow: Point[][] = [
      [
        [35, -18],
        [35, -14],
      ],
      [
        [34, -15.5],
        [35, -14],
        [36, -15.5],
      ],
    ];
    expect(depthDrawing(-0.2)).toEqual(picture({ before, after, arrow }, false, faces, '0.4 mm shallower'));
  });

  it('points nowhere where the depth stays', () => {
    expect(depthDrawing(0)).toEqual(picture({ before, after: before, arrow: [] }, false, faces, 'stays'));
  });
});

describe("the drawing of a template's move", () => {
  // The pin is 18 mm wide at the outside face and 6 mm more at either side 30 mm on, at 1 in 5.
  const before: Point[] = [
    [26, 0],
    [44, 0],
    [50, -30],
    [20, -30],
  ];
  const faces = ['outside face', 'inside face'] as const;

  it('shows the pins of a loose joint grown, towards the outside face', () => {
    const after: Point[] = [
      [25.2, 0],
      [44.8, 0],
      [50.8, -30],
      [19.2, -30],
    ];
    const arrow: Point[][] = [
      [
        [35, -15],
        [35, -11],
      ],
      [
        [34, -12.5],
        [35, -11],
        [36, -12.5],
      ],
    ];
    expect(templateDrawing(0.2)).toEqual(
      picture({ before, after, arrow }, true, faces, '0.5 mm towards the outside face'),
    );
  });

  it('shows the pins of a tight joint shrunk, towards the inside face', () => {
    const after: Point[] = [
      [26.8, 0],
      [43.2, 0],
      [49.2, -30],
      [20.8, -30],
    ];
    const arrow: Point[][] = [
      [
        [35, -15],
        [35, -19],
      ],
      [
        [34, -17.5],
        [35, -19],
        [36, -17.5],
      ],
    ];
    expect(templateDrawing(-0.2)).toEqual(
      picture({ before, after, arrow }, true, faces, '0.5 mm towards the inside face'),
    );
  });

  it('points nowhere where the template stays', () => {
    expect(templateDrawing(0)).toEqual(picture({ before, after: before, arrow: [] }, true, faces, 'stays'));
  });
});
