import { EPSILON } from '../units/epsilon.ts';
import { type Notation, unitOf } from '../units/notation.ts';
import { mm, type Phrase, say } from '../units/phrase.ts';
import { MM_PER_INCH, type Unit } from '../units/unit.ts';
import { slotToCut } from '../wood/bottomSeason.ts';
import { partEnds } from './blanks/partEnds.ts';
import { bottomThroughYear } from './bottomDepth.ts';
import type { Hand } from './cornerLetters.ts';
import { type Drawer, type DrawerSet, madeOf } from './drawer.ts';
import type { DrawerPart } from './drawerParts.ts';
import type { DrawerSpec, Stock } from './drawerSpec.ts';
import { builtAt, entryName } from './made/built.ts';
import { copyNumbers } from './made/builtCopies.ts';
import { measureWords } from './made/builtWords.ts';

/** A kind of part. */
export type PartName = 'front' | 'side' | 'back' | 'bottom' | 'slip';

/** One row of the parts list. Lengths in mm. */
export interface Part {
  /** The name of the drawer, or of the box. */
  readonly drawer: string;
  /** Whether it is a box's. */
  readonly box?: true;
  /** Which of its equal drawers they are of, from 1; only where these differ, as boards came out other than planned. */
  readonly copies?: readonly number[];
  readonly part: PartName;
  /** Which side it is; only where a drawer's two differ. */
  readonly hand?: Hand;
  /** How many are made for all the drawers of this kind: two sides for each. */
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /**
   * To saw to first: the finished length and, for each jointed end, the joint's depth and 3 mm, or where it is more the
   * thickness of the side that is let into it and a saw cut, so that a poor trial joint can be cut off, its rebate for a lip too; for each end that is trimmed as it is fitted, 5 mm or 3/16 in. Up to the next whole mm, or the next 1/16 in.
   */
  readonly roughLength: number;
  readonly species?: string;
  /** Which way the grain runs in the drawer. */
  readonly grain: string;
  /** Grooves, rebates and what else is worked on its edges and faces; empty for a plain board. */
  readonly worked: readonly Phrase[];
  /** Its measures that came out, and were not planned: `10.6 mm thick`. */
  readonly built?: Phrase;
  /** The boards that they come out of, each once, in the order of the equal parts; only where the plan lists boards. */
  readonly boards?: readonly string[];
  /** For each of those boards, the letters that are written on it for these parts. */
  readonly letters?: readonly (readonly string[])[];
}

/** The drawer of a part: `Buttons`, or `Buttons 2` where its equal drawers differ. */
export const drawerOf = ({ drawer, copies }: Pick<Part, 'drawer' | 'copies'>): string =>
  copies === undefined ? drawer : `${drawer} ${copyNumbers(copies)}`;

/** `left side`, or `side` where both are alike. */
export const partWords = ({ part, hand }: Pick<Part, 'hand'> & { readonly part: string }): string =>
  hand === undefined ? part : `${hand} ${part}`;

/** How a part came out, where that was not as planned, and what is worked on it. */
export const workedOn = ({ built, worked }: Pick<Part, 'built' | 'worked'>): readonly Phrase[] =>
  built === undefined ? worked : [say`${built} as it came out`, ...worked];

/** Which of the equal parts of the plan's entry these are, from 1: of sides the odd ones are left. */
export const indicesOf = ({ part, count, copies, hand }: Part): number[] => {
  const places = part === 'side' || part === 'slip' ? 2 : 1;
  const hands = hand === undefined ? Array.from({ length: places }, (_, i) => i) : [hand === 'left' ? 0 : 1];
  const drawers = copies ?? Array.from({ length: count / hands.length }, (_, i) => i + 1);
  return drawers.flatMap((copy) => hands.map((place) => places * (copy - 1) + place + 1));
};

