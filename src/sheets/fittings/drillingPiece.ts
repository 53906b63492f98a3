import type { Hand } from '../../drawer/cornerLetters.ts';
import { type Hole, isRound, type Lock, type Pull } from '../../drawer/fittings/fittings.ts';
import { freeSpans } from '../../drawer/fittings/freeSpans.ts';
import type { FrontZones } from '../../drawer/fittings/frontZones.ts';
import type { Box, Drawing, Mark, Path, Point, StrokeMark } from '../../drawing/drawing.ts';
import { line, polygon, rectangle, stroke } from '../../drawing/shapes.ts';
import type { Interval } from '../../joint/joint.ts';
import type { Splits } from '../../paper/piece.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { Notation } from '../../units/notation.ts';
import type { ShortName } from '../../units/shortNames.ts';
import { edgeMark } from '../template/edgeMark.ts';
import type { TemplatePiece } from '../template/templatePiece.ts';
import { drillingLettering, flapMarks, flapWidth } from './drillingLettering.ts';
import { faceWords } from './faceWords.ts';
import { circle } from './frontsPicture.ts';

/** A front to be drilled, in mm from its lower left corner, lip included, seen from the front. */
export interface DrilledFront {
  /** Beginning of its pieces' names, safe as a file name. */
  readonly stem: string;
  readonly itemName: ShortName;
  /** Quantity of equal fronts. */
  readonly count: number;
  readonly units: Notation;
  readonly zones: FrontZones;
  /** Heights of the sockets at each end, behind the face. */
  readonly sockets: Readonly<Record<Hand, readonly Interval[]>>;
  readonly pulls: readonly Pull[];
  readonly lock?: Lock;
}

/** Width of the flap that is folded over the front's end, mm. */
const END_FLAP = 12;
/** Length of a fold line beyond the outline, mm. */
const FOLD_OVERHANG = 3;
/** What a template covers beside what is drilled, mm; and at least, unless the front is shorter. */
const BESIDE = 15;
const LEAST_COVERED = 80;
/** The longest front that one template covers from end to end, mm: what A4 holds across. */
const ONE_TEMPLATE = 170;
/** Length of a centre line beyond its hole, mm. */
const ARM = 4;
/** How far a split stays off what is drilled, and from one place for it to the next, mm. */
const OFF_SPLITS = 12;
const SPLIT_STEP = 5;

/**
 * The templates to drill a front by: one from its left end and one from its right, each with what is nearer to that end, or one
 * alone of a short front, and where nothing is nearer to the other end. They show the show face; flaps are folded over the front's
 * end and its lower edge, so that both lie in the folds.
 */
export const drillingPieces = (front: DrilledFront): TemplatePiece[] => {
  const { zones, pulls, lock } = front;
  if (pulls.length === 0 && lock === undefined) return [];
  const middle = zones.length / 2 + EPSILON;
  const isOne = zones.length <= ONE_TEMPLATE;
  const isLeft = ({ at: [x] }: Pull): boolean => isOne || x <= middle;
  const left = pulls.filter(isLeft);
  const right = pulls.filter((pull) => !isLeft(pull));
  return [
    ...(left.length > 0 || lock !== undefined
      ? [drillingPiece({ ...front, pulls: left, ...(lock && { lock }) }, 'left')]
      : []),
    ...(right.length > 0 ? [drillingPiece(withoutLock({ ...front, pulls: right }), 'right')] : []),
  ];
};

const withoutLock = ({ lock: _, ...front }: DrilledFront): DrilledFront => front;

/** The front as one of its ends is drilled: `u` runs from that end. */
interface Sheet {
  readonly front: DrilledFront;
  readonly hand: Hand;
  /** How much of the front's length it covers, and whether that is all. */
  readonly covered: number;
  readonly isWhole: boolean;
  /** Width of the flap under the lower edge. */
  readonly flap: number;
  readonly width: number;
  readonly height: number;
  /** The point of the piece at a point of the front. */
  at(point: Point): Point;
}

