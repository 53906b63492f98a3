import { html, nothing, render, svg, type TemplateResult } from 'lit-html';
import type { CabinetFront } from '../../drawer/arrangement/cabinetFront.ts';
import { cabinetOf } from '../../drawer/arrangement/cabinetOf.ts';
import type { Drawer } from '../../drawer/drawer.ts';
import type { Point } from '../../drawing/drawing.ts';
import { tailParts } from '../../joint/joint.ts';
import type { Result } from '../../units/complaint.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { px } from '../browser/dom.ts';
import { fitting, lettersIn, scaleInto } from '../browser/letters.ts';
import { cornerOfDrawer } from '../model/editedCorner.ts';
import type { Snapshot } from '../model/snapshot.ts';
import { MOST_DRAWN, type View, type ViewActions } from '../model/viewState.ts';
import type { fixedToFronts } from './fixedToFronts.ts';

/** Round the drawers, in px. */
const FRAME = 10;
const MOST_HEIGHT = 520;
/** The height of a line, in px. */
const LINE = 15;

/** Where a planned cabinet is drawn. */
export interface Elevation {
  /** px to each mm. */
  readonly scale: number;
  /** In px, of a point in mm from the lower left of the cabinet's clear inside, y upward. */
  readonly at: (point: Point) => Point;
}

export interface CabinetActions extends ViewActions {
  /** @param run a name that edits share which are one step of undo */
  readonly edit: (what: string, edit: (now: Snapshot) => Result<Snapshot>, run?: string) => boolean;
  /** Tells screen readers. */
  readonly announce: (words: string) => void;
}

/** Its rails, to be moved; their script is unpacked where a cabinet is planned. */
export interface CabinetGrips {
  /** What a hand has made of the plan, while it holds a rail. */
  readonly held: () => Snapshot | undefined;
  readonly marks: (shown: Snapshot, elevation: Elevation) => TemplateResult;
  readonly beside: (shown: Snapshot, elevation: Elevation) => TemplateResult;
}

/** The set in its cabinet, from the front; the tails' ends are shaded, as if the lap were glass. */
export const cabinetView = (host: HTMLElement, actions: CabinetActions): View => {
  const { select } = actions;
  let state: Parameters<View>[0] | undefined;
  let grips: CabinetGrips | undefined;
  let asked = false;
  let fix: typeof fixedToFronts | undefined;
  const draw = (): void => {
    if (state === undefined) return;
    const {
      corner: { ref },
      room,
    } = state;
    const now = grips?.held() ?? state.now;
    if (now.project.cabinet !== undefined && !asked) {
      asked = true;
      void import('./railGrips.ts').then(({ railGrips }) => {
        grips = railGrips(host, () => state?.now ?? now, actions, draw);
        draw();
      });
    }
    const drawers = now.project.set.drawers.slice(0, MOST_DRAWN);
    if (drawers.length === 0) return;
    const { units } = now.project;
    const isFitted = drawers.some(({ spec }) => spec.fittings !== undefined);
    if (isFitted && fix === undefined)
      void import('./fixedToFronts.ts').then((part) => {
        fix = part.fixedToFronts;
        draw();
      });
    const fixed = isFitted ? fix?.(now.project) : undefined;
    const letters = lettersIn(room.cabinet, room.letters);
    const cabinet = cabinetOf(drawers);
    const fronts = cabinet.rows.flat();
    const scale = scaleInto({ width: room.cabinet, height: MOST_HEIGHT }, FRAME, cabinet);
    const width = cabinet.width * scale + 2 * FRAME;
    const height = cabinet.height * scale + 2 * FRAME;
    const [left, low] = cabinet.from ?? [0, 0];
    const elevation: Elevation = {
      scale,
      at: ([x, y]) => [FRAME + (x - left) * scale, height - FRAME - (y - low) * scale],
    };

    const drawn = ({ index, x, y, width: wide, height: high }: CabinetFront, i: number) => {
      const drawer = drawers[index];
      if (drawer === undefined) return nothing;
      const chosen = ref.of === 'drawer' && ref.index === index;
      // The keyboard and screen readers have one item for equal drawers.
      const first = fronts[i - 1]?.index !== index;
      const choose = () => select(cornerOfDrawer(ref, index));
      const chooseByKey = (event: KeyboardEvent): void => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        choose();
      };
      const label = spoken(drawer, (value) => formatNumber(value, units));
      const [x0, y1] = [FRAME + x * scale, height - FRAME - y * scale];
      const [w, h] = [wide * scale, high * scale];
      const strip = drawer.spec.stock.side.thickness * scale;
      // Behind a lip, the sides are in from the front's ends.
      const { sides, bottom } = drawer.sizes.rebate;
      const tails = tailParts(drawer.front, 'tip').flatMap(([from, to]) =>
        [x0 + sides * scale, x0 + w - sides * scale - strip].map(
          (left) =>
            `M${px(left)} ${px(y1 - (bottom + from) * scale)}h${px(strip)}V${px(y1 - (bottom + to) * scale)}h${px(-strip)}Z`,
        ),
      );
      const pulls = fixed?.outlines(drawer, x0, y1, scale) ?? '';
      // A pull is where the name would be.
      const up = pulls === '' ? h / 2 - 5 * letters : 4 * letters;
      return svg`<g class="front ${chosen ? 'chosen' : ''}" role=${first ? 'button' : 'presentation'}
        tabindex=${first ? '0' : nothing} aria-pressed=${first ? chosen : nothing}
        aria-label=${first ? label : nothing} aria-hidden=${first ? nothing : 'true'}
        @click=${choose} @keydown=${chooseByKey}>
        <path class="board" d="M${px(x0)} ${px(y1)}h${px(w)}v${px(-h)}h${px(-w)}Z"></path>
        <path class="tail-wood" d=${tails.join('')}></path>
        ${pulls === '' ? nothing : svg`<path class="pulls" d=${pulls}></path>`}
        <text class="name middle" x=${px(x0 + w / 2)} y=${px(y1 - up)}>${h < LINE * letters ? '' : fitting(drawer.spec.name, (w - 2 * strip) / letters)}</text>
      </g>`;
    };

    render(
      html`<svg class="cabinet" style="--letters: ${letters}" role="group" aria-label="The drawers in the cabinet"
        width=${px(width)} height=${px(height)} viewBox="0 0 ${px(width)} ${px(height)}">
        <path class="carcase" d="M1 1H${width - 1}V${height - 1}H1Z"></path>
        ${fronts.map(drawn)}
        ${grips?.marks(now, elevation) ?? nothing}
      </svg>${grips?.beside(now, elevation) ?? nothing}${fixed?.notes.map((line) => html`<p class="note">${line}</p>`) ?? nothing}`,
      host,
    );
  };
  return (next) => {
    state = next;
    draw();
  };
};

const spoken = ({ spec, sizes, front }: Drawer, length: (value: number) => string): string =>
  [
    spec.name,
    ...(spec.count > 1 ? [`${spec.count} of them`] : []),
    `${length(sizes.width)} wide, ${length(sizes.height)} high`,
    `${front.tails.length} ${front.tails.length === 1 ? 'tail' : 'tails'}`,
  ].join(', ');
