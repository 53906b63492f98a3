import { nothing, render } from 'lit-html';
import { type Notation, unitOf } from '../../units/notation.ts';
import { addSvg, drawPath, px, setAttribute, sizeSvg } from '../browser/dom.ts';
import { lettersIn } from '../browser/letters.ts';
import type { EditedCorner } from '../model/editedCorner.ts';
import type { Handle } from '../model/handles.ts';
import { followedWords, movedWords } from '../model/movedWords.ts';
import type { Room, View, ViewState } from '../model/viewState.ts';
import { boardsLayer } from './boardsLayer.ts';
import { callout, type Pointed } from './callout.ts';
import { type CornerSheet, cornerSheet, type Frame } from './cornerSheet.ts';
import type { DragActions } from './dragHandle.ts';
import { fingersLayer } from './fingersLayer.ts';
import { handleLayer } from './handleLayer.ts';
import type { HandleShape } from './handleShape.ts';
import { sizesLayer } from './sizesLayer.ts';

type Moving = NonNullable<ViewState['moving']>;

/** A handle that is moved, and the middle of its line. */
type Held = NonNullable<ReturnType<ReturnType<typeof handleLayer>>>;

/** Both boards of the selected corner, with handles. */
export const cornerView = (host: HTMLElement, hands: DragActions): View => {
  const svg = addSvg(host, 'svg', 'corner');
  svg.setAttribute('role', 'group');
  const hatch = addSvg(addSvg(svg, 'defs'), 'pattern');
  hatch.id = 'hatch';
  for (const [name, value] of Object.entries({ width: '6', height: '6', patternUnits: 'userSpaceOnUse' }))
    hatch.setAttribute(name, value);
  drawPath(addSvg(hatch, 'path'), 'M-1 1l2 -2M0 6l6 -6M5 7l2 -2');
  const layer = (name: string): SVGGElement => addSvg(svg, 'g', name);
  const drawBoards = boardsLayer(layer('boards'));
  const fingers = layer('fingers');
  fingers.setAttribute('aria-hidden', 'true');
  const drawFingers = fingersLayer(fingers);
  const sizes = layer('sizes');
  sizes.setAttribute('aria-hidden', 'true');
  const drawSizes = sizesLayer(sizes);
  const hits = layer('hits');
  hits.setAttribute('aria-hidden', 'true');
  const drawHandles = handleLayer(hits, layer('handles'), hands);
  let size = { width: 0, height: 0, letters: 0 };
  /** As it was drawn before something was moved. */
  let still: CornerSheet | undefined;
  /** Where on the drawing the pointer is; undefined where keys are used. */
  let grabbed: { readonly x: number; readonly touch: boolean } | undefined;
  host.addEventListener('pointerdown', ({ clientX, pointerType }) => {
    grabbed = { x: clientX - host.getBoundingClientRect().left, touch: pointerType === 'touch' };
  });
  host.addEventListener('keydown', () => {
    grabbed = undefined;
  });

  // Where there is a mouse and a touchscreen, the mouse is not kept from a line by the target of another's grip.
  svg.addEventListener('pointerenter', ({ pointerType }) => {
    svg.toggleAttribute('data-mouse', pointerType === 'mouse');
  });
  svg.addEventListener('pointerleave', () => svg.removeAttribute('data-mouse'));

  const pointedAt = ({ axis }: Handle, [x, y]: HandleShape['middle']): Omit<Pointed, 'between'> => ({
    at: [axis === 'u' ? (grabbed?.x ?? x) : x, y],
    above: grabbed?.touch === true,
  });

  const calloutOf = ({ handle, middle }: Held, moving: Moving, shown: ViewState, sheet: CornerSheet) => {
    const { corner, now } = shown;
    const { measure } = handle;
    const followed =
      measure === undefined || moving.before === undefined
        ? ''
        : followedWords(moving.before, corner, now.project.units);
    const words = movedWords(handle, moving.from, shown);
    return callout(
      followed === '' ? words : `${words}; ${followed}`,
      moving.stop,
      { ...pointedAt(handle, middle), between: nearSizes(handle, corner, sheet) },
      sheet,
      now.project,
    );
  };

  return (shown) => {
    const { corner, now, moving, room } = shown;
    const frame = frameOf(room, now.project.units);
    const sheet = cornerSheet(corner, frame, moving && still);
    if (moving === undefined) still = sheet;
    if (sheet.width !== size.width || sheet.height !== size.height || sheet.letters !== size.letters) {
      size = sheet;
      sizeSvg(svg, sheet.width, sheet.height);
      svg.style.setProperty('--letters', String(sheet.letters));
      // Its size does not depend on what is in it, so that the browser lays out no more than that.
      host.style.height = `${px(sheet.height)}px`;
    }
    setAttribute(svg, 'aria-label', `${corner.name}: both boards of the corner`);
    drawBoards(sheet);
    drawFingers(shown, sheet);
    drawSizes(shown, sheet);
    const moved = drawHandles(shown, sheet);
    // It follows the drawing in the host.
    render(
      moving === undefined || moved === undefined ? nothing : calloutOf(moved, moving, shown, sheet),
      host,
    );
  };
};

/** From where to where, in px from above, the sizes are written that a handle changes. */
const nearSizes = (
  { on }: Handle,
  { joint }: EditedCorner,
  { y, boardWidth }: CornerSheet,
): Pointed['between'] => {
  switch (on.kind) {
    case 'line':
      return [y(Math.min(on.above, boardWidth)), y(Math.max(on.below, 0))];
    case 'groove':
      return [y(joint.tails[0]?.tip[1] ?? on.to), y(0)];
    case 'shoulder':
    case 'spacer':
      return [y(on.to), y(on.from)];
    case 'upright':
      return undefined;
  }
};

/** In px: the part of the window's height that is around the drawing; and the least and the most height of a drawing. */
const AROUND = 310;
const HEIGHT = { least: 360, most: 1000 };

/** Sizes are written at the left and in the gap; those in inches are long: `1 11/16`. */
const WRITTEN = {
  mm: { narrow: { left: 44, gap: 56 }, wide: { left: 76, gap: 112 } },
  in: { narrow: { left: 62, gap: 82 }, wide: { left: 100, gap: 112 } },
};
/** A drawing less wide than this, in px, is narrow. */
const NARROW = 560;

const frameOf = ({ corner: width, letters: wanted }: Room, unit: Notation): Frame => {
  const letters = lettersIn(width, wanted);
  const isNarrow = width < NARROW * letters;
  const { left, gap } = WRITTEN[unitOf(unit)][isNarrow ? 'narrow' : 'wide'];
  return {
    width,
    height: Math.max(HEIGHT.least, Math.min(innerHeight - AROUND * wanted, HEIGHT.most)),
    left: left * letters,
    gap: gap * letters,
    right: isNarrow ? 8 : 32,
    top: 40 + 18 * letters,
    bottom: 14 + 20 * letters,
    letters,
  };
};
