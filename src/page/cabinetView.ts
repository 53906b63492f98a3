import { type G, SVG, type Path as SvgPath } from '@svgdotjs/svg.js';
import type { Drawer } from '../drawer/drawer.ts';
import { formatNumber } from '../units/formatLength.ts';
import { cabinetOf } from './cabinet.ts';
import { setAttribute, setText } from './dom.ts';
import { type Ask, MOST_DRAWN, type View } from './shown.ts';
import { drawPath, px, sizeSvg } from './svgParts.ts';

/** Round the drawers, in px. */
const FRAME = 10;
const MOST_HEIGHT = 520;
/** What a letter takes at the least, in px, on the average. */
const LETTER = 7.6;

interface DrawnFront {
  readonly group: G;
  readonly board: SvgPath;
  readonly tails: SvgPath;
  readonly name: SVGTextElement;
}

/** The set as it stands in the cabinet; where tails meet the fronts' ends they are shaded, as if the lap were glass. */
export const cabinetView = (host: HTMLElement, ask: Ask): View => {
  const svg = SVG().addTo(host).addClass('cabinet');
  svg.attr({ role: 'group', 'aria-label': 'The drawers as they stand in the cabinet' });
  const carcase = svg.path('').addClass('carcase') as SvgPath;
  const fronts: DrawnFront[] = [];

  const make = (): DrawnFront => {
    const group = svg.group();
    const board = group.path('').addClass('board') as SvgPath;
    const tails = group.path('').addClass('tail-wood') as SvgPath;
    const name = group.plain('').addClass('name middle').node as SVGTextElement;
    const choose = () => {
      const index = Number(group.node.dataset.index);
      ask.select({ of: 'drawer', index, end: 'front' });
    };
    group.node.addEventListener('click', choose);
    group.node.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      event.preventDefault();
      choose();
    });
    return { group, board, tails, name };
  };

  return ({ now, corner, room }) => {
    const drawers = now.project.set.drawers.slice(0, MOST_DRAWN);
    const { units } = now.project;
    const cabinet = cabinetOf(drawers);
    if (drawers.length === 0) return;
    const scale = Math.min(
      (room.cabinet - 2 * FRAME) / cabinet.width,
      (MOST_HEIGHT - 2 * FRAME) / cabinet.height,
    );
    const width = cabinet.width * scale + 2 * FRAME;
    const height = cabinet.height * scale + 2 * FRAME;
    sizeSvg(svg, width, height);
    drawPath(carcase, `M1 1H${width - 1}V${height - 1}H1Z`);
    while (fronts.length < cabinet.fronts.length) fronts.push(make());
    for (const { group } of fronts.splice(cabinet.fronts.length)) group.remove();
    cabinet.fronts.forEach((front, i) => {
      const drawer = drawers[front.index];
      const drawn = fronts[i];
      if (drawer === undefined || drawn === undefined) return;
      const x0 = FRAME + front.x * scale;
      const y1 = height - FRAME - front.y * scale;
      const { group, board, tails, name } = drawn;
      const { node } = group;
      const chosen = corner.ref.of === 'drawer' && corner.ref.index === front.index;
      const first = cabinet.fronts.findIndex(({ index }) => index === front.index) === i;
      setAttribute(node, 'data-index', String(front.index));
      setAttribute(node, 'class', `front${chosen ? ' chosen' : ''}`);
      // Equal drawers are one to the keyboard and to a screen reader.
      setAttribute(node, 'role', first ? 'button' : 'presentation');
      if (first) {
        setAttribute(node, 'tabindex', '0');
        setAttribute(node, 'aria-pressed', String(chosen));
        setAttribute(
          node,
          'aria-label',
          spoken(drawer, (value) => formatNumber(value, units)),
        );
      } else {
        setAttribute(node, 'aria-hidden', 'true');
        node.removeAttribute('tabindex');
        node.removeAttribute('aria-pressed');
        node.removeAttribute('aria-label');
      }
      const w = front.width * scale;
      const h = front.height * scale;
      drawPath(board, `M${px(x0)} ${px(y1)}h${px(w)}v${px(-h)}h${px(-w)}Z`);
      const strip = drawer.spec.stock.side.thickness * scale;
      drawPath(
        tails,
        drawer.front.tails
          .flatMap(({ tip: [from, to] }) =>
            [x0, x0 + w - strip].map(
              (x) => `M${px(x)} ${px(y1 - from * scale)}h${px(strip)}V${px(y1 - to * scale)}h${px(-strip)}Z`,
            ),
          )
          .join(''),
      );
      setText(name, fitting(drawer.spec.name, w - 2 * strip));
      setAttribute(name, 'transform', `translate(${px(x0 + w / 2)} ${px(y1 - h / 2 + 5)})`);
    });
  };
};

/** As much of a name as there is room for. */
const fitting = (name: string, room: number): string => {
  const letters = [...name];
  const most = Math.floor(room / LETTER);
  return letters.length <= most ? name : most < 3 ? '' : `${letters.slice(0, most - 1).join('')}…`;
};

const spoken = ({ spec, sizes, front }: Drawer, length: (value: number) => string): string =>
  [
    spec.name,
    ...(spec.count > 1 ? [`${spec.count} of them`] : []),
    `${length(sizes.width)} wide, ${length(sizes.height)} high`,
    `${front.tails.length} ${front.tails.length === 1 ? 'tail' : 'tails'}`,
  ].join(', ');
