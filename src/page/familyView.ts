import { SVG, type Svg, type Path as SvgPath } from '@svgdotjs/svg.js';
import type { Point } from '../drawing/drawing.ts';
import type { Joint } from '../joint/joint.ts';
import { kindOf } from '../joint/kinds/kinds.ts';
import { meanPin, meanTail } from '../joint/proportion.ts';
import { formatLength, formatNumber } from '../units/formatLength.ts';
import type { CornerRef } from './corner.ts';
import { element, setAttribute, setText } from './dom.ts';
import { type Ask, MOST_DRAWN, type View } from './shown.ts';
import { drawPath, px, sizeSvg } from './svgParts.ts';

/** How much of each board is seen beyond its tails, in mm. */
const BEYOND = 30;
/** How high all pictures together are to be, in px, where there are few drawers or many. */
const STACK = 460;
const SCALE = { least: 0.5, most: 1 };
const PICTURE_WIDTH = 52;
/** The scale of tails' widths: half as long in px, and the logarithm of the ratio at its ends. */
const AXIS = { half: 36, end: Math.log(1.7) };

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
  readonly scale: HTMLElement;
  readonly dot: SVGElement;
}

/** Every corner of the plan from the side, all to one scale, with what makes them a family. */
export const familyView = (host: HTMLElement, ask: Ask): View => {
  const summary = element('p', { class: 'summary' });
  const row = element('div', { class: 'members' });
  const ends = element('p', { class: 'ends', 'aria-hidden': 'true' });
  ends.append(element('span', {}, 'narrower'), element('span', {}, 'wider'));
  host.append(summary, ends, row);
  const drawn: Drawn[] = [];

  const make = (i: number): Drawn => {
    const picture = element('span', { class: 'picture' });
    const name = element('span', { class: 'name' });
    const figures = element('span', { class: 'figures' });
    const scale = element('span', { class: 'scale' });
    const words = element('span', { class: 'words' }, name, figures);
    const button = element('button', { type: 'button', class: 'member' }, picture, words, scale);
    button.addEventListener('click', () => {
      const member = members[i];
      if (member !== undefined) ask.select(member.ref);
    });
    row.append(button);
    const svg = SVG().addTo(picture).addClass('corner-picture');
    svg.attr('aria-hidden', 'true');
    const axis = SVG()
      .addTo(scale)
      .size(2 * AXIS.half + 8, 20);
    axis.attr('aria-hidden', 'true');
    axis.path(`M4 10h${2 * AXIS.half}`).addClass('axis');
    axis.path(`M${4 + AXIS.half} 4v12`).addClass('aim');
    return {
      button,
      svg,
      board: svg.path('').addClass('board') as SvgPath,
      tails: svg.path('').addClass('tail-wood') as SvgPath,
      name,
      figures,
      scale,
      dot: axis.circle(8).addClass('dot').node,
    };
  };

  let members: readonly Member[] = [];
  return ({ now, corner }) => {
    const { set, joints, units } = now.project;
    members = [
      ...set.drawers.map(
        ({ spec, front }, index): Member => ({
          name: spec.count > 1 ? `${spec.name} ×\u202f${spec.count}` : spec.name,
          joint: front,
          ref: { of: 'drawer', index, end: 'front' },
        }),
      ),
      ...joints.map(({ name, joint }, index): Member => ({ name, joint, ref: { of: 'joint', index } })),
    ].slice(0, MOST_DRAWN);
    const more = set.drawers.length + joints.length - members.length;
    const { family } = set;
    setText(
      summary,
      family === undefined
        ? ''
        : `Tails keep to ${formatLength(family.target, units)}; the widest are ${family.spread.toFixed(2)} times the narrowest.${more > 0 ? ` ${more} more stand in the plan's text.` : ''}`,
    );
    ends.hidden = family === undefined;
    while (drawn.length < members.length) drawn.push(make(drawn.length));
    for (const { button } of drawn.splice(members.length)) button.remove();
    const tall = members.reduce((sum, { joint }) => sum + joint.width, 0);
    const common = Math.min(SCALE.most, Math.max(SCALE.least, STACK / tall));
    members.forEach((member, i) => {
      const each = drawn[i];
      if (each === undefined) return;
      const { joint, ref } = member;
      const scale = ref.of === 'drawer' ? common : Math.min(common, PICTURE_WIDTH / joint.width);
      const side = kindOf(joint).sideView(joint);
      const across = Math.min(PICTURE_WIDTH - 2, (side.reach + BEYOND) * scale);
      const high = joint.width * scale;
      sizeSvg(each.svg, across, high, 1);
      drawPath(each.board, `M0 0H${px(across)}V${px(high)}H0Z`);
      const outline = (points: readonly Point[]): string =>
        `M${points.map(([x, u]) => `${px(x * scale)} ${px(high - u * scale)}`).join('L')}Z`;
      const upright = (x: number): string => `M${px(x * scale)} 0V${px(high)}`;
      drawPath(each.tails, [...side.tails.map(outline), ...side.uprights.map(upright)].join(''));
      setText(each.name, member.name);
      const tail = meanTail(joint);
      const pin = meanPin(joint);
      const sign = joint.even ? '' : '≈';
      setText(
        each.figures,
        `${joint.tails.length} × ${sign}${formatNumber(tail, units)}, ${(tail / pin).toFixed(1)}\u202f:\u202f1`,
      );
      const away = family === undefined ? 0 : Math.log(tail / family.target) / AXIS.end;
      setAttribute(each.dot, 'cx', px(4 + AXIS.half * (1 + Math.max(-1, Math.min(1, away)))));
      setAttribute(each.dot, 'cy', '10');
      // A corner that belongs to no drawer need not look like the others.
      each.scale.hidden = family === undefined || ref.of === 'joint';
      const chosen = corner.ref.of === ref.of && corner.ref.index === ref.index;
      setAttribute(each.button, 'aria-pressed', String(chosen));
    });
  };
};
