import type { Box, Drawing, Mark, Path, Point, StrokeMark, TextMark } from '../drawing/drawing.ts';
import { hatch } from '../drawing/hatch.ts';
import { CAP_HEIGHT, textWidth } from '../drawing/textWidth.ts';
import type { Joint } from '../joint/joint.ts';
import type { Piece, Splits } from '../paper/piece.ts';
import { type Band, type Board, bandsOf } from './band.ts';
import { letter, letterTag, SMALL, type Strip, tagLength } from './lettering.ts';
import { letteringOf, type Share, type Titles } from './titles.ts';

/** A piece with its title in parts: the drawer, the part and corner, and the end. */
export interface TemplatePiece extends Piece {
  readonly caption: readonly [item: string, part: string, end: string];
}

/** A groove as the templates show it, in mm from their lower edge. */
export interface GrooveMark {
  readonly offset: number;
  readonly width: number;
}

export interface WrapSpec {
  readonly name: string;
  readonly joint: Joint;
  readonly board: Board;
  /** On which side the inside face lies as one looks at the board's end with its reference edge down. */
  readonly insideOn: 'left' | 'right';
  readonly titles: Titles;
  readonly groove?: GrooveMark;
}

/** How far a fold line stands out beyond the cutting outline, in mm. */
const FOLD_OVERHANG = 3;

/** Kept free at the lower edge for the face-edge mark, in mm. */
const EDGE_MARK = 4.2;

/** The bands of a board's end as one piece, to be folded round it. */
export const wrap = (spec: WrapSpec): TemplatePiece => pieceOf(spec, () => bandsOf(spec.joint, spec.board));

/** Each band as a piece of its own, for boards that are not exactly as thick as they should be. */
export const flat = (spec: WrapSpec): TemplatePiece[] =>
  bandsOf(spec.joint, spec.board).map(({ name }) =>
    pieceOf({ ...spec, name: `${spec.name}-${name}` }, () =>
      bandsOf(spec.joint, spec.board).filter((band) => band.name === name),
    ),
  );

/** A band in its place on the piece. */
interface Laid {
  readonly band: Band;
  readonly x0: number;
  readonly x1: number;
  /** Where a distance from the arris falls. */
  readonly at: (fromArris: number) => number;
  /** +1 where the distance grows to the right, -1 to the left. */
  readonly sense: 1 | -1;
}

const lay = (bands: readonly Band[], insideOn: 'left' | 'right', start: number): Laid[] => {
  let x0 = start;
  return (insideOn === 'left' ? bands : bands.toReversed()).map((band) => {
    const left = x0;
    const right = x0 + band.width;
    x0 = right;
    const sense = (band.name === 'inside') === (insideOn === 'left') ? -1 : 1;
    return { band, x0: left, x1: right, sense, at: (d) => (sense === 1 ? left + d : right - d) };
  });
};

const isFace = ({ band }: Laid): boolean => band.name !== 'end';

/** @param bands laid out anew for each drawing: a set of thousands of pieces could not keep them all */
const pieceOf = (spec: WrapSpec, bands: () => readonly Band[]): TemplatePiece => {
  const { joint, titles, name, insideOn } = spec;
  const shape = shapeOf(spec, bands());
  const laid = () => lay(bands(), insideOn, shape.start);
  return {
    name,
    title: `${titles.item}, ${titles.part}, ${titles.end}, corner ${titles.corner}`,
    caption: [titles.item, `${titles.part} · ${titles.corner}`, titles.end],
    count: titles.count,
    width: shape.width,
    height: shape.height,
    overhang: FOLD_OVERHANG,
    splittable: {
      x: laid()
        .slice(1)
        .map(({ x0 }) => x0),
      y: joint.tails.map(({ base }) => base),
    },
    draw: (splits) => draw(spec, laid(), shape, splits),
  };
};

/** A piece's size, and the tag that a piece grows whose board is too narrow to write on. */
interface Shape {
  /** Where the first band begins. */
  readonly start: number;
  readonly width: number;
  readonly height: number;
  readonly tag?: Strip;
}

