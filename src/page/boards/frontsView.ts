import { html, nothing, svg, type TemplateResult } from 'lit-html';
import type { CabinetFront } from '../../drawer/arrangement/cabinetFront.ts';
import { cabinetOf } from '../../drawer/arrangement/cabinetOf.ts';
import { plankName } from '../../drawer/blanks/blankWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import type { Drawer } from '../../drawer/drawer.ts';
import { px } from '../browser/dom.ts';
import { fitting, scaleInto } from '../browser/letters.ts';
import { MOST_DRAWN } from '../model/viewState.ts';

/** Round the drawers, and the greatest height, in px. */
const FRAME = 10;
const MOST_HEIGHT = 420;
/** The height of a line, in px. */
const LINE = 17;

/**
 * The set in its cabinet, from the front: on each front its drawer's name and the board that it comes from.
 * @param width in px
 * @param chosen the name of the board whose fronts are stressed
 */
export const frontsView = (
  all: readonly Drawer[],
  laid: BrokenOut | undefined,
  { width: room, letters }: { readonly width: number; readonly letters: number },
  chosen: string | undefined,
): TemplateResult | typeof nothing => {
  const drawers = all.slice(0, MOST_DRAWN);
  const cabinet = cabinetOf(drawers);
  const fronts = cabinet.rows.flat();
  if (fronts.length === 0 || laid === undefined || laid.unlisted.includes('front')) return nothing;
  const scale = scaleInto({ width: room, height: MOST_HEIGHT }, FRAME, cabinet);
  const [width, height] = [cabinet.width, cabinet.height].map((size) => size * scale + 2 * FRAME) as [
    number,
    number,
  ];
  const boardsOf = boardsOfFronts(laid);
  const line = LINE * letters;

  const drawn = ({ index, x, y, width: wide, height: high }: CabinetFront, i: number) => {
    const name = drawers[index]?.spec.name ?? '';
    // Equal fronts stand next to each other, in their order.
    const nth = fronts.slice(0, i).filter((front) => front.index === index).length + 1;
    const boards = boardsOf(name, nth);
    const [left, top] = [FRAME + x * scale, height - FRAME - (y + high) * scale];
    const [w, h] = [wide * scale, high * scale];
    const words = [
      boards.length === 0 ? 'missing' : boards.join(', '),
      ...(h < 2 * line ? [] : [name]),
    ].toReversed();
    const first = top + h / 2 - ((words.length - 1) * line) / 2 + 5 * letters;
    return svg`<g class="front-of ${boards.includes(chosen ?? '') ? 'chosen' : ''} ${boards.length === 0 ? 'no-board' : ''}">
      <rect class="front-wood" x=${px(left)} y=${px(top)} width=${px(w)} height=${px(h)}></rect>
      ${words.map((word, k) => svg`<text class="middle ${k === words.length - 1 ? 'board-name' : ''}" x=${px(left + w / 2)} y=${px(first + k * line)}>${h < line ? '' : fitting(word, (w - 8) / letters)}</text>`)}
    </g>`;
  };
  const said = fronts.map(({ index }, i) => {
    const name = drawers[index]?.spec.name ?? '';
    const nth = fronts.slice(0, i).filter((front) => front.index === index).length + 1;
    return `${name} from ${boardsOf(name, nth).join(' and ') || 'no board yet'}`;
  });
  return html`<h3>Fronts and their boards</h3>
    <svg role="img" aria-label="The fronts in the cabinet: ${said.join('; ')}" style="--letters: ${letters}"
      width=${px(width)} height=${px(height)} viewBox="0 0 ${px(width)} ${px(height)}">
      <path class="carcase" d="M1 1H${px(width - 1)}V${px(height - 1)}H1Z"></path>
      ${fronts.map(drawn)}
    </svg>`;
};

/** The boards that a drawer's so-manyth front comes from: several for one that is edge-jointed, none for one that is missing. */
const boardsOfFronts = ({ planks, blanks, breakout }: BrokenOut) => {
  const found = new Map<string, string[]>();
  for (const { plank, blanks: placed } of breakout.boards)
    for (const { wanted } of placed) {
      const [part, board] = [blanks[wanted], planks[plank]];
      if (part?.part !== 'front' || part.index === undefined || board === undefined) continue;
      const key = `${part.index} ${part.drawer}`;
      found.set(key, [...new Set([...(found.get(key) ?? []), plankName(board, planks)])]);
    }
  return (drawer: string, index: number): readonly string[] => found.get(`${index} ${drawer}`) ?? [];
};
