import { type G, SVG, type Svg, type Path as SvgPath, type Text } from '@svgdotjs/svg.js';
import type { Complaint } from '../complaint.ts';
import { formatNumber, type Unit } from '../units/length.ts';
import { speak } from '../units/phrase.ts';
import { type CornerSheet, cornerSheet, type Face, type Frame, type Outline } from './cornerSheet.ts';
import { element, setAttribute, setText } from './dom.ts';
import { type Handle, handlesOf, handleText, lineHandles } from './handles.ts';
import type { Shown, View } from './shown.ts';
import { drawPath, px, sizeSvg } from './svgParts.ts';
import { isTail, linesOf, widthsOf } from './widths.ts';

/** What the drawing of a corner tells of hands at work. */
export interface Hands {
  readonly grab: (handle: Handle) => void;
  /** @param by mm, up or to the right, from where it was taken hold of */
  readonly drag: (by: number) => void;
  readonly drop: (kept: boolean) => void;
  /** @param steps of 0.1 mm or 1/64 in, by which its value grows */
  readonly nudge: (handle: Handle, steps: number) => void;
}

/** A finger needs so many px. */
const FINGER = 44;
/** Text is drawn where it has so many px. */
const LINE_HEIGHT = 15;
/** The frame of a locked width. */
const LOCK = 50;
/** A face this wide, in px, has room for its whole name. */
const NAMED = 112;
const MANY_STEPS = 10;

export const cornerView = (host: HTMLElement, hands: Hands): View => {
  const svg = SVG().addTo(host).addClass('corner');
  svg.attr({ role: 'group' });
  const hatch = svg.defs().element('pattern');
  hatch.attr({ id: 'hatch', width: 6, height: 6, patternUnits: 'userSpaceOnUse' });
  hatch.element('path').attr('d', 'M-1 1l2 -2M0 6l6 -6M5 7l2 -2');
  const callout = element('div', { class: 'callout', hidden: true });
  host.append(callout);

  const layer = (name: string): G => svg.group().addClass(name);
  const back = layer('boards');
  const path = (group: G, name: string): SvgPath => group.path('').addClass(name) as SvgPath;
  const boards = path(back, 'board');
  const wood = path(back, 'tail-wood');
  const waste = path(back, 'waste');
  const grooveLines = path(back, 'groove-lines');
  const outline = path(back, 'outline');
  const marks = path(back, 'marks');
  const edge = path(back, 'edge');
  const sizes = layer('sizes');
  sizes.attr({ 'aria-hidden': 'true' });
  const ticks = path(sizes, 'ticks');
  const texts = new Texts(sizes);
  const names = new Texts(layer('names'));
  const handles = new Handles(svg, hands, () => sheet?.scale ?? 1);

  let sheet: CornerSheet | undefined;
  let heldScale: number | undefined;

  return (shown) => {
    const { corner, now, moving } = shown;
    const unit = now.laid.plan.units;
    heldScale = moving === undefined ? undefined : (heldScale ?? sheet?.scale);
    const frame = frameOf(shown.room.corner, heldScale);
    const drawn = cornerSheet(corner, frame);
    sheet = drawn;
    sizeSvg(svg, drawn.width, drawn.height);
    setAttribute(svg.node, 'aria-label', `${corner.name}: both boards of the corner`);
    const y = (u: number): number => drawn.foot - u * drawn.scale;
    const data = (outlines: readonly Outline[], closed = true): string =>
      outlines
        .map((points) => `M${points.map(([x, u]) => `${px(x)} ${px(y(u))}`).join('L')}${closed ? 'Z' : ''}`)
        .join('');
    const { width } = corner.joint;
    const { tailFace, tailEnd, pinEnd, pinFace } = drawn;
    const area = (x0: number, x1: number): Outline => [
      [x0, 0],
      [x1, 0],
      [x1, width],
      [x0, width],
    ];
    const level = (x0: number, x1: number, u: number): Outline => [
      [x0, u],
      [x1, u],
    ];
    const upright = (x: number): Outline => [
      [x, 0],
      [x, width],
    ];
    drawPath(boards, data([area(tailFace.x0, tailEnd.x1), area(pinEnd.x0, pinFace.x1)]));
    drawPath(wood, data([...drawn.tails, ...drawn.tips]));
    drawPath(waste, data([...drawn.tailWaste, ...drawn.sockets, ...drawn.faceSockets]));
    drawPath(
      outline,
      data(
        [
          level(tailFace.x0, tailEnd.x1, width),
          upright(tailFace.x1),
          upright(tailEnd.x1),
          level(pinEnd.x0, pinFace.x1, width),
          upright(pinEnd.x0),
          upright(pinEnd.x1),
        ],
        false,
      ) +
        breakLine(tailFace.x0, y(0), y(width)) +
        breakLine(pinFace.x1, y(0), y(width)),
    );
    drawPath(edge, data([level(tailFace.x0, tailEnd.x1, 0), level(pinEnd.x0, pinFace.x1, 0)], false));
    drawPath(
      marks,
      data(
        [
          ...drawn.lines.flatMap(([a, b, c, d, e, f]) =>
            a && b && c && d && e && f
              ? [
                  [a, b, c],
                  [d, e, f],
                ]
              : [],
          ),
          upright(drawn.tailBaseline),
          upright(drawn.lapLine),
          upright(drawn.pinBaseline),
        ],
        false,
      ),
    );
    const { groove } = drawn;
    drawPath(
      grooveLines,
      groove === undefined
        ? ''
        : data(
            [groove.from, groove.to].flatMap((u) => [
              level(tailFace.x0, tailFace.x1, u),
              level(tailEnd.x1 - groove.depth, tailEnd.x1, u),
              level(pinEnd.x1 - groove.depth, pinEnd.x1, u),
              level(pinFace.x0, pinFace.x1, u),
            ]),
            false,
          ),
    );
    drawSizes(texts, ticks, names, shown, drawn, y, unit);
    handles.show(shown, drawn, y, unit);
    placeCallout(callout, moving?.stop ?? [], handles.middle(moving?.handle), drawn, unit);
  };
};

