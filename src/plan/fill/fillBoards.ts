import { figureRuns } from '../../cabinet/figureRuns.ts';
import type { CabinetOpening } from '../../cabinet/openings.ts';
import type { BoardSpec, BoardsSpec, RunSpec } from '../../drawer/blanks/boardSpec.ts';
import type { Defect, DefectKind, StockName } from '../../stock/plank.ts';
import {
  extentsOf,
  type Polygon,
  rectangle,
  selfCrossing,
  shareArea,
  signedArea,
} from '../../stock/polygon.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../../units/complaint.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { isInRange } from '../../units/range.ts';
import type { WrittenBoard, WrittenPlan } from '../schema/planSchema.ts';
import * as ranges from '../schema/ranges.ts';

/**
 * The boards of a plan with what is wished of them, every default filled in; undefined where it lists none.
 * @param given the indices of the boards in the plan as it was given
 * @param openings those of its cabinet; undefined where it plans none
 */
export const fillBoards = (
  { boards = [], breakout = {} }: Pick<WrittenPlan, 'boards' | 'breakout'>,
  given: readonly number[],
  openings: readonly CabinetOpening[] | undefined,
): Result<BoardsSpec | undefined> => {
  if (boards.length === 0) return accept(undefined);
  const filled = boards.map((board, i) => fillBoard(board, ['boards', given[i] ?? i]));
  const specs = filled.flatMap((each) => (each.ok ? [each.value] : []));
  const { allow = {}, runThrough = [], spare = {}, pinned = [] } = breakout;
  const runs = typeof runThrough === 'string' ? runsOf(openings, runThrough) : accept(runThrough);
  const wrong = [
    ...filled.flatMap((each) => (each.ok ? [] : each.complaints)),
    ...tooMany(specs),
    ...(runs.ok ? [] : runs.complaints),
  ];
  if (wrong.length > 0 || !runs.ok) return refuse(...wrong);
  return accept({
    boards: specs,
    allow: { ...NO_DEFECTS, ...allow },
    runs: runs.value,
    spare: { ...NO_SPARES, ...spare },
    pinned,
  });
};

/** All rows or stacks that a cabinet has. */
const runsOf = (
  openings: readonly CabinetOpening[] | undefined,
  along: 'rows' | 'stacks',
): Result<readonly RunSpec[]> => {
  const runs = openings && figureRuns(openings, along);
  if (runs !== undefined && runs.length > 0)
    return accept(
      runs.map((drawers) => ({ kind: along === 'rows' ? ('row' as const) : ('stack' as const), drawers })),
    );
  return refuse({
    at: ['breakout', 'runThrough'],
    says:
      runs === undefined
        ? say`the ${along} of a cabinet are meant, and this plan has none`
        : along === 'rows'
          ? say`no two drawers of one height stand side by side in the cabinet`
          : say`no two drawers of one width stand above each other in the cabinet`,
    remedy: say`list the drawers, as in [[Buttons, Thread], {stack: [Cloth, Notions]}], or remove it`,
  });
};

const NO_DEFECTS: Readonly<Record<StockName, readonly DefectKind[]>> = {
  front: [],
  side: [],
  back: [],
  bottom: [],
};
const NO_SPARES: Readonly<Record<StockName, number>> = { front: 0, side: 0, back: 0, bottom: 0 };

/** More boards than can be set out together, counted with their quantities. */
const tooMany = (boards: readonly BoardSpec[]): Complaint[] => {
  const all = boards.reduce((sum, { count }) => sum + count, 0);
  return all <= ranges.BOARDS.most
    ? []
    : [
        {
          at: ['boards'],
          says: say`there are ${all} boards; there may be up to ${ranges.BOARDS.most}; list those that are at hand, or divide the plan into several`,
        },
      ];
};

const fillBoard = (written: WrittenBoard, at: Place): Result<BoardSpec> => {
  const { name, stock: stocks, thickness, clean, bow, keep = false, figure, cut, size } = written;
  const outline = outlineOf(written, at);
  if (!outline.ok) return outline;
  const several: Complaint[] =
    size?.count !== undefined && written.count !== undefined
      ? [
          {
            at: [...at, 'count'],
            says: say`the quantity is given in the size too`,
            remedy: say`remove one of them`,
          },
        ]
      : [];
  const defects = (written.defects ?? []).map((defect, i) =>
    fillDefect(defect, outline.value, [...at, 'defects', i]),
  );
  const wrong = [...several, ...defects.flatMap((each) => (each.ok ? [] : each.complaints))];
  if (wrong.length > 0) return refuse(...wrong);
  return accept({
    plank: {
      name,
      stocks,
      thickness,
      outline: outline.value,
      defects: defects.flatMap((each) => (each.ok ? [each.value] : [])),
      clean: { left: clean === 'left' || clean === 'both', right: clean === 'right' || clean === 'both' },
      keep,
      ...(bow && { bow }),
      ...(figure && { figure }),
    },
    count: size?.count ?? written.count ?? 1,
    ...(cut && { cut }),
  });
};

