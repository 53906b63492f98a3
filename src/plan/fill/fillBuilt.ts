import { BUILT_MEASURES, type BuiltBoard } from '../../drawer/drawerSpec.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import type { WrittenDrawer } from '../schema/planSchema.ts';

type WrittenBoard = NonNullable<WrittenDrawer['asBuilt']>[number];

/**
 * A drawer's boards as they came out.
 * @param count how many equal drawers there are
 * @param at the drawer's entry
 */
export const fillBuilt = (
  boards: readonly WrittenBoard[],
  count: number,
  at: Place,
): Result<readonly BuiltBoard[]> => {
  const wrong: Complaint[] = [];
  const seen = new Map<string, number>();
  const filled = boards.flatMap((board, i): BuiltBoard[] => {
    const place = [...at, 'asBuilt', i];
    const faults = [...onIndex(board, count, place), ...onHand(board, place), ...onMeasures(board, place)];
    const { part, index, hand } = board;
    const key = JSON.stringify([index ?? 1, part, hand]);
    const first = seen.get(key);
    if (first !== undefined)
      faults.push({
        at: place,
        says: say`this board is given already, as entry ${first + 1}`,
        remedy: say`give its measures together, in one entry`,
      });
    else seen.set(key, i);
    wrong.push(...faults);
    const { part: _, hand: __, ...measures } = board;
    if (part !== 'side') return [{ part, ...measures }];
    return hand === undefined ? [] : [{ part, hand, ...measures }];
  });
  return wrong.length > 0 ? refuse(...wrong) : accept(filled);
};

const onIndex = ({ index }: WrittenBoard, count: number, at: Place): Complaint[] => {
  if (count === 1)
    return index === undefined
      ? []
      : [
          {
            at: [...at, 'index'],
            says: say`there is one such drawer, so its boards have no index`,
            remedy: say`remove it`,
          },
        ];
  if (index === undefined)
    return [
      {
        at,
        says: say`the index is missing; there are ${count} such drawers, and it says which of them this board is of`,
        hint: say`index: 1`,
      },
    ];
  return index <= count
    ? []
    : [
        {
          at: [...at, 'index'],
          says: say`the index is ${index}, and there are ${count} such drawers; it must be 1 to ${count}`,
          hint: say`${count}`,
        },
      ];
};

const onHand = ({ part, hand }: WrittenBoard, at: Place): Complaint[] => {
  if (part === 'side')
    return hand === undefined
      ? [
          {
            at,
            says: say`the hand is missing; it says which side came out so`,
            hint: say`hand: left`,
          },
        ]
      : [];
  return hand === undefined
    ? []
    : [
        {
          at: [...at, 'hand'],
          says: say`a hand is for sides only; a drawer has one ${part}`,
          remedy: say`remove it`,
        },
      ];
};

const onMeasures = (board: WrittenBoard, at: Place): Complaint[] =>
  BUILT_MEASURES.some((measure) => board[measure] !== undefined)
    ? []
    : [
        {
          at,
          says: say`no measure is given; this says nothing of the board`,
          hint: say`thickness: 10.6mm`,
          remedy: say`give its thickness, width or length, whichever is not as planned`,
        },
      ];