const frameOf = (width: number, scale: number | undefined): Frame => {
  const narrow = width < 560;
  return {
    width,
    height: Math.max(360, Math.min(window.innerHeight - 260, 700)),
    left: narrow ? 44 : 76,
    right: narrow ? 8 : 32,
    top: 58,
    bottom: 34,
    gap: narrow ? 56 : 92,
    ...(scale === undefined ? {} : { scale }),
  };
};

/** Where a board goes on beyond what is drawn. */
const breakLine = (x: number, from: number, to: number): string => {
  const middle = (from + to) / 2;
  return `M${px(x)} ${px(from)}V${px(middle + 9)}l-5 -6l10 -6l-5 -6V${px(to)}`;
};

/** Texts that are made once and moved from then on. */
class Texts {
  readonly #group: G;
  #used = 0;
  readonly #texts: Text[] = [];

  constructor(group: G) {
    this.#group = group;
  }

  start(): void {
    this.#used = 0;
  }

  put(words: string, x: number, y: number, look: string, turn = 0): void {
    const text = this.#texts[this.#used] ?? this.#group.plain('');
    this.#texts[this.#used++] = text;
    setText(text.node, words);
    const at = `translate(${px(x)} ${px(y)})${turn === 0 ? '' : ` rotate(${turn})`}`;
    setAttribute(text.node, 'transform', at);
    setAttribute(text.node, 'class', look);
  }