/** `Ash 1 G H`, `Ash 3 J`: each board that a part comes out of, with the letters written there; none where no board is known. */
export const letteredBoards = ({ boards = [], letters = [] }: Pick<Part, 'boards' | 'letters'>): string[] =>
  boards.map((board, i) => [board, ...(letters[i] ?? [])].join(' '));

/** Quantity of one kind of stock that a set needs: one species in one thickness. */
export interface StockTotal {
  readonly species?: string;
  readonly thickness: number;
  /** Number of pieces. */
  readonly count: number;
  /** Of the pieces at their rough length and finished width, in mm²; planing and sawing are not in it. */
  readonly area: number;
  /** Of all rough lengths, in mm. */
  readonly length: number;
}

/**
 * Every part of a set, drawer by drawer, then box by box.
 * @param units what the rough lengths will be measured in
 * @example
 * ```ts
 * for (const { count, drawer, part, length } of parts(project.set))
 *   console.log(`${count} x ${drawer} ${part}, ${formatLength(length, 'mm')}`);
 * ```
 */
export const parts = (set: DrawerSet, units: Notation = 'mm'): Part[] =>
  madeOf(set).flatMap((drawer) => partsOf(drawer, units));

/** How the grain runs in all parts but bottoms. */
export const ALONG = 'along its length';

/** The finest step of a rough length, in mm. */
const ROUGH_STEP: Readonly<Record<Unit, number>> = { mm: 1, in: MM_PER_INCH / 16 };

/** A length to saw to, up to the next step that a rule shows plainly; what floats leave behind is not past a step. */
export const roughLength = (length: number, unit: Unit): number =>
  Math.ceil(length / ROUGH_STEP[unit] - EPSILON) * ROUGH_STEP[unit];

const partsOf = (drawer: Drawer, units: Notation): Part[] => {
  const { spec, boards } = drawer;
  const { stock, bottom } = spec;
  const unit = unitOf(units);
  const ends = (part: PartName, hand?: Hand) => partEnds(drawer, unit, hand)[part];
  const row = (
    part: PartName,
    board: DrawerPart,
    { species }: Stock,
    { grain, worked }: { grain: string; worked: readonly Phrase[] },
    hand?: Hand,
  ): Part => ({
    drawer: entryName(spec),
    ...(spec.made && spec.name !== spec.made.name && { copies: spec.made.copies }),
    ...(spec.box && { box: true }),
    part,
    ...(hand && { hand }),
    count: spec.count * board.boxes.length,
    length: board.length,
    width: board.width,
    thickness: board.thickness,
    roughLength: roughLength(board.length + ends(part, hand)[0].spare + ends(part, hand)[1].spare, unit),
    ...(species === undefined ? {} : { species }),
    grain,
    worked,
    ...builtPart(spec, part, hand),
  });
  const ofSide = { grain: ALONG, worked: bottom.hold.kind === 'groove' ? [onSide(drawer)] : [] };
  return [
    row('front', boards.front, stock.front, {
      grain: ALONG,
      worked: onFront(drawer),
    }),
    ...(boards.rightSide === undefined
      ? [row('side', boards.side, stock.side, ofSide)]
      : [
          row('side', boards.side, stock.side, ofSide, 'left'),
          row('side', boards.rightSide, stock.side, ofSide, 'right'),
        ]),
    row('back', boards.back, stock.back, {
      grain: ALONG,
      worked: spec.box === undefined ? [] : [ofPinBoard(drawer, groovePhrase(drawer, 'inside face', 0))],
    }),
    row('bottom', boards.bottom, stock.bottom, {
      grain: bottom.kind === 'solid' ? 'from side to side' : 'either way',
      worked: onBottom(drawer, unit),
    }),
    ...(boards.slip === undefined
      ? []
      : [
          row('slip', boards.slip, stock.side, {
            grain: ALONG,
            worked: [groovePhrase(drawer, 'inside face', 0)],
          }),
        ]),
  ];
};

