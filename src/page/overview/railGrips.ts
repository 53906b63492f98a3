import { html, nothing, svg, type TemplateResult } from 'lit-html';
import type { PlannedCabinet } from '../../cabinet/frameSpec.ts';
import type { Point } from '../../drawing/drawing.ts';
import { accept, type Complaint } from '../../units/complaint.ts';
import { formatLength } from '../../units/formatLength.ts';
import { px } from '../browser/dom.ts';
import { lineTarget, type Target } from '../corner/touchTargets.ts';
import { rowHeights } from '../model/cabinet/openingEdits.ts';
import { isByItself, moveRail, railStep } from '../model/cabinet/railEdits.ts';
import type { Moved } from '../model/edits.ts';
import { type Snapshot, snapshot } from '../model/snapshot.ts';
import { MOST_DRAWN } from '../model/viewState.ts';
import { complaintWords } from '../text/plainWords.ts';
import type { CabinetActions, CabinetGrips, Elevation } from './cabinetView.ts';

/** Movement in px that is no edit: a hand that clicks or taps is not quite still. */
const STILL = 3;
const MANY_STEPS = 10;
/** After so many ms another key begins another step of undo. */
const PAUSE = 2000;
/** How near above a rail the mouse may still hold it, and a grip's half height, in px. */
const NEAR = 6;
const GRIP = 6;
/** A callout's width, how far it is from what it is about, and what is kept free at the edges, in px. */
const WIDEST = 240;
const AWAY = 16;
const FREE = 8;
/** Farther than any rail. */
const FAR = 1e5;

/** Steps up are less than 0. */
const KEYS: Readonly<Record<string, number>> = {
  ArrowUp: -1,
  ArrowLeft: -1,
  ArrowDown: 1,
  ArrowRight: 1,
  PageUp: -MANY_STEPS,
  PageDown: MANY_STEPS,
  Home: -FAR,
  End: FAR,
};

/** A rail in the hand: what it has made, and where the pointer was when it took hold. */
interface Held {
  readonly rail: number;
  readonly start: Snapshot;
  readonly from: readonly [x: number, y: number];
  readonly pointer: number;
  readonly scale: number;
  isMoved: boolean;
  moved: Moved;
  /** In the window, in px. */
  at: readonly [x: number, y: number];
}

/** A run of keys on one rail, which is one step of undo. */
interface Run {
  readonly rail: number;
  readonly start: Snapshot;
  readonly name: string;
  stop: readonly Complaint[];
}

/** A rail as it is drawn: the row above it and the one below, and its middle from the lower edge of the clear inside, in mm. */
interface Rail {
  readonly above: number;
  readonly below: number;
  readonly level: number;
}

/** From the uppermost down. */
const railsOf = (cabinet: PlannedCabinet): Rail[] => {
  const heights = rowHeights(cabinet);
  let level = cabinet.height + cabinet.rail / 2;
  return heights.slice(1).map((below, i) => {
    const above = heights[i] ?? 0;
    level -= above + cabinet.rail;
    return { above, below, level };
  });
};

/** Where a finger takes hold of each rail, from the uppermost down: at the right, those of neighbours beside each other. */
const targetsOf = (levels: readonly Point[]): Target[] => {
  const lines = levels.map(([, y]) => y).toReversed();
  const targets = lines.map((_, i) => lineTarget(lines, i, 0, 0)).toReversed();
  const right = (levels[0]?.[0] ?? 0) - targets.reduce((most, { x1 }) => Math.max(most, x1), 0);
  return targets.map((each) => ({ ...each, x0: each.x0 + right, x1: each.x1 + right }));
};

