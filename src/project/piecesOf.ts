import { cornerLetter, HANDS, type Hand } from '../drawer/cornerLetters.ts';
import { type Drawer, madeOf } from '../drawer/drawer.ts';
import { type Sizes, sidePastFront } from '../drawer/drawerSizes.ts';
import { entryName } from '../drawer/made/built.ts';
import { builtOn } from '../drawer/made/builtWords.ts';
import { type DrawerCorner, drawerCorners } from '../drawer/made/drawerCorners.ts';
import { joinedNames } from '../drawer/made/joinedNames.ts';
import type { Joint, JointBoard } from '../joint/joint.ts';
import type { TopRail } from '../joint/topRail.ts';
import { stems } from '../sheets/fileStem.ts';
import {
  BOTH_BOARDS,
  type BoardEnd,
  type Corner,
  cornerPieces,
  type PieceChoice,
  pieceNames,
} from '../sheets/template/cornerPieces.ts';
import type { TemplatePiece } from '../sheets/template/templatePiece.ts';
import { FRONT_EDGE, frontLine, REBATE_EDGE } from '../sheets/template/titles.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { groupNames, type ShortName } from '../units/shortNames.ts';
import { boardsDrawn, type Only } from './only.ts';
import type { Project, SingleCorner } from './project.ts';

/**
 * Every template of a project's corners, left and right, equal ones once. Each is drawn when it is needed.
 * @example
 * ```ts
 * const tailsOnly = piecesOf(project, { ...BOTH_BOARDS, boards: ['tail'] });
 * console.log(tailsOnly.map(({ title, count }) => `${title}: quantity ${count}`));
 * ```
 */
export const piecesOf = (project: DrawnProject, choice = BOTH_BOARDS): TemplatePiece[] =>
  templateCorners(project).flatMap((corner) => cornerPieces(corner, ofCorner(corner, choice)));

/** The corners of which a choice has templates. */
export const chosenCorners = (project: DrawnProject, choice = BOTH_BOARDS): DrawnCorner[] =>
  templateCorners(project).filter((corner) => {
    const { boards, rods } = ofCorner(corner, choice);
    return boards.length > 0 || rods;
  });

/** What is chosen of a corner: of its boards only those that are drawn. */
const ofCorner = ({ boards: drawn }: DrawnCorner, choice: PieceChoice): PieceChoice => ({
  ...choice,
  boards: choice.boards.filter((board) => drawn.includes(board)),
});

/** The part of a project that templates depend on. */
type DrawnProject = Pick<Project, 'set' | 'joints' | 'units' | 'only'>;

/** A corner and those of its boards that are drawn. */
export interface DrawnCorner extends Corner {
  readonly boards: readonly JointBoard[];
}

/** Every corner to be drawn; equal ones of several drawers only once, named for them all. */
export const templateCorners = (project: DrawnProject): DrawnCorner[] => {
  const corners = unnamedCorners(project);
  const join = joinedNames(project.set.drawers);
  const nameOf = groupNames(
    [...madeOf(project.set).map(({ spec }) => spec.name), ...project.joints.map(({ name }) => name)],
    corners.map(({ names }) => join(names)),
  );
  return corners.map((corner) => ({ ...corner, ...nameOf(join(corner.names)), names: corner.names }));
};

/** The name of every template that a project can have, whatever the choice. */
export const templateNames = (project: DrawnProject): string[] =>
  unnamedCorners(project).flatMap((corner) =>
    [false, true].flatMap((flat) => pieceNames(corner, { boards: corner.boards, flat, rods: true })),
  );

const unnamedCorners = ({ set, joints, units, only }: DrawnProject): UnnamedCorner[] => {
  // What is not drawn has its stem too, so that a piece's file has the same name whatever else is drawn.
  const stem = stems();
  return merged(
    [
      ...madeOf(set).flatMap((drawer) => cornersToDraw(drawer, stem(drawer.spec.name), units, only)),
      ...joints.flatMap((single) => jointCorners(single, stem(single.name), units, only)),
    ].filter(({ boards }) => boards.length > 0),
  );
};

/** A corner that has no wordings of its names yet. */
type UnnamedCorner = Omit<DrawnCorner, Exclude<keyof ShortName, 'names'>>;

const jointCorners = (
  { name, joint, rail }: SingleCorner,
  stem: string,
  units: Notation,
  only: Only | undefined,
): UnnamedCorner[] =>
  HANDS.map((hand) => ({
    joint,
    names: [name],
    boards: boardsDrawn(only, name),
    letter: cornerLetter('front', hand),
    count: 1,
    ...(rail === undefined
      ? {
          hand,
          tailBoard: { part: 'tail board', end: `${hand} corner` },
          pinBoard: { part: 'pin board', end: `${hand} corner` },
        }
      : railEnds(rail, hand, units)),
    units,
    stem,
  }));

