import type { G, Path as SvgPath } from '@svgdotjs/svg.js';
import { isTail } from '../../joint/widthName.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { drawPath, px } from '../browser/dom.ts';
import { startOnSides } from '../model/editedCorner.ts';
import type { ViewState } from '../model/viewState.ts';
import { linesOf, widthsOf } from '../model/widths.ts';
import type { CornerSheet, Face } from './cornerSheet.ts';
import { Texts } from './texts.ts';

/** A size is written where it is so many px high; smaller ones are in the table only. */
const LEAST_ROOM = 12;
/** The frame of a locked width, in px. */
const LOCK = { width: 50, height: 18 };
/** A face this wide, in px, has room for its whole name. */
const NAMED = 112;
/** Room for each letter of a name, in px. */
const LETTER = 8;
/** From a text's middle down to its baseline, in px. */
const HALF_HIGH = 5;

/** A corner's sizes and the names of its faces. */
export const sizesLayer = (group: G): ((shown: ViewState, sheet: CornerSheet) => void) => {
  const ticks = group.path('').addClass('ticks') as SvgPath;
  const sizes = new Texts(group);
  const names = new Texts(group.group().addClass('names'));
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
  const { tailEnd, pinEnd, scale, y } = sheet;
  const widths = widthsOf(joint);
  const lines = [0, ...linesOf(widths), joint.width];
  const middle = (tailEnd.x1 + pinEnd.x0) / 2;
  let ticks = lines
    .map((u) => `M${px(tailEnd.x1 + 4)} ${px(y(u))}h10M${px(pinEnd.x0 - 4)} ${px(y(u))}h-10`)
    .join('');
  widths.forEach((width, i) => {
    if (width * scale < LEAST_ROOM) return;
    const at = y((lines[i] ?? 0) + width / 2);
    const words = formatNumber(width, now.project.units);
    texts.put(words, middle, at + HALF_HIGH, `middle${isTail(i) ? ' tail' : ''}`);
    // A size in a frame is fixed, as on technical drawings.
    if (locked.has(i))
      ticks += `M${px(middle - LOCK.width / 2)} ${px(at - LOCK.height / 2)}h${LOCK.width}v${LOCK.height}h${-LOCK.width}Z`;
  });
  return ticks;
};

/** The board's whole width, and the groove's place, at the left. Returns their lines. */
const writeMeasures = ({ corner, now }: ViewState, sheet: CornerSheet, texts: Texts): string => {
  const { joint, groove } = corner;
  const { tailFace, y } = sheet;
  const unit = now.project.units;
  const x = tailFace.x0 - 14;
  const tick = (u: number): string => `M${px(x - 4)} ${px(y(u))}h8`;
  const bottom = groove === undefined ? 0 : groove.offset + groove.width;
  texts.put(formatNumber(joint.width, unit), x - 6, y((bottom + joint.width) / 2), 'middle', -90);
  const whole = `M${px(x)} ${px(y(0))}V${px(y(joint.width))}${tick(0)}${tick(joint.width)}`;
  if (groove === undefined) return whole;
  const { offset, width } = groove;
  texts.put(formatNumber(offset, unit), x - 8, y(offset / 2) + HALF_HIGH, 'end');
  texts.put(formatNumber(width, unit), x - 8, y(offset + width / 2) + HALF_HIGH, 'end');
  return whole + tick(offset) + tick(offset + width);
};

const writeNames = ({ corner, now }: ViewState, sheet: CornerSheet, texts: Texts): void => {
  const { ref } = corner;
  const { tailFace, tailEnd, pinEnd, pinFace, y } = sheet;
  const [tail, pin] =
    ref.of === 'joint' ? ['Tail board', 'Pin board'] : ['Side', ref.end === 'front' ? 'Front' : 'Back'];
  const put = (words: string, { x0, x1 }: Face): void => texts.put(words, (x0 + x1) / 2, y(0) + 22, 'middle');
  const whole = ({ x0, x1 }: Face): boolean => x1 - x0 > NAMED;
  const start = startOnSides(corner);
  const from = start === undefined ? 'outside' : `from ${formatNumber(start, now.project.units)} up`;
  put(whole(tailFace) ? `${tail}, ${from}` : start === undefined ? tail : from, tailFace);
  put('end', tailEnd);
  const gap = { x0: tailEnd.x1, x1: pinEnd.x0 };
  const [edge, short] =
    start === undefined ? ['reference edge', 'reference'] : ['groove’s upper edge', 'groove'];
  put(gap.x1 - gap.x0 > LETTER * edge.length ? edge : short, gap);
  put('end', pinEnd);
  put(whole(pinFace) ? `${pin}, inside` : pin, pinFace);
};
