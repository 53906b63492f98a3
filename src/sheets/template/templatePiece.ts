import type { Box, Drawing, Point, StrokeMark } from '../../drawing/drawing.ts';
import { hatch } from '../../drawing/hatch.ts';
import { line, polygon, stroke } from '../../drawing/shapes.ts';
import type { Joint, JointBoard } from '../../joint/joint.ts';
import type { Surface } from '../../joint/kinds/kind.ts';
import type { Piece, Splits, TapedLength } from '../../paper/piece.ts';
import { betweenSplits } from '../../paper/piece.ts';
import type { ShortName } from '../../units/shortNames.ts';
import { type Band, bandsOf, dividedAt, INSIDE_FLAP, type MarkedEnd, surfacesOf } from './band.ts';
import { edgeMark } from './edgeMark.ts';
import { endWords } from './endWords.ts';
import { gripLettering } from './gripLettering.ts';
import { type GrooveMark, grooveLines, grooveWord } from './grooveMark.ts';
import type { Sign } from './legend.ts';
import { type Lettering, setTagLettering } from './lettering.ts';
import { noTailWord } from './noTailWord.ts';
import { type PieceShape, pieceShape } from './pieceShape.ts';
import { isFace, type PlacedBand } from './placedBand.ts';
import {
  gripLabels,
  letteringOf,
  letteringOfEnd,
  letteringOfTag,
  type Share,
  type Titles,
  tapedUp,
} from './titles.ts';
import { wasteWord } from './wasteWord.ts';
import { hatchFreeBox } from './word.ts';

/** A piece with its title in parts: the drawer, the part and corner, the end, and the face of a flat template. */
export interface TemplatePiece extends Piece {
  readonly caption: readonly [item: string, ...about: string[]];
  /** The drawer, or the single corner, in every wording. */
  readonly itemName: ShortName;
  /** Signs on it for the legend to explain. */
  readonly signs: readonly Sign[];
  /** Lines for a small picture of it: all but waste, words, folds and grooves. */
  lines(): readonly StrokeMark[];
}

export interface TemplateSpec extends MarkedEnd {
  readonly name: string;
  /** Side of the inside face, seen in front of the board's end with its reference edge down. */
  readonly insideOn: 'left' | 'right';
  /** The drawer, or the single corner, as it is in the titles. */
  readonly itemName: ShortName;
  readonly titles: Titles;
  readonly groove?: GrooveMark;
}

/** Length of a fold line beyond the cutting outline, mm. */
const FOLD_OVERHANG = 3;

/** Names of the flat templates. */
const FLAT_TITLES: Readonly<Record<Surface, string>> = {
  inside: 'inside face',
  outside: 'outside face',
  end: 'end grain',
};

/**
 * Gives a piece's spec whenever it is needed, as its bands and its shape are made again for each drawing: kept, those of
 * 1,000 drawers take over 100 MB.
 */
type SpecOf = () => TemplateSpec;

/** The bands of a board's end as one piece, to be folded round it. */
export const foldedTemplate = (specOf: SpecOf): TemplatePiece => pieceOf(specOf, bandsOf);

/** Each band as a piece of its own, for boards of uneven thickness; the end grain's has a flap over the inside arris. */
export const flatTemplates = (specOf: SpecOf): TemplatePiece[] =>
  surfacesOf(specOf()).map((face) =>
    pieceOf(
      () => {
        const { groove, name, ...spec } = specOf();
        return { ...spec, name: flatName(name, face), ...(face !== 'end' && groove && { groove }) };
      },
      (spec) => [
        ...(face === 'end' ? [INSIDE_FLAP] : []),
        ...bandsOf(spec).filter((band) => band.name === face),
      ],
      face,
    ),
  );

/** The name of the flat template of one face. */
export const flatName = (name: string, face: Surface): string => `${name}-${face}`;

