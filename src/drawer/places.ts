import type { Complaint, Place } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** Where a complaint about a front corner's option belongs in its drawer's entry. */
export const frontPlace = (spec: DrawerSpec, place: Place): Place => {
  switch (place[0]) {
    case 'width':
      return [spec.space.kind, 'height'];
    case 'tailBoard':
      return ['stock', 'side', 'thickness'];
    case 'pinBoard':
      return ['stock', 'front', 'thickness'];
    case 'cutter':
      return place;
    default:
      return ['joint', ...place];
  }
};

/** The same for a back corner. */
export const backPlace = (place: Place): Place => {
  switch (place[0]) {
    case 'width':
      return ['back', 'drop'];
    case 'tailBoard':
      return ['stock', 'side', 'thickness'];
    case 'pinBoard':
      return ['stock', 'back', 'thickness'];
    case 'cutter':
      return place;
    default:
      return ['back', 'joint', ...place];
  }
};

/** A joint's complaints as its drawer's: at their place there, and saying which corners are meant. */
export const ofCorners = (
  which: string,
  place: (place: Place) => Place,
  complaints: readonly Complaint[],
): Complaint[] =>
  complaints.map((complaint) => ({
    ...complaint,
    at: place(complaint.at),
    says: say`${which} corners: ${complaint.says}`,
  }));

/** Complaints of one entry of the plan, from the plan's top; the cutter is the whole plan's, whoever complains of it. */
export const fromEntry = (entry: Place, complaints: readonly Complaint[]): Complaint[] =>
  complaints.map((complaint) => ({
    ...complaint,
    at: complaint.at[0] === 'cutter' ? complaint.at : [...entry, ...complaint.at],
  }));