const sheetOf = (front: DrilledFront, hand: Hand): Sheet => {
  const { zones, pulls, lock } = front;
  const reach = Math.max(
    ...[...pulls.map(({ outline }) => outline), ...(lock ? [lock.body] : [])].map(({ x0, x1 }) =>
      hand === 'left' ? x1 : zones.length - x0,
    ),
  );
  const wanted = Math.max(LEAST_COVERED, reach + BESIDE);
  const isWhole = zones.length <= ONE_TEMPLATE || wanted > zones.length - BESIDE;
  const covered = isWhole ? zones.length : wanted;
  const flap = flapWidth(front, hand, covered);
  return {
    front,
    hand,
    covered,
    isWhole,
    flap,
    width: END_FLAP + covered,
    height: flap + zones.width,
    at: ([x, y]) => [hand === 'left' ? END_FLAP + x : covered - (zones.length - x), flap + y],
  };
};

const drillingPiece = (front: DrilledFront, hand: Hand): TemplatePiece => {
  const sheet = sheetOf(front, hand);
  const { covered, isWhole, flap, width, height } = sheet;
  const { itemName, stem, count, zones } = front;
  const title = drillingLettering(front, hand).title;
  return {
    name: `${stem}-front-drilling-${hand}`,
    title: `${itemName.item}, ${title}`,
    caption: [itemName.item, 'front, drilling', `${hand} end`],
    itemName,
    signs: isOnReference(front) ? ['edge', 'fold'] : ['fold'],
    count,
    copies: 1,
    width,
    height,
    overhang: FOLD_OVERHANG,
    splittable: splittableOf(sheet),
    taped: {
      x: {
        length: covered,
        between: [isWhole ? 'end to end' : `${hand} end to cut edge`, 'end to cut edge'],
      },
      y: { length: zones.width, between: ['lower edge to upper edge', 'edge to edge'] },
    },
    lines: () => [...outlineMarks(sheet), ...holeMarks(sheet)],
    draw: (splits) => draw(sheet, splits, flap),
  };
};

/** Clear of everything that is drilled, of the groove, the lock and the folds. */
const splittableOf = ({ front, width, height, at, flap }: Sheet): TemplatePiece['splittable'] => {
  const { zones, pulls, lock } = front;
  const taken: readonly Box[] = [
    ...pulls.map(({ outline }) => outline),
    ...pulls.flatMap(({ holes }) => holes.map((hole) => boxOf(hole))),
    ...(lock ? [lock.body, boxOf(lock.keyhole)] : []),
  ];
  const off = (from: number, to: number): Interval => [from - OFF_SPLITS, to + OFF_SPLITS];
  const xs = freeSpans(
    [END_FLAP + OFF_SPLITS, width - END_FLAP - OFF_SPLITS],
    taken.map(({ x0, x1 }) => off(...ordered(at([x0, 0])[0], at([x1, 0])[0]))),
  );
  const steps = Math.floor(width / SPLIT_STEP);
  return {
    x: Array.from({ length: steps }, (_, i) => i * SPLIT_STEP).filter((x) =>
      xs.some(([from, to]) => x >= from && x <= to),
    ),
    y: freeSpans(
      [flap + OFF_SPLITS, height - OFF_SPLITS],
      [
        ...taken.map(({ y0, y1 }) => off(flap + y0, flap + y1)),
        off(flap + zones.groove[0], flap + zones.groove[1]),
      ],
    ),
  };
};

const ordered = (a: number, b: number): Interval => (a < b ? [a, b] : [b, a]);

const boxOf = ({ at: [x, y], diameter }: Hole): Box => {
  const reach = diameter / 2 + ARM;
  return { x0: x - reach, y0: y - reach, x1: x + reach, y1: y + reach };
};