/** @param only the surface of a flat template's single band */
const pieceOf = (
  specOf: SpecOf,
  bands: (spec: TemplateSpec) => readonly Band[],
  only?: Surface,
): TemplatePiece => {
  const shapeOf = (spec: TemplateSpec): PieceShape => shapeOfPiece(spec, bands(spec));
  const spec = specOf();
  const { joint, titles, name, itemName } = spec;
  const { placed, width, height } = shapeOf(spec);
  const strip = only === undefined ? [] : [FLAT_TITLES[only]];
  const y = tapedUp(titles, joint.width);
  return {
    name,
    title: [titles.item, titles.part, titles.end, `corner ${titles.corner}`, ...strip].join(', '),
    caption: [titles.item, `${titles.part} · ${titles.corner}`, titles.end, ...strip],
    itemName,
    signs: signsOn(placed),
    count: titles.count,
    width,
    height,
    overhang: FOLD_OVERHANG,
    splittable: {
      x: placed.slice(1).map(({ x0 }) => x0),
      y: dividedAt(joint),
    },
    taped: placed.length > 1 ? { x: tapedAcross(placed), y } : { y },
    lines: () => {
      const shape = shapeOf(specOf());
      return [...shape.placed.flatMap(strokeMarks), ...outlineMarks(shape)];
    },
    draw: (splits) => {
      const drawn = specOf();
      return draw(drawn, shapeOf(drawn), splits);
    },
  };
};

/** Signs of a piece with these bands. */
const signsOn = (placed: readonly PlacedBand[]): readonly Sign[] => {
  const hasLap = placed.some((each) => !isFace(each) && each.band.reach < each.band.width);
  return SIGNS[placed.length > 1 ? 'folded' : 'flat'][hasLap ? 'withLap' : 'without'];
};

/** Shared by all pieces, of which a large set has thousands. */
const SIGNS = {
  folded: { without: ['waste', 'edge', 'fold'], withLap: ['waste', 'edge', 'fold', 'lap'] },
  flat: { without: ['waste', 'edge'], withLap: ['waste', 'edge', 'lap'] },
} as const;

/** The length across the joint of a whole piece: from one face's baseline to the other's, or to the outline where it has one face. */
const tapedAcross = (placed: readonly PlacedBand[]): TapedLength => {
  const [from = 0, to] = placed.filter(isFace).map(({ band, at }) => at(band.reach));
  const [outline = 0] = placed.filter((each) => !isFace(each)).map(({ band, at }) => at(band.width));
  return {
    length: Math.abs((to ?? outline) - from),
    between: [to === undefined ? 'baseline to outline' : 'baseline to baseline'],
  };
};

const shapeOfPiece = (spec: TemplateSpec, bands: readonly Band[]): PieceShape => {
  const { joint, titles, insideOn, groove } = spec;
  const faces = bands.filter(({ name }) => name !== 'end');
  return pieceShape(bands, insideOn, joint.width, {
    fitsGrips: (placed) =>
      placed
        .filter(isFace)
        .every(
          (face, _, all) =>
            gripLettering(face, letteringOnGrip(spec, face, all), groove, [0, joint.width]) !== undefined,
        ),
    onTag: (on) =>
      faces.some(isFlap)
        ? letteringOfEnd(titles, insideOn === 'left' ? '→' : '←', '↓')
        : letteringOfTag(
            titles,
            on,
            faces.map(({ name }) => name),
          ),
  });
};

const isFlap = (band: Band): boolean => band === INSIDE_FLAP;

const letteringOnGrip = (
  { titles, insideOn }: TemplateSpec,
  face: PlacedBand,
  faces: readonly PlacedBand[],
): Lettering =>
  isFlap(face.band)
    ? // The text runs upward, so what is on the right of the page is below it.
      letteringOfEnd(titles, insideOn === 'left' ? '↓' : '↑', '←')
    : letteringOf(titles, face.band.name, shareOf(face, faces));

/** Two faces share a piece's labels, the outside face first. */
const shareOf = ({ band }: PlacedBand, faces: readonly PlacedBand[]): Share =>
  faces.length === 1 ? 'all' : band.name === 'outside' ? 'first' : 'second';

