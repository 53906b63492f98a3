/** A point in mm: x to the right, y upward. */
export type Point = readonly [x: number, y: number];

/** A line through points, joined straight; closed ones return to their first point. */
export interface Path {
  readonly points: readonly Point[];
  readonly closed?: boolean;
}

/** What a mark is for. The maker of a drawing chooses it; a renderer groups by it. */
export type Role =
  | 'outline'
  | 'fold'
  | 'baseline'
  | 'lap'
  | 'slope'
  | 'square'
  | 'waste'
  | 'groove'
  | 'label'
  | 'scale';

/** Line types of ISO 128 that the sheets use; `pens.ts` holds their widths and dashes. */
export type PenName =
  | 'cut'
  | 'saw'
  | 'baseline'
  | 'lap'
  | 'fold'
  | 'edge'
  | 'hatch'
  | 'groove'
  | 'thin'
  | 'medium';

/** Lines of one role drawn with one pen. */
export interface StrokeMark {
  readonly kind: 'stroke';
  readonly role: Role;
  readonly pen: PenName;
  readonly paths: readonly Path[];
}

/** Areas of one role filled with a grey: 0 black to 1 paper. */
export interface FillMark {
  readonly kind: 'fill';
  readonly role: Role;
  readonly tone: number;
  readonly paths: readonly Path[];
}

/** One line of text. `at` lies on the text's baseline, at its start, middle or end as `anchor` says. */
export interface TextMark {
  readonly kind: 'text';
  readonly role: 'label' | 'scale';
  readonly text: string;
  readonly at: Point;
  /** The em size in mm. */
  readonly size: number;
  /** Counter-clockwise, in degrees. */
  readonly turn: 0 | 90 | 180 | 270;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly weight: 'regular' | 'bold';
}

/** One thing drawn: lines, filled areas or words. */
export type Mark = StrokeMark | FillMark | TextMark;

/** An upright rectangle in mm. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A picture in mm, y upward, that knows nothing of paper or files. Marks are drawn in order. */
export interface Drawing {
  /** Holds every mark, line widths included. */
  readonly box: Box;
  readonly marks: readonly Mark[];
}