const draw = (sheet: Sheet, splits: Splits, flap: number): Drawing => {
  const { front, hand, width, height, covered } = sheet;
  const lines = [...outlineMarks(sheet), ...foldMarks(sheet), ...hiddenMarks(sheet), ...holeMarks(sheet)];
  const left = hand === 'left' ? END_FLAP : 0;
  const face: Box = { x0: left, y0: flap, x1: left + covered, y1: height };
  const marks: Mark[] = [...lines, ...(isOnReference(front) ? [edgeMarkOn(sheet)] : [])];
  return {
    box: {
      x0: -FOLD_OVERHANG,
      y0: -FOLD_OVERHANG,
      x1: width + FOLD_OVERHANG,
      y1: height + FOLD_OVERHANG,
    },
    marks: [
      ...marks,
      ...faceWords(wordsOf(sheet), face, marks, splits),
      ...flapMarks(front, hand, { x0: face.x0, x1: face.x1, y0: 0, y1: flap }, splits),
    ],
  };
};

/** Whether the front's lower edge is its reference edge: not under a lip. */
const isOnReference = ({ zones }: DrilledFront): boolean => zones.box.y0 < EPSILON;

/** The face-edge mark, touching the fold at the lower edge where nothing else is. */
const edgeMarkOn = ({ hand, covered, flap }: Sheet): StrokeMark => {
  const x = hand === 'left' ? END_FLAP + covered - 6 : 6;
  const { paths, ...mark } = edgeMark(x);
  return {
    ...mark,
    paths: paths.map(({ points }) => ({ points: points.map(([px, py]): Point => [px, py + flap]) })),
  };
};

/** Where it is cut; bold, the edges that are laid flush with the front's. */
const outlineMarks = ({ hand, isWhole, width, height, covered, flap }: Sheet): StrokeMark[] => {
  const [x0, x1] = hand === 'left' ? [END_FLAP, width] : [0, covered];
  const corners: Point[] =
    hand === 'left'
      ? [
          [x0, 0],
          [x1, 0],
          [x1, height],
          [0, height],
          [0, flap],
          [x0, flap],
        ]
      : [
          [x0, 0],
          [x1, 0],
          [x1, flap],
          [width, flap],
          [width, height],
          [x0, height],
        ];
  const far = hand === 'left' ? x1 : x0;
  return [
    stroke('outline', 'cut', [polygon(corners)]),
    stroke('outline', 'edge', [
      line(x0, height, x1, height),
      ...(isWhole ? [line(far, flap, far, height)] : []),
    ]),
  ];
};

const foldMarks = ({ hand, width, height, covered, flap }: Sheet): StrokeMark[] => {
  const [x0, x1] = hand === 'left' ? [END_FLAP, width] : [0, covered];
  const end = hand === 'left' ? x0 : x1;
  return [
    stroke('fold', 'fold', [
      line(x0 - FOLD_OVERHANG, flap, x1 + FOLD_OVERHANG, flap),
      line(end, flap - FOLD_OVERHANG, end, height + FOLD_OVERHANG),
    ]),
  ];
};

