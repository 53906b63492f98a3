import { cornerLetter } from '../drawer/cornerLetters.ts';
import type { Drawer } from '../drawer/drawer.ts';
import { sidesPastBack } from '../drawer/drawerSizes.ts';
import type { Joint } from '../joint/joint.ts';
import { stems } from '../sheets/fileStem.ts';
import {
  BOTH_BOARDS,
  type BoardEnd,
  type Corner,
  cornerPieces,
  type PieceChoice,
} from '../sheets/template/cornerPieces.ts';
import type { TemplatePiece } from '../sheets/template/templatePiece.ts';
import { REBATE_EDGE, type Titles } from '../sheets/template/titles.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { groupNames, type ShortName } from '../units/shortNames.ts';
import type { Project } from './project.ts';

const HANDS = ['left', 'right'] as const;

/**
 * Every template of a project's corners, left and right, equal ones once. Each is drawn when it is needed.
 * @example
 * ```ts
 * const tailsOnly = piecesOf(project, { ...BOTH_BOARDS, boards: ['tail'] });
 * console.log(tailsOnly.map(({ title, count }) => `${title}: make ${count}`));
 * ```
 */
export const piecesOf = (project: DrawnProject, choice: PieceChoice = BOTH_BOARDS): TemplatePiece[] =>
  templateCorners(project).flatMap((corner) => cornerPieces(corner, choice));

/** The part of a project that templates depend on. */
type DrawnProject = Pick<Project, 'set' | 'joints' | 'units'>;

/** Every corner to be drawn; equal ones of several drawers only once, named for them all. */
export const templateCorners = ({ set, joints, units }: DrawnProject): Corner[] => {
  const stem = stems();
  const corners = merged([
    ...set.drawers.flatMap((drawer) => drawerCorners(drawer, stem(drawer.spec.name), units)),
    ...joints.flatMap(({ name, joint }) => jointCorners(name, joint, stem(name), units)),
  ]);
  const nameOf = groupNames(
    [...set.drawers.map(({ spec }) => spec.name), ...joints.map(({ name }) => name)],
    corners.map(({ names }) => names),
  );
  return corners.map((corner) => ({ ...corner, ...nameOf(corner.names) }));
};

/** A corner that has no wordings of its names yet. */
type UnnamedCorner = Omit<Corner, Exclude<keyof ShortName, 'names'>>;

const jointCorners = (name: string, joint: Joint, stem: string, units: Notation): UnnamedCorner[] =>
  HANDS.map((hand) => ({
    joint,
    names: [name],
    letter: cornerLetter('front', hand),
    hand,
    count: 1,
    tailBoard: { part: 'tail board', end: `${hand} corner` },
    pinBoard: { part: 'pin board', end: `${hand} corner` },
    units,
    stem,
  }));

const drawerCorners = (drawer: Drawer, stem: string, units: Notation): UnnamedCorner[] => {
  const { spec, front, back } = drawer;
  const { offset, width } = spec.groove;
  const groove = { offset, width };
  const common = { names: [spec.name], count: spec.count, units, stem };
  const side = (hand: string, end: string): BoardEnd => ({
    part: `${hand} side`,
    end,
    ...(spec.bottom.hold.kind === 'groove' && { groove }),
  });
  const fronts = HANDS.map(
    (hand): UnnamedCorner => ({
      ...common,
      joint: front,
      pinBoard: { part: 'front', end: `${hand} end`, groove, ...(spec.lip && BEHIND_LIP) },
      letter: cornerLetter('front', hand),
      hand,
      tailBoard: side(hand, 'front end'),
    }),
  );
  const backs = HANDS.toReversed().map(
    (hand): UnnamedCorner => ({
      ...common,
      joint: back,
      letter: cornerLetter('back', hand),
      // From behind, the right side is at the left.
      hand: hand === 'left' ? 'right' : 'left',
      // The back starts at the groove's upper edge, so the groove itself lies below this template.
      tailBoard: {
        part: `${hand} side`,
        end: 'back end',
        edge: grooveTop(drawer.sizes.backFrom, units),
        ...(sidesPastBack(spec).upper && { upper: "back's upper edge" }),
      },
      pinBoard: { part: 'back', end: `${hand} end` },
    }),
  );
  return [...fronts, ...backs];
};

/** @param up from the board's reference edge, which lies below the template */
const grooveTop = (up: number, units: Notation): Titles['edge'] => {
  const length = formatLength(up, units);
  return [
    `groove's top edge, ${length} above the reference edge`,
    `groove's top edge, ${length} above ref. edge`,
    `groove's top edge, ${length} up`,
    `groove top, ${length} up`,
    `groove, ${length} up`,
    `${length} up`,
  ];
};

/** A front with a lip is rebated: its template is wrapped round the rebate's shoulder, and the lip lies beyond it. */
const BEHIND_LIP = { rebated: true, edge: [...REBATE_EDGE, 'edge'] } as const;

const merged = (corners: readonly UnnamedCorner[]): UnnamedCorner[] => {
  const byShape = new Map<string, UnnamedCorner>();
  for (const corner of corners) {
    const { joint, letter, hand, tailBoard, pinBoard } = corner;
    const { advice: _, alternatives: __, pinBoard: end, ...shape } = joint;
    // What a rebate leaves of the pin board's end is as thick as the joint is deep, however much it takes.
    const key = JSON.stringify([
      shape,
      pinBoard.rebated ? undefined : end,
      letter,
      hand,
      tailBoard,
      pinBoard,
    ]);
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
