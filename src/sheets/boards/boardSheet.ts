import { plankName } from '../../drawer/blanks/blankWords.ts';
import { boardUse } from '../../drawer/blanks/breakoutWords.ts';
import { boxOfMarks } from '../../drawing/boxOfMarks.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Size } from '../../paper/printable.ts';
import type { Plank } from '../../stock/plank.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import { type Block, paragraph, rule, space, stack, type TextRun } from '../typeset/block.ts';
import { type Contents, flow, type Group } from '../typeset/flow.ts';
import { type Column, columnsOf, tableRow } from '../typeset/tableRow.ts';
import { figure, typeSizes } from '../typeset/typeSizes.ts';
import { boardCuts } from './boardCuts.ts';
import { boardPicture } from './boardPicture.ts';
import { type BoardView, blankTitle, defectLetter } from './boardView.ts';
import { sawCautions } from './sawCautions.ts';

const TYPE = typeSizes(1);
/** Gap between columns, above a list's heading, and between rows, mm. */
const GAP = { columns: 4, lists: 3, rows: 1 };
/** Em of a letter to write, mm. */
const LETTER = 6.5;
/** Least width of a column of lists, mm. */
const COLUMN = 82;
/** Most height of the picture, as a share of the page's. */
const SHARE = 0.5;

/** What stands for what on a picture of a board. */
const MARKS_LEGEND =
  'Capital letters: parts. Numbers in boxes: saw cuts, in order. Small letters: defects, hatched by kind. Bold line with an open arrow: reference edge; at the upper side a part is turned. Dashed: how far a joint reaches, with the clear wood beyond it. Filled triangle: front end of a side. Long dashes: offcut worth keeping.';

export interface BoardSheetOptions {
  /** The set's name. */
  readonly title: string;
  /** All boards of the plan: of several with one name each has its number. */
  readonly planks: readonly Plank[];
  readonly units: Notation;
  readonly area: Size;
}

/** A board's sheet: its picture, what to write where on it in crayon, its saw cuts in order, and its defects. */
export const boardSheet = (view: BoardView, options: BoardSheetOptions): readonly Drawing[] =>
  flow(contentsOf(view, options), options.area).draw();

/** The sheet as one drawing, as wide as its area and as high as it needs. */
export const boardSheetDrawing = (view: BoardView, options: BoardSheetOptions): Drawing => {
  const { width } = options.area;
  const contents = contentsOf(view, options);
  const high = [...contents.wide, ...contents.narrow]
    .flat()
    .reduce((sum, { height }) => sum + height + GAP.rows, 0);
  const [page] = flow(contents, { width, height: high + contents.head[0].height + GAP.rows }).draw();
  if (page === undefined) throw new Error('a board has a sheet');
  const { y0 } = boxOfMarks(page.marks);
  return { ...page, box: { ...page.box, y0: y0 - MARGIN } };
};

/** Below the last line of a sheet as one drawing, mm. */
const MARGIN = 1;

const contentsOf = (view: BoardView, { area, title, planks, units }: BoardSheetOptions): Contents => {
  const { width } = area;
  const name = plankName(view.plank, planks);
  const head = (size: number) =>
    stack([paragraph([plain(`${title}: board sheet`)], width), paragraph([bold(name, size)], width)]);
  const columns = width >= 2 * COLUMN + GAP.columns ? 2 : 1;
  const shown = [
    facts(view, units, width),
    boardPicture(view, { width, height: SHARE * area.height }),
    paragraph([plain(MARKS_LEGEND)], width),
  ];
  return {
    head: [head(TYPE.title * 0.75), head(TYPE.heading)],
    wide: [[stack(shown, 1)]],
    narrow: lists(view, units, (width - (columns - 1) * GAP.columns) / columns),
    columns,
    gap: GAP.rows,
  };
};

const plain = (text: string, size = TYPE.note): TextRun => ({ text, size, weight: 'regular' });
const bold = (text: string, size = TYPE.heading): TextRun => ({ text, size, weight: 'bold' });