  end(): void {
    for (const text of this.#texts.splice(this.#used)) text.remove();
  }
}

const drawSizes = (
  texts: Texts,
  ticks: SvgPath,
  names: Texts,
  { corner, locked }: Shown,
  sheet: CornerSheet,
  y: (u: number) => number,
  unit: Unit,
): void => {
  const { joint, groove, ref } = corner;
  const { tailFace, tailEnd, pinEnd, pinFace, scale } = sheet;
  const widths = widthsOf(joint);
  const lines = [0, ...linesOf(widths), joint.width];
  const middle = (tailEnd.x1 + pinEnd.x0) / 2;
  texts.start();
  names.start();
  let d = '';
  widths.forEach((width, i) => {
    const from = lines[i] ?? 0;
    if (width * scale < LINE_HEIGHT - 3) return;
    const at = y(from + width / 2);
    texts.put(formatNumber(width, unit), middle, at + 5, `size middle${isTail(i) ? ' tail' : ''}`);
    // As on any drawing, a size in a frame is one that stays.
    if (locked.has(i)) d += `M${px(middle - LOCK / 2)} ${px(at - 9)}h${LOCK}v18h${-LOCK}Z`;
  });
  for (const line of lines)
    d += `M${px(tailEnd.x1 + 4)} ${px(y(line))}h10M${px(pinEnd.x0 - 4)} ${px(y(line))}h-10`;

  // The whole width, and the groove, at the left.
  const left = tailFace.x0 - 14;
  d += `M${px(left - 4)} ${px(y(0))}h8M${px(left - 4)} ${px(y(joint.width))}h8`;
  d += `M${px(left)} ${px(y(0))}V${px(y(joint.width))}`;
  const free = groove === undefined ? joint.width / 2 : (joint.width + groove.offset + groove.width) / 2;
  texts.put(formatNumber(joint.width, unit), left - 6, y(free), 'size middle', -90);
  if (groove !== undefined) {
    for (const u of [groove.offset, groove.offset + groove.width]) d += `M${px(left - 4)} ${px(y(u))}h8`;
    const words = formatNumber(groove.offset, unit);
    texts.put(words, left - 8, y(groove.offset / 2) + 4.5, 'size end');
    texts.put(
      formatNumber(groove.width, unit),
      left - 8,
      y(groove.offset + groove.width / 2) + 4.5,
      'size end',
    );
  }
  const below = y(0) + 22;
  const [tail, pin] =
    ref.of === 'joint' ? ['Tail board', 'Pin board'] : ['Side', ref.end === 'front' ? 'Front' : 'Back'];
  const called = (long: string, short: string, { x0, x1 }: Face): void => {
    const words = x1 - x0 > NAMED ? long : short;
    names.put(words, (x0 + x1) / 2, below, 'middle');
  };
  called(`${tail}, outside`, tail, tailFace);
  called('end', 'end', tailEnd);
  called('end', 'end', pinEnd);
  called(`${pin}, inside`, pin, pinFace);
  called('ref. edge', 'ref. edge', { x0: tailEnd.x1, x1: pinEnd.x0 });
  drawPath(ticks, d);
  texts.end();
  names.end();
};

interface Held {
  readonly handle: Handle;
  readonly group: G;
  readonly hit: SvgPath;
  readonly trace: SvgPath;
  readonly grip: SvgPath;
  readonly text: Text;
}

/** Everything that can be taken hold of. */
class Handles {
  readonly #layer: G;
  readonly #hands: Hands;
  readonly #scale: () => number;
  #held = new Map<string, Held>();
  #middles = new Map<string, readonly [number, number]>();

  constructor(svg: Svg, hands: Hands, scale: () => number) {
    this.#layer = svg.group().addClass('handles');
    this.#hands = hands;
    this.#scale = scale;
  }

  middle(id: string | undefined): readonly [number, number] | undefined {
    return id === undefined ? undefined : this.#middles.get(id);
  }