const draw = (spec: TemplateSpec, shape: PieceShape, splits: Splits): Drawing => {
  const { joint, board, groove, jointFrom } = spec;
  const { placed, tag } = shape;
  const height = joint.width;
  const parts = betweenSplits(splits.y, height);
  const ends = placed.filter((each) => !isFace(each));
  const faces = placed.filter(isFace);
  const grooved =
    groove === undefined
      ? []
      : placed.filter(({ band }) => band.name === 'inside').map((face) => ({ face, groove }));
  const inner = [
    ...ends.flatMap((end) => parts.flatMap((part) => endWords(joint, board, end, part))),
    ...grooved.flatMap(({ face, groove }) => grooveWord(groove, face, parts)),
    ...faces.flatMap((face) => parts.flatMap((part) => wasteWord(face, groove, part))),
    ...placed.flatMap((each) => parts.flatMap((part) => noTailWord(each, jointFrom, groove, part))),
  ];
  const letters = faces.flatMap((face) => {
    const lettering =
      tag === undefined ? letteringOnGrip(spec, face, faces) : gripLabels(face.band.name, !isFlap(face.band));
    return parts.flatMap((part) => gripLettering(face, lettering, groove, part) ?? []);
  });
  return {
    box: {
      x0: -FOLD_OVERHANG,
      y0: -FOLD_OVERHANG,
      x1: shape.width + FOLD_OVERHANG,
      y1: shape.height + FOLD_OVERHANG,
    },
    marks: [
      ...wasteMarks(placed, inner.map(hatchFreeBox)),
      ...grooved.map(({ face, groove }) => grooveLines(groove, face)),
      ...sawMarks(joint, board, placed),
      ...placed.flatMap(strokeMarks),
      ...foldMarks(placed, height),
      ...outlineMarks(shape),
      ...faces.map(({ band, at }) => edgeMark(at((band.reach + band.width) / 2))),
      ...inner,
      ...letters,
      ...(tag === undefined ? [] : setTagLettering(tag.area, tag.lettering)),
    ],
  };
};

const wasteMarks = (placed: readonly PlacedBand[], clear: readonly Box[]): StrokeMark[] => {
  const areas = placed.flatMap(({ band, at }) =>
    band.waste.map((area) => area.map(([d, u]): Point => [at(d), u])),
  );
  const paths = areas.flatMap((area) => hatch(area, clear));
  return [stroke('waste', 'hatch', paths)];
};

/** Where a lid is sawn off, over the pin that lies there: on the tail board that is waste. */
const sawMarks = (
  { sawCut }: Joint,
  board: JointBoard,
  placed: readonly PlacedBand[],
): readonly StrokeMark[] =>
  sawCut === undefined || board === 'tail'
    ? []
    : placed.map(({ band, at }) =>
        stroke(
          'groove',
          'groove',
          sawCut.map((u) => line(at(0), u, at(band.reach), u)),
        ),
      );

const strokeMarks = ({ band, at }: PlacedBand): StrokeMark[] =>
  band.strokes.map(({ role, pen, paths }) =>
    stroke(
      role,
      pen,
      paths.map(({ points }) => ({ points: points.map(([d, u]): Point => [at(d), u]) })),
    ),
  );

const foldMarks = (placed: readonly PlacedBand[], height: number): StrokeMark[] => {
  const paths = placed.slice(1).map(({ x0 }) => line(x0, -FOLD_OVERHANG, x0, height + FOLD_OVERHANG));
  return paths.length === 0 ? [] : [stroke('fold', 'fold', paths)];
};

/** The cutting outline, and the edge that aligns the template. */
const outlineMarks = ({ placed, outline }: PieceShape): StrokeMark[] => {
  const [from, to] = [placed[0]?.x0 ?? 0, placed.at(-1)?.x1 ?? 0];
  return [stroke('outline', 'cut', [polygon(outline)]), stroke('outline', 'edge', [line(from, 0, to, 0)])];
};