/** `2150 x 241 x 26 mm, for fronts, show face up.` */
const facts = ({ plank, layout }: BoardView, units: Notation, width: number): Block => {
  const { x0, y0, x1, y1 } = extentsOf(plank.outline);
  const size = [x1 - x0, y1 - y0, plank.thickness].map((value) => formatNumber(value, units)).join(' x ');
  const keep = layout.offcuts.map(
    ({ length, width }) => `${formatNumber(length, units)} x ${formatNumber(width, units)}`,
  );
  const offcuts = keep.length === 0 ? '' : ` Offcuts worth keeping: ${keep.join('; ')}.`;
  const text = `${size}, in ${unitWords(units)}; ${boardUse(plank)}. It lies show face up.${offcuts}`;
  return paragraph([plain(text, TYPE.text)], width);
};

/** Crayon marks, saw cuts, defects and cautions. */
const lists = (view: BoardView, units: Notation, width: number): Group[] =>
  [
    ...crayonMarks(view, units, width),
    ...cutList(view, units, width),
    ...defectList(view, units, width),
    stack([space(GAP.lists), sawCautions(width)]),
  ].flatMap((block) => (block.height > 0 ? [[block]] : []));

const SHARES = [12, 35, 27, 26];
const HEADINGS = ['write', 'from left end', 'from lower edge', 'for'];

/** From the left end on: where to draw lines, and the letter to write between them. */
const crayonMarks = (view: BoardView, units: Notation, width: number): Block[] => {
  const { x0, y0 } = extentsOf(view.plank.outline);
  const columns: readonly Column[] = columnsOf(SHARES, width).map((column) => ({
    ...column,
    anchor: 'start',
  }));
  const span = (from: number, length: number): TextRun[] => [
    ...figure(formatNumber(from, units), TYPE),
    plain('to'),
    ...figure(formatNumber(from + length, units), TYPE),
  ];
  const rows = view.layout.blanks
    .toSorted((a, b) => a.x - b.x || a.y - b.y)
    .map(({ wanted, x, y, length, width: across, turned }) => {
      const { letter, name } = blankTitle(view.blanks, wanted);
      return stack([
        rule(width, 0.8),
        tableRow(
          columns,
          [
            [bold(letter, LETTER)],
            span(x - x0, length),
            span(y - y0, across),
            [plain(`${name}${turned ? ', turned' : ''}`, TYPE.text)],
          ],
          LETTER,
        ),
      ]);
    });
  const heading = stack([
    paragraph([bold('Crayon marks')], width),
    tableRow(
      columns,
      HEADINGS.map((text) => [plain(text)]),
      TYPE.note,
    ),
  ]);
  return headed(heading, rows);
};

/** A list whose heading stays with its first row. */
const headed = (heading: Block, rows: readonly Block[]): Block[] =>
  rows.length === 0 ? [] : rows.map((row, i) => (i === 0 ? stack([space(GAP.lists), heading, row]) : row));

/** Widths of a cut's number and measure, shares of the column. */
const CUT_SHARES = [10, 24, 66];

const cutList = (view: BoardView, units: Notation, width: number): Block[] => {
  const columns: readonly Column[] = columnsOf(CUT_SHARES, width).map((column, i) => ({
    ...column,
    anchor: i === 1 ? 'end' : 'start',
  }));
  const rows = boardCuts(view, units).map(({ measure, text }, k) =>
    stack([
      rule(width, 0.8),
      tableRow(columns, [[bold(String(k + 1))], figure(measure, TYPE), [plain(text)]], TYPE.figure),
    ]),
  );
  const heading = stack([
    paragraph([bold('Saw cuts in order')], width),
    paragraph(
      [plain(`Each is ${formatNumber(view.kerf, units)} wide; its measure ends at its near side.`)],
      width,
    ),
  ]);
  return headed(heading, rows);
};

const defectList = ({ plank: { outline, defects } }: BoardView, units: Notation, width: number): Block[] => {
  const { x0, y0 } = extentsOf(outline);
  const number = (value: number) => formatNumber(Math.max(0, value), units);
  return headed(
    paragraph([bold('Defects')], width),
    defects.map(({ kind, outline: around }, i) => {
      const box = extentsOf(around);
      return paragraph(
        [
          bold(defectLetter(i), TYPE.note),
          plain(
            `${kind}, ${number(box.x0 - x0)} to ${number(box.x1 - x0)} from the left end, ${number(box.y0 - y0)} to ${number(box.y1 - y0)} from the lower edge`,
          ),
        ],
        width,
      );
    }),
  );
};
