import { blankName, plankName } from '../../../drawer/blanks/blankWords.ts';
import type { PartBlank } from '../../../drawer/blanks/partBlanks.ts';
import type { Pin } from '../../../stock/wanted.ts';
import { accept, type Place, type Result } from '../../../units/complaint.ts';
import type { Edit } from '../../text/edit.ts';
import { editPlan } from '../../text/editPlan.ts';
import { type Snapshot, snapshot } from '../snapshot.ts';
import { lengthEdit } from './writtenLengths.ts';

const PINNED: Place = ['breakout', 'pinned'];

const change = ({ text }: Snapshot, edits: readonly Edit[]): Result<Snapshot> =>
  snapshot(editPlan(text, edits));

/** Pins a part to a board, or to a place on it, in the place of the pin that it has. */
export const pinPart = (now: Snapshot, wanted: number, { plank, place }: Pin): Result<Snapshot> => {
  const { planks = [], blanks = [], pinned = [] } = now.project.work ?? {};
  const [part, board] = [blanks[wanted], planks[plank]];
  if (part === undefined || board === undefined) return accept(now);
  const own = pinned.indexOf(wanted);
  const at: Place = [...PINNED, own < 0 ? pinned.length : own];
  return change(now, [
    ...(own < 0 ? [{ at: [...at, 'part'], value: blankName(part) }] : []),
    { at: [...at, 'board'], value: plankName(board, planks) },
    place === undefined
      ? { at: [...at, 'at'], value: undefined }
      : lengthEdit(now, [...at, 'at'], [place.x, place.y]),
    { at: [...at, 'turned'], value: place?.turned || undefined },
    { at: [...at, 'across'], value: place?.across || undefined },
  ]);
};

/** Sets a part free. */
export const freePart = (now: Snapshot, wanted: number): Result<Snapshot> => {
  const pinned = now.project.work?.pinned ?? [];
  const own = pinned.indexOf(wanted);
  if (own < 0) return accept(now);
  return pinned.length === 1 ? freeAll(now) : change(now, [{ at: [...PINNED, own], value: undefined }]);
};

/** Sets all parts free. */
export const freeAll = (now: Snapshot): Result<Snapshot> => change(now, [{ at: PINNED, value: undefined }]);

/** The edits that remove the pins of parts or boards that go. */
export const freedPins = ({ project: { work } }: Snapshot, goes: (part: PartBlank) => boolean): Edit[] => {
  const { blanks = [], pinned = [] } = work ?? {};
  const gone = pinned.flatMap((wanted, i) => (blanks[wanted] && goes(blanks[wanted]) ? [i] : []));
  const all = gone.length === pinned.length && gone.length > 0;
  return (all ? [PINNED] : gone.map((i) => [...PINNED, i])).map((at) => ({ at, value: undefined }));
};

/** The edits by which pins follow parts and boards to other names; those of no other name stay as they are written. */
export const renamedPins = (
  { project: { work } }: Snapshot,
  names: {
    readonly part?: (part: PartBlank) => string | undefined;
    readonly board?: (plank: number) => string | undefined;
  },
): Edit[] =>
  (work?.pinned ?? []).flatMap((wanted, i): Edit[] => {
    const blank = work?.blanks[wanted];
    const part = blank && names.part?.(blank);
    const board = blank?.pin && names.board?.(blank.pin.plank);
    return [
      ...(part === undefined ? [] : [{ at: [...PINNED, i, 'part'], value: part }]),
      ...(board === undefined ? [] : [{ at: [...PINNED, i, 'board'], value: board }]),
    ];
  });