/** What lies behind the face: the groove, the sockets, the sides, the edge of the box behind a lip, and a lock's body. */
const hiddenMarks = ({ front, hand, isWhole, covered, at }: Sheet): StrokeMark[] => {
  const { zones, sockets, lock } = front;
  const { box, between, groove } = zones;
  const seen: Interval = hand === 'left' ? [0, covered] : [zones.length - covered, zones.length];
  const clip = (x: number): number => Math.min(Math.max(x, seen[0]), seen[1]);
  const level = (y: number, from = box.x0, to = box.x1): Path => join(at([clip(from), y]), at([clip(to), y]));
  const upright = (x: number, from: number, to: number): Path[] =>
    x > seen[0] - EPSILON && x < seen[1] + EPSILON ? [join(at([x, from]), at([x, to]))] : [];
  const hands: readonly Hand[] = isWhole ? ['left', 'right'] : [hand];
  const hasLip = box.x0 > 0 || box.y0 > 0 || box.y1 < zones.width - EPSILON;
  return [
    stroke(
      'groove',
      'groove',
      groove.map((y) => level(y)),
    ),
    stroke(
      'square',
      'groove',
      hands.flatMap((each) => {
        const [end, side] = each === 'left' ? [box.x0, between[0]] : [box.x1, between[1]];
        return [
          ...upright(side, box.y0, box.y1),
          ...sockets[each].flatMap(([from, to]) => [from, to].map((y) => level(y, ...ordered(end, side)))),
        ];
      }),
    ),
    ...(hasLip
      ? [
          stroke('lap', 'lap', [
            ...(box.y0 > 0 ? [level(box.y0)] : []),
            ...(box.y1 < zones.width - EPSILON ? [level(box.y1)] : []),
            ...(box.x0 > 0
              ? hands.flatMap((each) => upright(each === 'left' ? box.x0 : box.x1, box.y0, box.y1))
              : []),
          ]),
        ]
      : []),
    ...(lock ? [stroke('groove', 'groove', [around(lock.body, at)])] : []),
  ];
};

const join = (from: Point, to: Point): Path => ({ points: [from, to] });

const around = ({ x0, y0, x1, y1 }: Box, at: Sheet['at']): Path => {
  const [from, to] = [at([x0, y0]), at([x1, y1])];
  return rectangle(...from, ...to);
};

/** The holes with their centre lines, and what is fixed over them. */
const holeMarks = ({ front: { pulls, lock, zones }, covered, hand, at }: Sheet): StrokeMark[] => {
  const holes = [...pulls.flatMap((pull) => pull.holes), ...(lock ? [lock.keyhole] : [])];
  const seen: Interval = hand === 'left' ? [0, covered] : [zones.length - covered, zones.length];
  const onFace = ({ x0, y0, x1, y1 }: Box): Box => ({
    x0: Math.max(x0, seen[0]),
    y0: Math.max(y0, 0),
    x1: Math.min(x1, seen[1]),
    y1: Math.min(y1, zones.width),
  });
  return [
    stroke(
      'hole',
      'saw',
      holes.flatMap(({ at: middle, diameter }): Path[] => {
        const [x, y] = at(middle);
        const reach = diameter / 2 + ARM;
        return [
          circle([x, y], diameter / 2),
          line(x - reach, y, x + reach, y),
          line(x, y - reach, x, y + reach),
        ];
      }),
    ),
    stroke(
      'label',
      'groove',
      pulls.map(({ at: middle, outline }) =>
        isRound({ outline })
          ? circle(at(middle), (outline.x1 - outline.x0) / 2)
          : around(onFace(outline), at),
      ),
    ),
  ];
};

/** The words on the face, each with the point that it is about, on the piece. */
const wordsOf = ({
  front,
  hand,
  isWhole,
  at,
  covered,
}: Sheet): { readonly text: string; readonly near: Point }[] => {
  const { zones, pulls, lock } = front;
  const { between, box, groove } = zones;
  const hands: readonly Hand[] = isWhole ? ['left', 'right'] : [hand];
  const [side, off] = hand === 'left' ? [between[0], 1] : [between[1], -1];
  const middleHeight = (box.y0 + box.y1) / 2;
  return [
    { text: 'groove', near: at([side + off * Math.min(20, covered / 3), groove[1] + 3]) },
    ...hands.map((each) => ({
      text: 'joint',
      near: at([each === 'left' ? (box.x0 + between[0]) / 2 : (between[1] + box.x1) / 2, middleHeight]),
    })),
    ...(pulls.length > 0 && pulls[0]
      ? [{ text: 'pull', near: at([pulls[0].outline.x0, pulls[0].outline.y0 - 3]) }]
      : []),
    ...(lock ? [{ text: 'lock, behind', near: at([lock.body.x0 + 12, lock.body.y0 + 4]) }] : []),
  ];
};
