import type { Complaint } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { atMost, mm, say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import type { CabinetSpec } from './cabinetSpec.ts';
import type { CabinetOpening } from './openings.ts';

/** What carries the drawers of a cabinet and guides them. Lengths in mm. */
export interface FrameSpec {
  readonly rails: {
    /** Of rails, and of short dividers, from front to back. */
    readonly width: number;
    /** Thickness of a rail over the top row; absent where the cabinet's top is there instead. */
    readonly top?: number;
    /** Thickness of a rail under the lowest row; absent where its drawers run on the cabinet's bottom. */
    readonly bottom?: number;
    /** What enters the wood at each end of a rail or a divider, and at the front end of a runner or a kicker. */
    readonly tenon: number;
    readonly species?: string;
  };
  /** As wide as a rail, with a guide behind each, or from front to back. */
  readonly dividers: 'short' | 'full';
  /** Under each side of a drawer; kickers are as wide, and of the same wood, as guides are. */
  readonly runners: { readonly width: number; readonly species?: string };
  readonly guides: {
    readonly height: number;
    /** How far the cabinet's sides lie outside its openings, filled by guides; 0 where they guide the drawers themselves. */
    readonly sides: number;
  };
  /** What is left free before the cabinet's back for air, by frame and drawers; absent where none is asked for. */
  readonly vent?: number;
}

/** A cabinet as it is planned, with what carries its drawers, and every opening in it. */
export interface PlannedCabinet extends CabinetSpec {
  readonly frame: FrameSpec;
  readonly openings: readonly CabinetOpening[];
}

/** What is wrong with a frame beside its openings; places in the cabinet. */
export const checkFrame = ({ depth, frame, openings }: PlannedCabinet): Complaint[] => {
  const { rails, runners, guides, vent = 0 } = frame;
  const narrowest = openings.reduce((least, each) => (each.width < least.width ? each : least));
  const lowest = openings.reduce((least, each) => (each.height < least.height ? each : least));
  return [
    ...(vent < depth - EPSILON
      ? []
      : [
          {
            at: ['vent'],
            says: say`a vent of ${mm(vent)} leaves the drawers nothing of the cabinet's depth of ${mm(depth)}`,
          },
        ]),
    ...(vent >= depth - EPSILON || rails.width < depth - vent - EPSILON
      ? []
      : [
          {
            at: ['rails', 'width'],
            says: say`rails ${mm(rails.width)} wide leave runners nothing of the ${mm(depth - vent)} from front to back; they must be less`,
          },
        ]),
    ...(2 * runners.width <= narrowest.width + EPSILON
      ? []
      : [
          {
            at: ['runners', 'width'],
            says: say`two runners ${mm(runners.width)} wide do not fit side by side under ${quote(narrowest.name)}, whose opening is ${mm(narrowest.width)} wide`,
            hint: say`${atMost(narrowest.width / 2)}`,
          },
        ]),
    ...(guides.height <= lowest.height + EPSILON
      ? []
      : [
          {
            at: ['guides', 'height'],
            says: say`guides ${mm(guides.height)} high are higher than the opening of ${quote(lowest.name)}, which is ${mm(lowest.height)} high`,
            hint: say`${atMost(lowest.height)}`,
          },
        ]),
  ];
};
