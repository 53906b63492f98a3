import type { Complaint } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { atMost, mm, type Phrase, say } from '../units/phrase.ts';
import { type FrameMember, type FramePartName, frameOf } from './frameMembers.ts';
import type { PlannedCabinet } from './frameSpec.ts';

type Axis = 0 | 1 | 2;
type End = 'from' | 'to';

/** An end of a part that has a tenon. */
export interface Tenon {
  readonly member: FrameMember;
  readonly end: End;
  readonly axis: Axis;
  /** What it goes into; absent where that is the cabinet. */
  readonly into?: FrameMember;
}

/** Along which axis each part has tenons, at which ends, and what of the frame they go into. */
const TENONS: Readonly<
  Record<FramePartName, { axis: Axis; ends: readonly End[]; into: FramePartName } | undefined>
> = {
  rail: { axis: 0, ends: ['from', 'to'], into: 'divider' },
  divider: { axis: 2, ends: ['from', 'to'], into: 'rail' },
  runner: { axis: 1, ends: ['from'], into: 'rail' },
  kicker: { axis: 1, ends: ['from'], into: 'rail' },
  guide: undefined,
};

/** Every tenon of a frame. An end that meets neither the frame nor the cabinet has none. */
export const tenonsOf = (members: readonly FrameMember[], { width, height }: PlannedCabinet): Tenon[] =>
  members.flatMap((member) => {
    const { axis = 0, ends = [], into: part } = TENONS[member.part] ?? {};
    return ends.flatMap((end): Tenon[] => {
      const at = member[end][axis];
      const facing = end === 'from' ? 'to' : 'from';
      const into = members.find(
        (other) => other.part === part && isSame(other[facing][axis], at) && overlap(member, other, axis),
      );
      if (into !== undefined) return [{ member, end, axis, into }];
      const wall = [width, undefined, height][axis];
      return wall !== undefined && isSame(at, end === 'from' ? 0 : wall) ? [{ member, end, axis }] : [];
    });
  });

const isSame = (one: number, other: number): boolean => Math.abs(one - other) < EPSILON;

/** Whether two parts lie in line along an axis. */
const overlap = (one: FrameMember, other: FrameMember, along: Axis): boolean =>
  ([0, 1, 2] as const).every(
    (axis) =>
      axis === along ||
      Math.min(one.to[axis], other.to[axis]) - Math.max(one.from[axis], other.from[axis]) > EPSILON,
  );

/** Tenons that the wood they go into has no room for; places in the cabinet. */
export const checkTenons = (cabinet: PlannedCabinet): Complaint[] => {
  const { tenon } = cabinet.frame.rails;
  const tenons = tenonsOf(frameOf(cabinet), cabinet);
  const [worst] = tenons
    .flatMap(({ member, end, axis, into }) => {
      if (into === undefined) return [];
      const room = into.to[axis] - into.from[axis];
      const meets = tenons.some(
        (other) =>
          other.into === into &&
          other.axis === axis &&
          other.end !== end &&
          overlap(member, other.member, axis),
      );
      return [{ most: meets ? room / 2 : room, says: tooLong(tenon, { member, axis, into }, room, meets) }];
    })
    .sort((one, other) => one.most - other.most);
  return worst === undefined || tenon <= worst.most + EPSILON
    ? []
    : [{ at: ['rails', 'tenon'], says: worst.says, hint: say`${atMost(worst.most)}` }];
};

const tooLong = (
  tenon: number,
  { member, axis, into }: Required<Omit<Tenon, 'end'>>,
  room: number,
  meets: boolean,
): Phrase =>
  meets
    ? say`tenons of ${mm(tenon)} on ${member.part}s at both sides of one ${into.part} would meet in it: it is ${mm(room)} thick`
    : say`tenons of ${mm(tenon)} on ${member.part}s are longer than the ${into.part} that they go into is ${axis === 1 ? 'wide' : 'thick'}, ${mm(room)}`;