/** What came out of a part; of sides that are alike, of the left one. */
const builtPart = (spec: DrawerSpec, part: PartName, hand: Hand = 'left'): Pick<Part, 'built'> => {
  const built = part === 'slip' ? undefined : builtAt(spec, part, hand);
  return built === undefined ? {} : { built: measureWords(built.board) };
};

/** The bottom's groove, or a box's rebate for it, in a board whose lower edge lies `below` the reference edge. */
const groovePhrase = ({ spec: { groove } }: Drawer, face: string, below: number): Phrase =>
  groove.rebate
    ? say`${face}: rebate ${mm(groove.width)} high, ${mm(groove.depth)} deep along the lower edge`
    : say`${face}: groove ${mm(groove.width)} wide, ${mm(groove.depth)} deep, ${mm(groove.offset + below)} above the lower edge`;

/** A groove stops in the sides, a rebate in front and back. */
const ofPinBoard = (drawer: Drawer, groove: Phrase): Phrase =>
  drawer.spec.groove.rebate ? stopped(drawer, groove) : groove;

const onSide = (drawer: Drawer): Phrase => {
  const groove = groovePhrase(drawer, 'inside face', 0);
  return drawer.spec.groove.rebate ? groove : stopped(drawer, groove);
};

const stopped = ({ spec: { groove, box } }: Drawer, phrase: Phrase): Phrase =>
  groove.stopped === undefined
    ? phrase
    : say`${phrase}, stopped ${mm(groove.stopped)} from ${box === undefined ? 'the front end' : 'both ends'}`;

const onFront = (drawer: Drawer): Phrase[] => {
  const { spec, sizes } = drawer;
  const { sides, top, bottom } = sizes.rebate;
  const groove = ofPinBoard(drawer, groovePhrase(drawer, 'inside face', bottom));
  return spec.lip === undefined
    ? [groove]
    : [
        [
          ...say`inside face: rebate ${mm(spec.stock.front.thickness - sizes.lap)} deep`,
          ...(sides > 0 ? say`, ${mm(sides)} wide at both ends` : []),
          ...(top > 0 ? say`, ${mm(top)} at the upper edge` : []),
          ...(bottom > 0 ? say`, ${mm(bottom)} at the lower edge` : []),
        ],
        groove,
      ];
};

const onBottom = ({ spec, sizes }: Drawer, unit: Unit): Phrase[] => {
  const { stock, groove } = spec;
  const needed = bottomThroughYear(spec, sizes)?.slot;
  const slot = needed && slotToCut(needed, unit);
  return [
    ...(stock.bottom.thickness > groove.width
      ? [
          say`underside: ${spec.box === undefined ? 'front and side edges' : 'all edges'} thinned to ${mm(groove.width)}, ${mm(groove.depth)} in from the edge`,
        ]
      : []),
    ...(slot
      ? [
          slot.behind < stock.back.thickness / 2
            ? say`at the back: a slot ${mm(slot.length)} long for each screw, its front end ${mm(slot.ahead)} ahead of the screw's middle`
            : say`at the back: a slot for each screw, open at the edge, its front end ${mm(slot.ahead)} ahead of the screw's middle`,
        ]
      : []),
  ];
};

/**
 * Quantity of each kind of stock that the parts need, in the order in which it is first needed.
 * @example
 * ```ts
 * for (const { species, area } of stockTotals(parts(project.set))) console.log(species ?? 'any wood', `${area / 1e6} m²`);
 * ```
 */
export const stockTotals = (rows: readonly Part[]): StockTotal[] => {
  const totals = new Map<string, StockTotal>();
  for (const { species, thickness, count, width, roughLength } of rows) {
    const key = JSON.stringify([species, thickness]);
    const before = totals.get(key) ?? {
      ...(species === undefined ? {} : { species }),
      thickness,
      count: 0,
      area: 0,
      length: 0,
    };
    totals.set(key, {
      ...before,
      count: before.count + count,
      area: before.area + count * width * roughLength,
      length: before.length + count * roughLength,
    });
  }
  return [...totals.values()];
};
