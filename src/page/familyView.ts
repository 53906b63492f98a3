import { SVG, type Svg, type Path as SvgPath } from '@svgdotjs/svg.js';
import type { Joint } from '../joint/joint.ts';
import { meanPin, meanTail } from '../joint/proportion.ts';
import { tailOutline } from '../joint/tailOutline.ts';
import { formatLength, formatNumber } from '../units/length.ts';
import type { CornerRef } from './corner.ts';
import { element, setAttribute, setText } from './dom.ts';
import type { Ask, View } from './shown.ts';

/** How much of each board is seen beyond its tails, in mm. */
const BEYOND = 26;
const MOST_HEIGHT = 170;
const LARGEST_SCALE = 1.6;

interface Member {
  readonly name: string;
  readonly joint: Joint;
  readonly ref: CornerRef;
}

interface Drawn {
  readonly button: HTMLButtonElement;
  readonly svg: Svg;
  readonly board: SvgPath;
  readonly tails: SvgPath;
  readonly name: HTMLElement;
  readonly figures: HTMLElement;
}

/** Every corner of the plan from the side, all to one scale, with what makes them a family. */
export const familyView = (host: HTMLElement, ask: Ask): View => {
  const summary = element('p', { class: 'summary' });
  const row = element('div', { class: 'members' });
  host.append(summary, row);
  const drawn: Drawn[] = [];

  const make = (i: number): Drawn => {
    const picture = element('span', { class: 'picture' });
    const name = element('span', { class: 'name' });
    const figures = element('span', { class: 'figures' });
    const button = element('button', { type: 'button', class: 'member' }, picture, name, figures);
    button.addEventListener('click', () => {
      const member = members[i];
      if (member !== undefined) ask.select(member.ref);
    });
    row.append(button);
    const svg = SVG().addTo(picture);
    svg.attr('aria-hidden', 'true');
    const board = svg.path('').addClass('board') as SvgPath;
    return { button, svg, board, tails: svg.path('').addClass('tail-wood') as SvgPath, name, figures };
  };

  let members: readonly Member[] = [];
  return ({ now, corner }) => {
    const { set, joints, plan } = now.laid;
    members = [
      ...set.drawers.map(
        ({ spec, front }, index): Member => ({
          name: spec.count > 1 ? `${spec.name} ×\u202f${spec.count}` : spec.name,
          joint: front,
          ref: { of: 'drawer', index, end: 'front' },
        }),
      ),
      ...joints.map(({ name, joint }, index): Member => ({ name, joint, ref: { of: 'joint', index } })),
    ];
    const { family } = set;
    setText(
      summary,
      family === undefined
        ? ''
        : `Tails keep to ${formatLength(family.target, plan.units)}; the widest are ${family.spread.toFixed(2)} times the narrowest.`,
    );
    while (drawn.length < members.length) drawn.push(make(drawn.length));
    for (const { button } of drawn.splice(members.length)) button.remove();
    const tallest = Math.max(...set.drawers.map(({ front }) => front.width), 1);
    members.forEach((member, i) => {
      const each = drawn[i];
      if (each === undefined) return;
      const { joint, ref } = member;
      const scale =
        ref.of === 'drawer'
          ? Math.min(LARGEST_SCALE, MOST_HEIGHT / tallest)
          : Math.min(LARGEST_SCALE, MOST_HEIGHT / joint.width);
      const across = (joint.pinBoard.lap + joint.depth + BEYOND) * scale;
      const tall = joint.width * scale;
      each.svg.size(across + 2, tall + 2).viewbox(-1, -1, across + 2, tall + 2);
      const lap = joint.pinBoard.lap * scale;
      each.board.attr('d', `M0 0H${px(across)}V${px(tall)}H0Z${lap > 0 ? `M${px(lap)} 0V${px(tall)}` : ''}`);
      const baseline = (joint.pinBoard.lap + joint.depth) * scale;
      each.tails.attr(
        'd',
        `${joint.tails
          .map(
            (tail) =>
              `M${tailOutline(tail, joint)
                .map(([u, y]) => `${px(baseline - y * scale)} ${px(tall - u * scale)}`)
                .join('L')}Z`,
          )
          .join('')}M${px(baseline)} 0V${px(tall)}`,
      );
      setText(each.name, member.name);
      const tail = meanTail(joint);
      const pin = meanPin(joint);
      const sign = joint.even ? '' : '≈\u202f';
      setText(
        each.figures,
        `${joint.tails.length} × ${sign}${formatNumber(tail, plan.units)}, ${(tail / pin).toFixed(1)}\u202f:\u202f1`,
      );
      const chosen = corner.ref.of === ref.of && corner.ref.index === ref.index;
      setAttribute(each.button, 'aria-pressed', String(chosen));
    });
  };
};

const px = (value: number): string => String(Math.round(value * 10) / 10);
