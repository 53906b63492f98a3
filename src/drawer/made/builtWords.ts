import { mm, type Phrase, say } from '../../units/phrase.ts';
import type { Hand } from '../cornerLetters.ts';
import { BUILT_MEASURES, type BuiltBoard, type BuiltMeasure, type DrawerSpec } from '../drawerSpec.ts';
import { builtAt } from './built.ts';

/** What a measure makes of a board: 10.6 mm thick. */
export const MEASURED = { thickness: 'thick', width: 'wide', length: 'long' } as const satisfies Record<
  BuiltMeasure,
  string
>;

/** `left side 10.6 mm thick as it came out`: each board of a drawer that came out other than planned. */
export const builtWords = ({ made }: Pick<DrawerSpec, 'made'>): Phrase[] =>
  (made?.boards ?? []).map((board) => {
    const name = board.part === 'side' ? `${board.hand} side` : board.part;
    return say`${name} ${measureWords(board)} as it came out`;
  });

/** `10.6 mm thick, 403 mm long`: what of a board came out. */
export const measureWords = (board: BuiltBoard): Phrase =>
  measuresOf(board).flatMap(([measure, length], i) => {
    const words = say`${mm(length)} ${MEASURED[measure]}`;
    return i === 0 ? words : say`, ${words}`;
  });

/** What is said of a board on its templates: how thick and how wide it came out; nothing of one as planned. */
export const builtOn = (
  spec: Pick<DrawerSpec, 'made'>,
  part: BuiltBoard['part'],
  hand?: Hand,
): readonly (readonly [measure: BuiltMeasure, length: number])[] => {
  const built = builtAt(spec, part, hand);
  return built === undefined ? [] : measuresOf(built.board).filter(([measure]) => measure !== 'length');
};

const measuresOf = (board: BuiltBoard): (readonly [BuiltMeasure, number])[] =>
  BUILT_MEASURES.flatMap((measure) => {
    const length = board[measure];
    return length === undefined ? [] : [[measure, length] as const];
  });