/** Lets the rails of a cabinet be moved on its elevation, by mouse, finger and keys. */
export const railGrips = (
  host: HTMLElement,
  now: () => Snapshot,
  { edit, announce }: CabinetActions,
  redraw: () => void,
): CabinetGrips => {
  let held: Held | undefined;
  let run: Run | undefined;
  let runs = 0;
  let isBroken = false;
  let pending: number | undefined;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let scale = 1;

  const words = ({ project: { cabinet, units } }: Snapshot, rail: number): string => {
    const heights = cabinet === undefined ? [] : rowHeights(cabinet);
    const row = (i: number): string => `row ${i + 1} ${formatLength(heights[i] ?? 0, units)}`;
    const all = cabinet !== undefined && !isByItself(cabinet) && !isBroken;
    return all ? heights.map((_, i) => row(i)).join(', ') : `${row(rail)}, ${row(rail + 1)}`;
  };
  const reason = ([stop]: readonly Complaint[]): string =>
    stop === undefined ? '' : complaintWords(stop, now().project);

  const railOf = (target: EventTarget | null): { node: SVGElement; rail: number } | undefined => {
    const node = target instanceof Element ? target.closest('[data-rail]') : null;
    return node instanceof SVGElement ? { node, rail: Number(node.dataset.rail) } : undefined;
  };
  const rest = (): void => {
    clearTimeout(pause);
    if (run === undefined) return;
    run = undefined;
    redraw();
  };
  const follow = (alt: boolean): void => {
    if (held === undefined) return;
    const step = railStep(held.start.project.units);
    const by = Math.round((held.at[1] - held.from[1]) / held.scale / step) * step;
    held.moved = moveRail(held.start, held.rail, by, isBroken || alt);
    redraw();
  };
  const end = (kept: boolean): void => {
    if (pending !== undefined) cancelAnimationFrame(pending);
    pending = undefined;
    const was = held;
    held = undefined;
    if (was === undefined) return;
    const { moved, start, rail } = was;
    if (kept && was.isMoved && moved.snapshot !== start) {
      // What was laid out from the plan's values can be laid out from its text.
      edit(`rail under row ${rail + 1}`, () => snapshot(moved.snapshot.text));
      announce(words(now(), rail));
    } else redraw();
  };

  host.addEventListener('pointerdown', (event) => {
    const on = railOf(event.target);
    if (on === undefined || event.button !== 0 || !event.isPrimary) return;
    // A finger takes hold of a grip that has the focus, which a tap gives it: before that it scrolls the page.
    if (event.pointerType !== 'mouse' && document.activeElement !== on.node) return;
    event.preventDefault();
    rest();
    on.node.setPointerCapture(event.pointerId);
    on.node.focus({ preventScroll: true });
    const start = now();
    const from = [event.clientX, event.clientY] as const;
    held = {
      rail: on.rail,
      start,
      from,
      at: from,
      pointer: event.pointerId,
      scale,
      isMoved: false,
      moved: { snapshot: start, stop: [] },
    };
  });
  host.addEventListener('pointermove', ({ pointerId, clientX, clientY, altKey }) => {
    if (held?.pointer !== pointerId) return;
    held.at = [clientX, clientY];
    held.isMoved ||= Math.hypot(clientX - held.from[0], clientY - held.from[1]) >= STILL;
    if (!held.isMoved) return;
    // There may be many events for one frame.
    pending ??= requestAnimationFrame(() => {
      pending = undefined;
      follow(altKey);
    });
  });
  host.addEventListener('pointerup', ({ pointerId, altKey }) => {
    if (held?.pointer !== pointerId) return;
    if (held.isMoved) follow(altKey);
    end(true);
  });
  host.addEventListener('pointercancel', () => end(false));
  // Not every browser heeds touch-action inside a drawing.
  host.addEventListener(
    'touchstart',
    (event) => {
      const on = railOf(event.target);
      if (on !== undefined && document.activeElement === on.node && event.cancelable) event.preventDefault();
    },
    { passive: false },
  );
  host.addEventListener('click', ({ target }) => railOf(target)?.node.focus({ preventScroll: true }));
  host.addEventListener('focusout', ({ target }) => {
    if (railOf(target) !== undefined) rest();
  });
  host.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && (held !== undefined || run !== undefined)) {
      event.preventDefault();
      if (held !== undefined) end(false);
      else if (run !== undefined) {
        const { start, name, rail } = run;
        edit(`rail under row ${rail + 1}`, () => accept(start), name);
        rest();
        announce(words(now(), rail));
      }
      return;
    }
    const on = railOf(event.target);
    const steps = KEYS[event.key];
    if (on === undefined || steps === undefined || held !== undefined || event.ctrlKey || event.metaKey)
      return;
    event.preventDefault();
    const { rail } = on;
    if (run?.rail !== rail) {
      runs++;
      run = { rail, start: now(), name: `rail ${runs}`, stop: [] };
    }
    clearTimeout(pause);
    pause = setTimeout(rest, PAUSE);
    const times = event.shiftKey ? MANY_STEPS : 1;
    const before = now();
    const { snapshot: made, stop } = moveRail(
      before,
      rail,
      steps * times * railStep(before.project.units),
      isBroken || event.altKey,
    );
    run.stop = stop;
    if (made !== before) edit(`rail under row ${rail + 1}`, () => snapshot(made.text), run.name);
    redraw();
    announce([words(now(), rail), reason(stop)].filter(Boolean).join('. '));
  });

  const grip = (
    { project: { units } }: Snapshot,
    cabinet: PlannedCabinet,
    elevation: Elevation,
    { above, below, level }: Rail,
    rail: number,
    touch: Target,
  ): TemplateResult => {
    const [x0, y] = elevation.at([0, level]);
    const [x1] = elevation.at([cabinet.width, level]);
    const half = Math.max(NEAR, (cabinet.rail * elevation.scale) / 2);
    const isMoving = held?.rail === rail ? held.isMoved : run?.rail === rail;
    const stop = held?.rail === rail ? held.moved.stop : run?.rail === rail ? run.stop : [];
    const state = isMoving ? (stop.length > 0 ? 'moving stopped' : 'moving') : '';
    const middle = (touch.x0 + touch.x1) / 2;
    return svg`<g class="handle rail ${state}" role="slider" tabindex="0" data-rail=${rail}
      aria-orientation="vertical" aria-label="rail under row ${rail + 1}"
      aria-description=${isByItself(cabinet) || isBroken ? 'moves by itself' : 'all rows follow'}
      aria-valuemin="0" aria-valuemax=${Math.round(cabinet.height)} aria-valuenow=${Math.round(above * 100) / 100}
      aria-valuetext=${`${formatLength(above, units)} above, ${formatLength(below, units)} below`}>
      <path class="hit" d="M${px(x0)} ${px(y - half)}H${px(x1)}V${px(y + half)}H${px(x0)}Z"></path>
      <path class="touch" d="M${px(touch.x0)} ${px(touch.top)}H${px(touch.x1)}V${px(touch.bottom)}H${px(touch.x0)}Z"></path>
      <path class="trace" d="M${px(x0)} ${px(y)}H${px(x1)}"></path>
      <path class="grip" d="M${px(middle)} ${px(y - GRIP)}l${GRIP} ${GRIP}l${-GRIP} ${GRIP}l${-GRIP} ${-GRIP}Z"></path>
    </g>`;
  };

  const middleOf = ({ project: { cabinet } }: Snapshot, elevation: Elevation, rail: number): Point =>
    elevation.at(cabinet === undefined ? [0, 0] : [cabinet.width / 2, railsOf(cabinet)[rail]?.level ?? 0]);

  const callout = (shown: Snapshot, elevation: Elevation): TemplateResult | typeof nothing => {
    const active = held?.isMoved === true ? held : run;
    if (active === undefined) return nothing;
    const { left, top, width } = host.getBoundingClientRect();
    const stop = held === undefined ? (run?.stop ?? []) : held.moved.stop;
    const [x, y] =
      held === undefined ? middleOf(shown, elevation, active.rail) : [held.at[0] - left, held.at[1] - top];
    const at = Math.max(FREE, Math.min(x + AWAY, width - FREE - WIDEST));
    // Above, as a finger hides what is below, where that has room.
    const isAbove = y > WIDEST / 2;
    const why = reason(stop);
    return html`<div class="callout ${isAbove ? 'above' : ''} ${why === '' ? '' : 'stopped'}"
      style="max-width: ${WIDEST}px; left: ${at}px; top: ${y + (isAbove ? -AWAY : AWAY)}px">
      <p>${words(shown, active.rail)}</p>${why === '' ? nothing : html`<p class="reason">${why}</p>`}</div>`;
  };

  return {
    held: () => (held?.isMoved === true ? held.moved.snapshot : undefined),
    marks: (shown, elevation) => {
      ({ scale } = elevation);
      const { cabinet } = shown.project;
      if (cabinet === undefined) return svg``;
      const rails = railsOf(cabinet).slice(0, MOST_DRAWN);
      const targets = targetsOf(rails.map(({ level }) => elevation.at([cabinet.width, level])));
      return svg`${targets.map((touch, i) => {
        const rail = rails[i];
        return rail === undefined ? nothing : grip(shown, cabinet, elevation, rail, i, touch);
      })}`;
    },
    beside: (shown, elevation) => {
      const { cabinet } = shown.project;
      if (cabinet === undefined || cabinet.rows.length < 2) return html``;
      const isFree = isByItself(cabinet);
      return html`${callout(shown, elevation)}
        <p class="quiet">Drag a rail, or move it with the arrow keys; with a finger, tap it first. Escape puts it back.</p>
        ${
          isFree
            ? nothing
            : html`<label class="check"><input type="checkbox" .checked=${isBroken}
                @change=${({ target }: Event) => {
                  isBroken = target instanceof HTMLInputElement && target.checked;
                  redraw();
                }}> Break the rule: a rail moves by itself, and the heights are listed (or hold Alt)</label>`
        }`;
    },
  };
};