  show({ corner, moving }: Shown, sheet: CornerSheet, y: (u: number) => number, unit: Unit): void {
    const wanted = handlesOf(corner);
    const kept = new Set(wanted.map(({ id }) => id));
    for (const [id, { group }] of this.#held)
      if (!kept.has(id)) {
        group.remove();
        this.#held.delete(id);
      }
    const lines = lineHandles(corner).map(({ value }) => value);
    for (const handle of wanted) {
      const held = { ...(this.#held.get(handle.id) ?? this.#make(handle.id)), handle };
      this.#held.set(handle.id, held);
      const { node } = held.group;
      setAttribute(node, 'aria-label', handle.label);
      setAttribute(node, 'aria-valuenow', String(Math.round(handle.value * 100) / 100));
      setAttribute(node, 'aria-valuemax', String(Math.round(handle.most)));
      setAttribute(node, 'aria-valuetext', handleText(handle, unit));
      setAttribute(node, 'aria-orientation', handle.axis === 'u' ? 'vertical' : 'horizontal');
      const state =
        moving?.handle !== handle.id ? '' : moving.stop.length > 0 ? ' moving stopped' : ' moving';
      setAttribute(node, 'class', `handle along-${handle.axis}${state}`);
      if (handle.id.startsWith('line ')) this.#placeLine(held, lines, sheet, y);
      else if (handle.axis === 'u') this.#placeGroove(held, sheet, y);
      else this.#placeUpright(held, sheet, y, unit);
    }
  }

  #make(id: string): Omit<Held, 'handle'> {
    const group = this.#layer.group();
    group.attr({ role: 'slider', tabindex: 0, 'aria-valuemin': 0 });
    const made = {
      group,
      hit: group.path('').addClass('hit') as SvgPath,
      trace: group.path('').addClass('trace') as SvgPath,
      grip: group.path('').addClass('grip') as SvgPath,
      text: group.plain('').addClass('grip-text'),
    };
    this.#listen(id, group);
    return made;
  }

  #listen(id: string, group: G): void {
    const { node } = group;
    const hands = this.#hands;
    let start: { x: number; y: number; scale: number } | undefined;
    let pending: number | undefined;
    let by = 0;
    const handleNow = (): Handle | undefined => this.#held.get(id)?.handle;
    node.addEventListener('pointerdown', (event) => {
      const handle = handleNow();
      if (handle === undefined || event.button !== 0) return;
      event.preventDefault();
      node.setPointerCapture(event.pointerId);
      node.focus({ preventScroll: true });
      start = { x: event.clientX, y: event.clientY, scale: this.#scale() };
      by = 0;
      hands.grab(handle);
    });
    node.addEventListener('pointermove', (event) => {
      const handle = handleNow();
      if (start === undefined || handle === undefined) return;
      by = (handle.axis === 'u' ? start.y - event.clientY : event.clientX - start.x) / start.scale;
      // Many moves may come for one picture.
      pending ??= requestAnimationFrame(() => {
        pending = undefined;
        if (start !== undefined) hands.drag(by);
      });
    });
    const end = (kept: boolean) => () => {
      if (start === undefined) return;
      if (pending !== undefined) {
        cancelAnimationFrame(pending);
        pending = undefined;
        if (kept) hands.drag(by);
      }
      start = undefined;
      hands.drop(kept);
    };
    node.addEventListener('pointerup', end(true));
    node.addEventListener('pointercancel', end(false));
    node.addEventListener('keydown', (event) => {
      const handle = handleNow();
      if (handle === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key === 'Escape' && start !== undefined) return end(false)();
      const steps = KEYS[event.key];
      if (steps === undefined || start !== undefined) return;
      event.preventDefault();
      // An arrow to the side moves an upright that way, whatever its value does.
      const sense = event.key === 'ArrowLeft' || event.key === 'ArrowRight' ? handle.sense : 1;
      hands.nudge(handle, sense * steps * (event.shiftKey ? MANY_STEPS : 1));
    });
  }

  #placeLine(
    { handle, hit, trace, grip }: Held,
    lines: readonly number[],
    sheet: CornerSheet,
    y: (u: number) => number,
  ): void {
    const line = Number(handle.id.slice('line '.length));
    const way = sheet.lines[line] ?? [];
    const here = y(handle.value);
    const above = y(lines[line + 1] ?? Number.POSITIVE_INFINITY);
    const below = y(lines[line - 1] ?? Number.NEGATIVE_INFINITY);
    // Neighbours share what lies between them.
    const top = here - Math.min(FINGER / 2, (here - above) / 2);
    const bottom = here + Math.min(FINGER / 2, (below - here) / 2);
    const x0 = sheet.tailBaseline;
    const x1 = sheet.pinBaseline;
    drawPath(hit, `M${px(x0)} ${px(top)}H${px(x1)}V${px(bottom)}H${px(x0)}Z`);
    drawPath(trace, `M${way.map(([x, u]) => `${px(x)} ${px(y(u))}`).join('L')}`);
    const x = sheet.tailEnd.x1;
    drawPath(grip, `M${px(x + 3)} ${px(here)}l9 -5v10z`);
    this.#middles.set(handle.id, [sheet.pinEnd.x0, here]);
  }

  #placeGroove({ handle, hit, trace, grip }: Held, sheet: CornerSheet, y: (u: number) => number): void {
    const { groove, tailFace, pinFace } = sheet;
    if (groove === undefined) return;
    const { x0 } = tailFace;
    const x1 = sheet.tailBaseline;
    const middle = (y(groove.from) + y(groove.to)) / 2;
    const half = Math.max(FINGER, Math.abs(y(groove.from) - y(groove.to))) / 2;
    drawPath(hit, `M${px(x0)} ${px(middle - half)}H${px(x1)}V${px(middle + half)}H${px(x0)}Z`);
    drawPath(
      trace,
      [groove.from, groove.to]
        .map(
          (u) => `M${px(x0)} ${px(y(u))}H${px(tailFace.x1)}M${px(pinFace.x0)} ${px(y(u))}H${px(pinFace.x1)}`,
        )
        .join(''),
    );
    drawPath(grip, `M${px(x0 + 14)} ${px(middle)}m-5 -3l5 -7l5 7zm0 6l5 7l5 -7z`);
    this.#middles.set(handle.id, [(x0 + x1) / 2, middle]);
  }