/** A rail's end and the top end of the side that it is let into, both from where the rail's front edge lies. */
const railEnds = (
  { setBack }: TopRail,
  hand: Hand,
  units: Notation,
): Pick<UnnamedCorner, 'hand' | 'tailBoard' | 'pinBoard'> => ({
  // Its outside face lies up, and seen from its left end that is on the right where its front edge is below.
  hand: hand === 'left' ? 'right' : 'left',
  tailBoard: { part: 'rail', end: `${hand} end`, edge: FRONT_EDGE, upper: 'back edge' },
  pinBoard: {
    part: `${hand} side`,
    end: 'top end',
    edge: setBack > 0 ? frontLine(formatLength(setBack, units)) : FRONT_EDGE,
    upper: "rail's back edge",
  },
});

const cornersToDraw = (
  drawer: Drawer,
  stem: string,
  units: Notation,
  only: Only | undefined,
): UnnamedCorner[] =>
  drawerCorners(drawer).flatMap((corner) =>
    corner.hands.map((hand) => cornerToDraw(drawer, corner, hand, { stem, units, only })),
  );

const cornerToDraw = (
  drawer: Drawer,
  { end, joint, overhang }: DrawerCorner,
  hand: Hand,
  { stem, units, only }: { stem: string; units: Notation; only: Only | undefined },
): UnnamedCorner => {
  const { spec, sizes } = drawer;
  const { offset, width, stopped, rebate } = spec.groove;
  const groove = { offset, width, ...(rebate && { rebate }) };
  const isGrooved = end === 'front' || spec.box !== undefined;
  const stops = isGrooved && stopped !== undefined ? { stopped } : {};
  // A groove stops in the tail boards, a rebate in the pin boards.
  const [stop, pinStop] = rebate ? [{}, stops] : [stops, {}];
  const past = sidePastFront(sizes, hand);
  const side: BoardEnd = {
    part: `${hand} side`,
    end: `${end} end`,
    ...(spec.bottom.hold.kind === 'groove' && { groove: { ...groove, ...stop } }),
    ...cameOut(builtOn(spec, 'side', hand)),
    // A drawer's back starts at the groove's upper edge.
    ...(!isGrooved && { jointFrom: sizes.backFrom }),
    ...(overhang?.upper && { upper: `${end}'s upper edge` }),
  };
  return {
    names: [spec.name],
    count: spec.count,
    units,
    stem,
    joint,
    boards: boardsDrawn(only, entryName(spec), end),
    letter: cornerLetter(end, hand),
    // From behind, the right side is at the left.
    hand: end === 'front' ? hand : hand === 'left' ? 'right' : 'left',
    tailBoard: side,
    pinBoard: {
      part: end,
      end: `${hand} end`,
      ...(isGrooved && { groove: { ...groove, ...pinStop } }),
      ...(end === 'front' && behindLip(sizes)),
      ...(end === 'front' && past < 0 && { upper: "side's upper edge" }),
      ...cameOut(builtOn(spec, end)),
    },
  };
};

const cameOut = (built: NonNullable<BoardEnd['built']>): Pick<BoardEnd, 'built'> =>
  built.length > 0 ? { built } : {};

/**
 * A front with a lip is rebated where the lip is: at its ends its template is wrapped round the rebate's shoulder, and
 * along its lower edge it is laid against the rebate; the lip lies beyond it.
 */
const behindLip = ({ rebate: { sides, bottom } }: Sizes): Pick<BoardEnd, 'rebated' | 'edge'> => ({
  ...(sides > 0 && { rebated: true }),
  ...(bottom > 0 && { edge: [...REBATE_EDGE, 'edge'] }),
});

const merged = (corners: readonly UnnamedCorner[]): UnnamedCorner[] => {
  const shapeOf = shapes();
  const byShape = new Map<string, UnnamedCorner>();
  for (const corner of corners) {
    const { joint, letter, hand, tailBoard, pinBoard, boards } = corner;
    // What a rebate leaves of the pin board's end is as thick as the joint is deep, however much it takes.
    const end = pinBoard.rebated ? undefined : joint.pinBoard;
    const key = JSON.stringify([shapeOf(joint), end, letter, hand, tailBoard, pinBoard, boards]);
    const equal = byShape.get(key);
    byShape.set(
      key,
      equal === undefined
        ? corner
        : { ...equal, names: [...equal.names, ...corner.names], count: equal.count + corner.count },
    );
  }
  return [...byShape.values()];
};

/** A function that numbers the shapes of joints, equal ones alike; what the pin board's end is of, and how far before it the tail board ends, is no part of them. */
const shapes = (): ((joint: Joint) => number) => {
  const numbers = new Map<string, number>();
  return (joint) => {
    const { advice: _, alternatives: __, pinBoard: ___, setBack: ____, ...shape } = joint;
    const key = JSON.stringify(shape);
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  };
};
