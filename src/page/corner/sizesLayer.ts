import { jointSpan } from '../../joint/joint.ts';
import { isTail } from '../../joint/widthName.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { addSvg, drawPath, px } from '../browser/dom.ts';
import { startOnSides } from '../model/editedCorner.ts';
import type { ViewState } from '../model/viewState.ts';
import { linesOf, widthsOf } from '../model/widths.ts';
import type { CornerSheet, Face } from './cornerSheet.ts';
import { Texts } from './texts.ts';

// Lengths in px, of letters that the user has not asked to be larger.
/** A size is written where it is so many px high; smaller ones are in the table only. */
const LEAST_ROOM = 12;
/** The frame of a locked width. */
const LOCK = { width: 50, height: 18 };
/** Room for each letter of a name. */
const LETTER = 7.5;
/** From a text's middle down to its baseline. */
const HALF_HIGH = 5;

/** A corner's sizes and the names of its faces. */
export const sizesLayer = (group: SVGGElement): ((shown: ViewState, sheet: CornerSheet) => void) => {
  const ticks = addSvg(group, 'path', 'ticks');
  const sizes = new Texts(group);
  const names = new Texts(addSvg(group, 'g', 'names'));
  return (shown, sheet) => {
    sizes.start();
    drawPath(ticks, writeWidths(shown, sheet, sizes) + writeMeasures(shown, sheet, sizes));
    sizes.end();
    names.start();
    writeNames(shown, sheet, names);
    names.end();
  };
};

/** Every width at the tips, between the two ends. Returns the ticks at its lines. */
const writeWidths = ({ corner, locked, now }: ViewState, sheet: CornerSheet, texts: Texts): string => {
  const { joint } = corner;
  const { tailEnd, pinEnd, scale, letters, y } = sheet;
  const widths = widthsOf(joint);
  const [from, to] = jointSpan(joint);
  const lines = [from, ...linesOf(widths, from), to];
  const middle = (tailEnd.x1 + pinEnd.x0) / 2;
  let ticks = lines
    .map((u) => `M${px(tailEnd.x1 + 4)} ${px(y(u))}h10M${px(pinEnd.x0 - 4)} ${px(y(u))}h-10`)
    .join('');
  widths.forEach((width, i) => {
    if (width * scale < LEAST_ROOM * letters) return;
    const at = y((lines[i] ?? 0) + width / 2);
    const words = formatNumber(width, now.project.units);
    texts.put(words, middle, at + HALF_HIGH * letters, `middle${isTail(i) ? ' tail' : ''}`);
    // A size in a frame is fixed, as on technical drawings.
    if (!locked.has(i)) return;
    const [wide, high] = [LOCK.width * letters, LOCK.height * letters];
    ticks += `M${px(middle - wide / 2)} ${px(at - high / 2)}h${wide}v${high}h${-wide}Z`;
  });
  return ticks;
};

/** The board's whole width, and the groove's place, at the left. Returns their lines. */
const writeMeasures = ({ corner, now }: ViewState, sheet: CornerSheet, texts: Texts): string => {
  const { joint, groove } = corner;
  const { tailFace, scale, letters, y } = sheet;
  const unit = now.project.units;
  const x = tailFace.x0 - 14;
  const tick = (u: number): string => `M${px(x - 4)} ${px(y(u))}h8`;
  const bottom = groove === undefined ? 0 : groove.offset + groove.width;
  texts.put(formatNumber(joint.width, unit), x - 6, y((bottom + joint.width) / 2), 'middle', -90);
  const whole = `M${px(x)} ${px(y(0))}V${px(y(joint.width))}${tick(0)}${tick(joint.width)}`;
  if (groove === undefined) return whole;
  const { offset, width } = groove;
  const put = (size: number, from: number): void => {
    if (size * scale < LEAST_ROOM * letters) return;
    texts.put(formatNumber(size, unit), x - 8, y(from + size / 2) + HALF_HIGH * letters, 'end');
  };
  put(offset, 0);
  put(width, offset);
  return whole + tick(offset) + tick(offset + width);
};

const writeNames = ({ corner, now }: ViewState, sheet: CornerSheet, texts: Texts): void => {
  const { ref } = corner;
  const { tailFace, tailEnd, pinEnd, pinFace, letters, y } = sheet;
  const [tail, pin] =
    ref.of === 'joint' ? ['Tail board', 'Pin board'] : ['Side', ref.end === 'front' ? 'Front' : 'Back'];
  const isWithin = (words: string, { x0, x1 }: Face): boolean => x1 - x0 > LETTER * words.length * letters;
  /** The first that there is room for. */
  const put = (face: Face, ...names: readonly string[]): void => {
    const words = names.find((each) => isWithin(each, face));
    if (words !== undefined) texts.put(words, (face.x0 + face.x1) / 2, y(0) + 8 + 14 * letters, 'middle');
  };
  const start = startOnSides(corner);
  const from = start === undefined ? sheet.tailFaceIs : `from ${formatNumber(start, now.project.units)} up`;
  const [edge, short] = start === undefined ? ['reference edge', 'edge'] : ['groove’s upper edge', 'groove'];
  const gap = { x0: tailEnd.x1, x1: pinEnd.x0 };
  const areEndsNamed = [tailEnd, pinEnd].every((face) => isWithin('end', face)) && isWithin(edge, gap);
  put(tailFace, `${tail}, ${from}`, start === undefined ? tail : from);
  put(pinFace, `${pin}, inside`, pin);
  if (areEndsNamed) for (const face of [tailEnd, pinEnd]) put(face, 'end');
  put(areEndsNamed ? gap : { x0: tailEnd.x0, x1: pinEnd.x1 }, edge, short);
};
