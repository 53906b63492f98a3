import { formatNumber } from '../../units/formatLength.ts';
import { finest } from '../../units/notation.ts';
import { addSvg, drawPath, px } from '../browser/dom.ts';
import type { ViewState } from '../model/viewState.ts';
import type { CornerSheet } from './cornerSheet.ts';
import { Texts } from './texts.ts';

// Lengths in px, of letters that the user has not asked to be larger.
/** A width is written where it is so many px high, and has so many px for each of its letters. */
const LEAST_ROOM = 13;
const LETTER = 7.5;
/** From a text's middle down to its baseline. */
const HALF_HIGH = 5;

/** Beyond the end's edges, so that a finger is seen to lie over it, in px. */
const OVER = 4;

/** The fingers over the tail board's end: each pair, its spacer, and the gap to the next. */
export const fingersLayer = (group: SVGGElement): ((shown: ViewState, sheet: CornerSheet) => void) => {
  const path = (name: string): SVGPathElement => addSvg(group, 'path', name);
  const spacers = path('spacer');
  const fingers = path('finger');
  const gaps = path('ticks');
  const texts = new Texts(group);

  return ({ corner, now }, { tailEnd, y, letters }) => {
    const { setting, together } = corner.fingers ?? { setting: { pairs: [], gaps: [] }, together: 0 };
    const unit = finest(now.project.units);
    const { x0, x1 } = tailEnd;
    const middle = (x0 + x1) / 2;
    const bar = (left: number, right: number, from: number, to: number): string =>
      `M${px(left)} ${px(y(from))}H${px(right)}V${px(y(to))}H${px(left)}Z`;
    /** Writes a width between two heights where there is room. */
    const write = (width: number, from: number, to: number, look: string): boolean => {
      const words = formatNumber(width, unit);
      const fits =
        y(from) - y(to) >= LEAST_ROOM * letters && words.length * LETTER * letters <= x1 - x0 + OVER;
      if (fits) texts.put(words, middle, (y(from) + y(to)) / 2 + HALF_HIGH * letters, look);
      return fits;
    };

    const finger = together / 2;
    const { pairs } = setting;
    texts.start();
    drawPath(spacers, pairs.map(({ from, to }) => bar(x0, x1, from + finger, to - finger)).join(''));
    drawPath(
      fingers,
      pairs
        .map(
          ({ from, to }) =>
            bar(x0 - OVER, x1 + OVER, from, from + finger) + bar(x0 - OVER, x1 + OVER, to - finger, to),
        )
        .join(''),
    );
    for (const { from, to, spacer } of pairs)
      if (spacer > 0) write(spacer, from + finger, to - finger, 'middle spacer-width');
    drawPath(
      gaps,
      setting.gaps
        .map((gap, i) => {
          const [from, to] = [pairs[i]?.to ?? 0, pairs[i + 1]?.from ?? 0];
          const isWritten = write(gap, from, to, 'middle gap-width');
          const half = isWritten ? 11 * letters : 0;
          const [low, centre, high] = [y(from), (y(from) + y(to)) / 2, y(to)];
          const line = (a: number, b: number): string =>
            a - b > 2 ? `M${px(middle)} ${px(a)}V${px(b)}` : '';
          return line(low, centre + half) + line(centre - half, high);
        })
        .join(''),
    );
    texts.end();
  };
};
