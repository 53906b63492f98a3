import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import type { StockWork } from '../../drawer/blanks/stockWork.ts';
import type { Correction } from '../../paper/printerCorrection.ts';
import type { Copies } from '../../paper/sheets.ts';
import type { SheetSet } from '../../project/sheetsOf.ts';
import type { PagePath } from '../../render/pagePaths.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import type { PriceRow } from '../model/fingers/priceTable.ts';

/** What is chosen of paper, templates and printer. */
export interface SheetChoice {
  /** As it is typed: `A4`. */
  readonly paper: string;
  /** As it is typed, in the plan's unit. */
  readonly margin: string;
  readonly boards: 'both' | 'tail' | 'pin';
  readonly flat: boolean;
  readonly rods: boolean;
  /** The names of what is drawn, as they are typed: `Buttons, Cloth/side`; all where there are none. */
  readonly only?: string;
  /** Each template once unless given. */
  readonly copies?: Copies;
  /** Of cutting list, bench sheets and comparison, as it is typed; by the paper of all where it is empty. */
  readonly benchPaper?: string;
  /** Of the printer that is chosen. */
  readonly correction?: Correction;
  /** A font file, for letters that those of the sheets lack. */
  readonly font?: Blob | undefined;
}

/** What is made: templates to print, a PDF of one kind of sheet, all pieces in a zip, a proof sheet, or a table of all parts. */
export type SheetTask =
  | { readonly make: 'print' }
  | { readonly make: 'pieces' }
  | { readonly make: 'proof' }
  | { readonly make: 'parts' }
  | { readonly make: 'pdf'; readonly kind: SheetSet['kind'] };

/** All that a worker needs to make sheets. */
export interface SheetJob {
  /** The plan's text, which is valid. */
  readonly plan: string;
  readonly choice: SheetChoice;
  readonly task: SheetTask;
}

/** A file to be read, to learn whether it is a plan. */
export interface ReadJob {
  readonly read: Blob;
}

/** A plan whose prices of spacers are asked for: its text, which is valid. */
export interface PriceJob {
  readonly prices: string;
}

/** Boards that parts are to be laid out on. */
export interface BoardsJob {
  readonly boards: { readonly work: StockWork; readonly sawing: Sawing };
}

/** Where the parts lie on their boards, beside what was asked. */
export type LaidOut = Pick<BrokenOut, 'breakout' | 'toBuy'>;

/** All that a worker can be asked to do. */
export type Job = SheetJob | ReadJob | PriceJob | BoardsJob;

/** A page to be printed; sizes in mm. */
export interface DrawnPage {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly PagePath[];
}

/** The number of sheets of each kind that the plan has. */
export type SheetCounts = Readonly<Partial<Record<SheetSet['kind'], number>>>;

/** What is said of a job while it runs. */
export type JobNews =
  | { readonly is: 'counts'; readonly counts: SheetCounts }
  | { readonly is: 'page'; readonly page: DrawnPage }
  /** All pages are told. */
  | { readonly is: 'drawn' }
  /** A small picture of the next page, from the first on. */
  | { readonly is: 'picture'; readonly picture: Blob }
  | { readonly is: 'prices'; readonly rows: readonly PriceRow[] }
  /** What share of the search is done, from 0 to 1, and the best layout where that is a new one; the last is final. */
  | { readonly is: 'boards'; readonly laid?: LaidOut; readonly share: number }
  /** The so-manyth sheet, or piece, is being made. */
  | { readonly is: 'progress'; readonly number: number; readonly of: number };

/** A file to save: `ending` follows the plan's name in the file's. */
export interface MadeFile {
  readonly name: string;
  readonly ending: string;
  readonly blob: Blob;
}

/** How a job ends. */
export type JobEnd =
  | { readonly is: 'made'; readonly says: string; readonly file?: MadeFile }
  | { readonly is: 'refused'; readonly says: readonly string[] }
  | { readonly is: 'failed'; readonly says: string }
  | { readonly is: 'stopped' };