  #placeUpright(
    { handle, hit, trace, grip, text }: Held,
    sheet: CornerSheet,
    y: (u: number) => number,
    unit: Unit,
  ): void {
    const x =
      handle.id === 'lap'
        ? sheet.lapLine
        : handle.id === 'pin baseline'
          ? sheet.pinBaseline
          : sheet.tailBaseline;
    const { top } = sheet;
    drawPath(hit, `M${px(x - FINGER / 2)} ${px(top - 50)}h${FINGER}v48h-${FINGER}Z`);
    drawPath(trace, `M${px(x)} ${px(top - 12)}V${px(y(0))}`);
    drawPath(grip, `M${px(x)} ${px(top - 2)}l-5 -9h10z`);
    setText(text.node, tabText(handle, sheet, unit));
    setAttribute(text.node, 'transform', `translate(${px(x)} ${px(top - 17)})`);
    this.#middles.set(handle.id, [x, top]);
  }
}

/** What is written at an upright: how long the tails are, how thick the lap or the side. */
const tabText = (handle: Handle, sheet: CornerSheet, unit: Unit): string =>
  handle.id === 'tail baseline'
    ? formatNumber((sheet.tailFace.x1 - sheet.tailBaseline) / sheet.scale, unit)
    : formatNumber(handle.value, unit);

const KEYS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: MANY_STEPS,
  PageDown: -MANY_STEPS,
};

/** Says beside what is moved why it goes no further. */
const placeCallout = (
  callout: HTMLElement,
  stop: readonly Complaint[],
  at: readonly [number, number] | undefined,
  sheet: CornerSheet,
  unit: Unit,
): void => {
  const [first] = stop;
  callout.hidden = first === undefined || at === undefined;
  if (first === undefined || at === undefined) return;
  setText(callout, speak(first.says, unit));
  const [x, y] = at;
  const room = Math.min(280, sheet.width - 16);
  callout.style.width = `${room}px`;
  callout.style.left = `${Math.max(8, Math.min(x + 12, sheet.width - room - 8))}px`;
  callout.style.top = `${y + 14}px`;
};