/** A board's corners, counterclockwise. */
const outlineOf = ({ name, length, width, size, outline }: WrittenBoard, at: Place): Result<Polygon> => {
  const ways = [length ?? width, size, outline].filter((way) => way !== undefined).length;
  if (ways === 0)
    return refuse({
      at,
      says: say`${quote(name)} has no size; it must have length and width, or size, or outline`,
      hint: say`length: ${mm(1800)}, width: ${mm(190)}`,
    });
  if (ways > 1)
    return refuse({
      at,
      says: say`the size of ${quote(name)} is given in more than one way`,
      remedy: say`give length and width, or size, or outline, one of the three`,
    });
  if (outline !== undefined)
    return simple(outline, [...at, 'outline'], say`the outline of ${quote(name)}`, true);
  if (size !== undefined) return accept(rectangle({ x0: 0, y0: 0, x1: size.length, y1: size.width }));
  if (length === undefined || width === undefined)
    return refuse({
      at,
      says: say`${quote(name)} has no ${length === undefined ? 'length' : 'width'}`,
      hint: length === undefined ? say`length: ${mm(1800)}` : say`width: ${mm(190)}`,
    });
  return accept([
    [0, 0],
    [length, 0],
    [length, width.right],
    [0, width.left],
  ]);
};

/** The corners counterclockwise, or a complaint where they make no outline. */
const simple = (corners: Polygon, at: Place, what: Phrase, isBoard = false): Result<Polygon> => {
  const crossing = selfCrossing(corners);
  if (crossing !== undefined) {
    const [one, other] = crossing.map((i) => `${i + 1} to ${((i + 1) % corners.length) + 1}`);
    return refuse({
      at,
      says: say`${what} crosses itself: its line from corner ${one ?? ''} meets that from ${other ?? ''}`,
      remedy: say`give its corners in order, each once`,
    });
  }
  const { x0, y0, x1, y1 } = extentsOf(corners);
  const [length, width] = [x1 - x0, y1 - y0];
  if (isBoard && !(isInRange(length, ranges.BOARD_LENGTH) && isInRange(width, ranges.BOARD_WIDTH)))
    return refuse({
      at,
      says: say`${what} is ${mm(length)} x ${mm(width)}; it must be ${mm(ranges.BOARD_LENGTH.least)} to ${mm(ranges.BOARD_LENGTH.most)} long and ${mm(ranges.BOARD_WIDTH.least)} to ${mm(ranges.BOARD_WIDTH.most)} wide`,
    });
  return accept(signedArea(corners) < 0 ? corners.toReversed() : corners);
};

type WrittenDefect = NonNullable<WrittenBoard['defects']>[number];

const fillDefect = (written: WrittenDefect, board: Polygon, at: Place): Result<Defect> => {
  const { kind, sound } = written;
  const named = kind === 'knot' ? (sound === true ? 'sound knot' : 'loose knot') : kind;
  const outline = defectOutline(written, board, at);
  const wrong: Complaint[] = [
    ...(sound !== undefined && kind !== 'knot'
      ? [{ at: [...at, 'sound'], says: say`only a knot is sound or loose`, remedy: say`remove it` }]
      : []),
    ...(outline.ok ? [] : outline.complaints),
  ];
  if (outline.ok && !shareArea(outline.value, board)) {
    const on = extentsOf(board);
    const off = extentsOf(outline.value);
    wrong.push({
      at,
      says: say`this ${named} lies wholly off its board: it reaches from ${mm(off.x0)} to ${mm(off.x1)} along and from ${mm(off.y0)} to ${mm(off.y1)} across, the board from ${mm(on.x0)} to ${mm(on.x1)} and from ${mm(on.y0)} to ${mm(on.y1)}`,
      remedy: say`measure from the left end and from the lower edge, or remove it`,
    });
  }
  return wrong.length === 0 && outline.ok
    ? accept({ kind: named, outline: outline.value })
    : refuse(...wrong);
};

/** Where a defect is: its outline, else its middle and size, else what reaches from an end, over the full width. */
const defectOutline = (
  { kind, at: middle, size, from, length, outline }: WrittenDefect,
  board: Polygon,
  at: Place,
): Result<Polygon> => {
  if (outline !== undefined && middle === undefined && size === undefined)
    return simple(outline, [...at, 'outline'], say`the outline of this ${kind}`);
  if (outline === undefined && middle !== undefined && size !== undefined) {
    const [[x, y], [along, across]] = [middle, size];
    return accept(
      rectangle({ x0: x - along / 2, y0: y - across / 2, x1: x + along / 2, y1: y + across / 2 }),
    );
  }
  if (
    outline === undefined &&
    middle === undefined &&
    size === undefined &&
    from !== undefined &&
    length !== undefined
  ) {
    const { x0, y0, x1, y1 } = extentsOf(board);
    return accept(
      rectangle(from === 'left' ? { x0, y0, x1: x0 + length, y1 } : { x0: x1 - length, y0, x1, y1 }),
    );
  }
  return refuse({
    at,
    says: say`the place of this ${kind} must be given in one of three ways: at and size, from and length, or outline`,
    hint: say`at: [${mm(640)}, ${mm(80)}], size: [${mm(60)}, ${mm(45)}]`,
  });
};
