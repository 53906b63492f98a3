import { html, nothing, render, type TemplateResult } from 'lit-html';
import type { Point } from '../../drawing/drawing.ts';
import { type Joint, meanPin, meanTail } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { px } from '../browser/dom.ts';
import { boxesIn, type CornerRef, cornerOfDrawer } from '../model/editedCorner.ts';
import { MOST_DRAWN, type View, type ViewActions } from '../model/viewState.ts';

/** How much of each board is seen beyond its tails, in mm. */
const BEYOND = 30;
/** Height of all pictures together in px, for few drawers and for many. */
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

/** Every corner of the plan from the side, all to one scale, with what makes them a family. */
export const familyView =
  (host: HTMLElement, { select }: ViewActions): View =>
  ({ now, corner }) => {
    const { set, joints, units } = now.project;
    const boxes = boxesIn(set);
    const members = [
      ...set.drawers.map(
        ({ spec, front }, index): Member => ({
          name: spec.count > 1 ? `${spec.name}, quantity\u00a0${spec.count}` : spec.name,
          joint: front,
          ref: cornerOfDrawer(corner.ref, index),
        }),
      ),
      ...boxes.map(
        ({ spec, front }, index): Member => ({
          name: spec.count > 1 ? `${spec.name}, quantity\u00a0${spec.count}` : spec.name,
          joint: front,
          ref: { of: 'box', index, end: 'front' },
        }),
      ),
      ...joints.map(({ name, joint }, index): Member => ({ name, joint, ref: { of: 'joint', index } })),
    ].slice(0, MOST_DRAWN);
    const more = set.drawers.length + boxes.length + joints.length - members.length;
    const { family } = set;
    const tall = members.reduce((sum, { joint }) => sum + joint.width, 0);
    const common = Math.min(SCALE.most, Math.max(SCALE.least, STACK / tall));

    const button = ({ name, joint, ref }: Member): TemplateResult => {
      const tail = meanTail(joint);
      const sign = joint.even ? '' : '≈';
      const figures = `${joint.tails.length} × ${sign}${formatNumber(tail, units)}, ${(tail / meanPin(joint)).toFixed(1)}\u202f:\u202f1`;
      const chosen = corner.ref.of === ref.of && corner.ref.index === ref.index;
      // A corner that belongs to no drawer need not look like the others.
      const compared = family !== undefined && ref.of === 'drawer';
      const scale = ref.of === 'drawer' ? common : Math.min(common, PICTURE_WIDTH / joint.width);
      return html`<button type="button" class="member" aria-pressed=${chosen} @click=${() => select(ref)}>
        <span class="picture">${picture(joint, scale)}</span>
        <span class="words"><span class="name">${name}</span><span class="figures">${figures}</span></span>
        <span class="scale" ?hidden=${!compared}>${compared ? axis(Math.log(tail / family.target)) : nothing}</span>
      </button>`;
    };

    const summary =
      family === undefined
        ? ''
        : `The set's tail width is ${formatLength(family.target, units)}; its widest tail is ${family.spread.toFixed(2)} times its narrowest.${more > 0 ? ` ${more} more are in the plan's text.` : ''}`;
    render(
      html`<p class="summary">${summary}</p>
        <p class="quiet" ?hidden=${family === undefined}>Each dot is a drawer’s tail width, to the left of the mark where it is less than the set’s.</p>
        <p class="ends" aria-hidden="true" ?hidden=${family === undefined}><span>narrower</span><span>wider</span></p>
        <div class="members">${members.map(button)}</div>`,
      host,
    );
  };

/** A corner from the side, at so many px to the mm. */
const picture = (joint: Joint, scale: number): TemplateResult => {
  const { reach, tails, uprights, span } = kindOf(joint).sideView(joint);
  const width = Math.min(PICTURE_WIDTH - 2, (reach + BEYOND) * scale);
  const height = joint.width * scale;
  const outline = (points: readonly Point[]): string =>
    `M${points.map(([x, u]) => `${px(x * scale)} ${px(height - u * scale)}`).join('L')}Z`;
  const [foot, top] = span.map((u) => px(height - u * scale));
  const upright = (x: number): string => `M${px(x * scale)} ${top}V${foot}`;
  const shoulders = span
    .filter((u) => u > 0 && u < joint.width)
    .map((u) => `M0 ${px(height - u * scale)}H${px(reach * scale)}`);
  const [w, h] = [px(width + 2), px(height + 2)];
  return html`<svg class="corner-picture" aria-hidden="true" width=${w} height=${h} viewBox="-1 -1 ${w} ${h}">
    <path class="board" d="M0 0H${px(width)}V${px(height)}H0Z"></path>
    <path class="tail-wood" d=${[...tails.map(outline), ...uprights.map(upright), ...shoulders].join('')}></path>
  </svg>`;
};

/** The scale of tails' widths. @param away the logarithm of a corner's mean tail width to the set's tail width */
const axis = (away: number): TemplateResult => {
  const { half, end } = AXIS;
  const x = px(4 + half * (1 + Math.max(-1, Math.min(1, away / end))));
  return html`<svg aria-hidden="true" width=${2 * half + 8} height="20">
    <path class="axis" d="M4 10h${2 * half}"></path>
    <path class="aim" d="M${4 + half} 4v12"></path>
    <circle class="dot" r="4" cx=${x} cy="10"></circle>
  </svg>`;
};