const shapeOf = (spec: WrapSpec, bands: readonly Band[]): Shape => {
  const { joint, insideOn } = spec;
  const height = joint.width;
  const laid = lay(bands, insideOn, 0);
  const width = laid.at(-1)?.x1 ?? 0;
  const faces = laid.filter(isFace);
  const only = laid[0];
  if (faces.length === 0 && only !== undefined) {
    // An end strip has no grip: its tag stands out beyond the board's upper edge.
    const breadth = Math.max(width, SMALL * 1.15);
    const length = tagLength(breadth, letteringOf(spec.titles, 'end', 'all'));
    return {
      start: 0,
      width: breadth,
      height: height + length,
      tag: { box: { x0: 0, x1: breadth, y0: height, y1: height + length }, turn: 90, nameFirst: true },
    };
  }
  if (faces.every((face) => letterGrip(spec, face, shareOf(face, faces), 0, height) !== undefined))
    return { start: 0, width, height };
  const length = Math.max(
    ...faces.map(({ band }) => tagLength(height, letteringOf(spec.titles, band.name, 'all'))),
  );
  // The tag lengthens the outermost grip, on the left.
  return {
    start: length,
    width: width + length,
    height,
    tag: { box: { x0: 0, x1: length, y0: 0, y1: height }, turn: 0, nameFirst: true },
  };
};

/** Two faces share a piece's facts between them, the outside one first. */
const shareOf = ({ band }: Laid, faces: readonly Laid[]): Share =>
  faces.length === 1 ? 'all' : band.name === 'outside' ? 'first' : 'second';

/** The grip's letters between two heights, beside the groove where one crosses it. */
const letterGrip = (
  spec: WrapSpec,
  laid: Laid,
  share: Share,
  from: number,
  to: number,
): Mark[] | undefined => {
  const { band, at, sense } = laid;
  const [a, b] = [at(band.reach), at(band.width)];
  const groove = band.name === 'inside' ? spec.groove : undefined;
  const low = from === 0 ? EDGE_MARK : from;
  const spans: (readonly [number, number])[] =
    groove === undefined || groove.offset + groove.width <= low || groove.offset >= to
      ? [[low, to]]
      : [
          [low, groove.offset],
          [groove.offset + groove.width, to],
        ];
  const [y0, y1] = spans.reduce((best, span) => (span[1] - span[0] > best[1] - best[0] ? span : best));
  const box: Box = { x0: Math.min(a, b), x1: Math.max(a, b), y0, y1 };
  return letter({ box, turn: 90, nameFirst: sense === -1 }, letteringOf(spec.titles, band.name, share));
};

const draw = (spec: WrapSpec, laid: readonly Laid[], shape: Shape, splits: Splits): Drawing => {
  const { tag } = shape;
  const { width: height } = spec.joint;
  const inner = laid.flatMap((each) => roomWords(spec, each));
  const grooveWord = spec.groove === undefined ? [] : laid.flatMap((each) => grooveMarks(spec, each));
  const clear = [...inner, ...grooveWord].flatMap((mark) => (mark.kind === 'text' ? [clearBox(mark)] : []));
  const faces = laid.filter(isFace);
  const levels = [0, ...splits.y, height];
  const letters =
    tag === undefined
      ? faces.flatMap((face) =>
          levels
            .slice(1)
            .flatMap((to, i) => letterGrip(spec, face, shareOf(face, faces), levels[i] ?? 0, to) ?? []),
        )
      : letterTag(tag, letteringOf(spec.titles, laid[0]?.band.name ?? 'end', 'all'));
  return {
    box: {
      x0: -FOLD_OVERHANG,
      y0: -FOLD_OVERHANG,
      x1: shape.width + FOLD_OVERHANG,
      y1: shape.height + FOLD_OVERHANG,
    },
    marks: [
      ...wasteMarks(laid, clear),
      ...grooveWord,
      ...laid.flatMap(strokeMarks),
      ...foldMarks(laid, height),
      ...outlineMarks(laid, shape, height),
      ...faces.map(edgeMark),
      ...inner,
      ...letters,
    ],
  };
};

const wasteMarks = (laid: readonly Laid[], clear: readonly Box[]): StrokeMark[] => {
  const paths = laid.flatMap(({ band, at }) =>
    band.waste.flatMap((area) =>
      hatch(
        area.map(([d, u]): Point => [at(d), u]),
        clear,
      ),
    ),
  );
  return [{ kind: 'stroke', role: 'waste', pen: 'hatch', paths }];
};

const strokeMarks = ({ band, at }: Laid): StrokeMark[] =>
  band.strokes.map(({ role, pen, paths }) => ({
    kind: 'stroke',
    role,
    pen,
    paths: paths.map(({ points }) => ({ points: points.map(([d, u]): Point => [at(d), u]) })),
  }));

const level = (x0: number, x1: number, y: number): Path => ({
  points: [
    [x0, y],
    [x1, y],
  ],
});

const foldMarks = (laid: readonly Laid[], height: number): StrokeMark[] => {
  const paths = laid.slice(1).map(
    ({ x0 }): Path => ({
      points: [
        [x0, -FOLD_OVERHANG],
        [x0, height + FOLD_OVERHANG],
      ],
    }),
  );
  return paths.length === 0 ? [] : [{ kind: 'stroke', role: 'fold', pen: 'fold', paths }];
};

