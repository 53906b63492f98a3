/** A point in mm: x to the right, y upward. */
export type Point = readonly [x: number, y: number];

/** Straight lines through points; a closed path returns to its first point. */
export interface Path {
  readonly points: readonly Point[];
  readonly closed?: boolean;
}

/** The purpose of a mark, by which a renderer groups marks. */
export type Role =
  | 'outline'
  | 'fold'
  | 'baseline'
  | 'lap'
  | 'slope'
  | 'square'
  | 'waste'
  | 'groove'
  | 'hole'
  | 'label'
  | 'scale';

/** Line types of the sheets, after ISO 128; `pens.ts` holds their widths and dashes. */
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

/** One line of text. `at` is on the text's baseline, at its start, middle or end by `anchor`. */
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

/** One mark of a drawing: lines, filled areas or text. */
export type Mark = StrokeMark | FillMark | TextMark;

/** An upright rectangle in mm. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A picture in mm, y upward, independent of paper and file formats. Marks are drawn in order. */
export interface Drawing {
  /** Holds every mark, line widths included. */
  readonly box: Box;
  readonly marks: readonly Mark[];
}
