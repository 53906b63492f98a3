/** A length in mm, or a share of what it is taken along. */
export type Measure = number | { readonly share: number };

/** The length that a measure is, in mm, along `whole` mm. */
export const lengthOf = (measure: Measure, whole: number): number =>
  typeof measure === 'number' ? measure : measure.share * whole;

/** What is asked of pulls, locks and stops; what is absent has the usual sizes. Lengths in mm. */
export interface FittingsWish {
  readonly pulls?: {
    /** 0 to 2; 1 unless given. */
    readonly number?: number;
    readonly above?: Measure;
    readonly fromEnds?: Measure;
    /** A drawer by its name, with whose row those of any other row line up, in place of `fromEnds`. */
    readonly lineUpWith?: string;
    readonly holes?: Partial<PullSpec['holes']>;
    readonly size?: PullSpec['size'];
  };
  /** A number of 0 or 1, which is 1 unless given. */
  readonly locks?: Partial<LockSpec> & { readonly number?: number };
  /** A number of 0 to 2, which is 2 unless given. */
  readonly stops?: Partial<Omit<StopSpec, 'number'>> & { readonly number?: number };
}

/** One in the middle, or two. */
export type OneOrTwo = 1 | 2;

/** What is wished of the pulls of a front. Lengths in mm. */
export interface PullSpec {
  readonly across: {
    /** One in the middle unless given, or as many as it stands over. */
    readonly number?: OneOrTwo;
    /** Of two, from each end of the front. */
    readonly fromEnds: Measure;
    /** A drawer, with the pulls of whose row those of any other row line up. */
    readonly with?: string;
  };
  /** From the middle of the front's height up to the middle of the pull; less than 0: down. */
  readonly above: Measure;
  readonly holes: {
    readonly diameter: number;
    /** Between the two holes of one pull, side by side; 0 where it has one. */
    readonly spacing: number;
  };
  /** What it covers, seen from the front. */
  readonly size: { readonly width: number; readonly height: number };
}

/** What is wished of a lock in the middle of a front's inside face, at its upper edge. Lengths in mm. */
export interface LockSpec {
  /** From that edge down to the middle of the keyhole. */
  readonly pin: number;
  /** Diameter of the keyhole. */
  readonly keyhole: number;
  /** What is let into the inside face. */
  readonly body: { readonly width: number; readonly height: number; readonly depth: number };
}

/** What is wished of the stops of a drawer: blocks on the rail under it, which its front runs against. Lengths in mm. */
export interface StopSpec {
  readonly number: OneOrTwo;
  /** Of two, from each side of the opening to the middle of its stop. */
  readonly fromSides: Measure;
  /** Along the rail. */
  readonly width: number;
  /** How far it stands above the rail. */
  readonly thickness: number;
  /** From front to back. */
  readonly depth: number;
  /** From the rail's front edge back to it; what brings the front flush, or its lip home, unless given. */
  readonly behind?: number;
}