const outlineMarks = (
  laid: readonly Laid[],
  { start, width, height: tall }: Shape,
  height: number,
): StrokeMark[] => {
  const right = laid.at(-1)?.x1 ?? width;
  const points: Point[] = [
    [0, 0],
    [right, 0],
    [right, height],
    ...(tall > height
      ? ([
          [width, height],
          [width, tall],
          [0, tall],
        ] as const)
      : ([[0, height]] as const)),
  ];
  const board: StrokeMark = {
    kind: 'stroke',
    role: 'outline',
    pen: 'cut',
    paths: tall > height ? [{ points, closed: true }, level(0, right, height)] : [{ points, closed: true }],
  };
  return [board, { kind: 'stroke', role: 'outline', pen: 'edge', paths: [level(start, right, 0)] }];
};

/** The face-edge mark of the trade: an open arrow that touches the edge. */
const edgeMark = ({ band, at }: Laid): StrokeMark => {
  const x = at((band.reach + band.width) / 2);
  const points: Point[] = [
    [x - 1.6, 3.2],
    [x, 0],
    [x + 1.6, 3.2],
  ];
  return { kind: 'stroke', role: 'label', pen: 'medium', paths: [{ points }] };
};

/** Words inside the joint: the end's name, and the lap's. */
const roomWords = (spec: WrapSpec, { band, at }: Laid): TextMark[] => {
  if (band.name !== 'end') return [];
  const middle = spec.joint.width / 2;
  const name = standing(band, 'END', 'bold', band.reach / 2, middle, at);
  const lap = band.width - band.reach;
  const lapWord = upright('lap', 'regular', [at(band.reach + lap / 2), middle]);
  return [...(name ? [name] : []), ...(lap >= 3.2 ? [lapWord] : [])];
};

/** An upright word centred on a point. */
const upright = (text: string, weight: TextMark['weight'], [x, y]: Point): TextMark => ({
  kind: 'text',
  role: 'label',
  text,
  at: [x + (SMALL * CAP_HEIGHT) / 2, y],
  size: SMALL,
  turn: 90,
  anchor: 'middle',
  weight,
});

/** An upright word in the room nearest a height, where one is large enough. */
const standing = (
  band: Band,
  text: string,
  weight: TextMark['weight'],
  fromArris: number,
  near: number,
  at: (fromArris: number) => number,
): TextMark | undefined => {
  const length = textWidth(text, SMALL, weight) + 2;
  const rooms = band.rooms.filter(({ from, to }) => to - from >= length);
  if (band.reach < SMALL || rooms.length === 0) return undefined;
  const distance = ({ from, to }: { from: number; to: number }) => Math.abs((from + to) / 2 - near);
  const room = rooms.reduce((best, other) => (distance(other) < distance(best) - 1e-9 ? other : best));
  return upright(text, weight, [at(fromArris), (room.from + room.to) / 2]);
};

/** Two thin dashed lines across the inside face, and the groove's name where it has room. */
const grooveMarks = ({ groove }: WrapSpec, { band, at }: Laid): Mark[] => {
  if (groove === undefined || band.name !== 'inside') return [];
  const { offset, width } = groove;
  const paths = [offset, offset + width].map((y) => level(at(0), at(band.width), y));
  const lines: Mark = { kind: 'stroke', role: 'groove', pen: 'groove', paths };
  const length = textWidth('groove', SMALL, 'regular');
  if (width < SMALL * CAP_HEIGHT + 0.8) return [lines];
  const grip = band.width - band.reach >= length + 1;
  const x = at(grip ? (band.reach + band.width) / 2 : band.width - 1 - length / 2);
  return [
    lines,
    {
      kind: 'text',
      role: 'label',
      text: 'groove',
      at: [x, offset + (width - SMALL * CAP_HEIGHT) / 2],
      size: SMALL,
      turn: 0,
      anchor: 'middle',
      weight: 'regular',
    },
  ];
};

/** The space a word takes, with a little air, that no hatching may enter. */
const clearBox = ({ at: [x, y], text, size, turn, weight }: TextMark): Box => {
  const half = textWidth(text, size, weight) / 2 + 0.8;
  const cap = size * CAP_HEIGHT;
  return turn === 90
    ? { x0: x - cap - 0.8, x1: x + 0.8, y0: y - half, y1: y + half }
    : { x0: x - half, x1: x + half, y0: y - 0.8, y1: y + cap + 0.8 };
};
