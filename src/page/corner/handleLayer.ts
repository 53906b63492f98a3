import { addSvg, drawPath, px, setAttribute, setText } from '../browser/dom.ts';
import { type Handle, handlesOf } from '../model/handles.ts';
import { changedWords, valueWords } from '../model/movedWords.ts';
import type { ViewState } from '../model/viewState.ts';
import type { CornerSheet } from './cornerSheet.ts';
import { type DragActions, dragHandle } from './dragHandle.ts';
import { type HandleShape, handleShape } from './handleShape.ts';

interface Drawn {
  readonly group: SVGGElement;
  readonly hit: SVGPathElement;
  readonly touch: SVGPathElement;
  readonly trace: SVGPathElement;
  readonly grip: SVGPathElement;
  readonly text: SVGTextElement;
}

/** The handle that is moved, and the middle of its mark in px. */
interface Moving {
  readonly handle: Handle;
  readonly middle: HandleShape['middle'];
}

/**
 * The handles of a corner: each a mark on its line, and a slider for screen readers.
 * @param hits under all marks, where a mouse takes hold of the lines themselves
 * @returns renders the handles, and returns the one that is moved
 */
export const handleLayer = (hits: SVGGElement, layer: SVGGElement, hands: DragActions) => {
  const drawn = new Map<string, Drawn>();
  let handles: ReadonlyMap<string, Handle> = new Map();
  let scale = 1;
  // A spacer lies over the edges of its tail, a small pin inside one.
  const [below, above] = [addSvg(hits, 'g'), addSvg(hits, 'g')];

  const make = (id: string): Drawn => {
    const group = addSvg(layer, 'g');
    group.setAttribute('role', 'slider');
    group.setAttribute('tabindex', '0');
    group.setAttribute('aria-valuemin', '0');
    const path = (name: string): SVGPathElement => addSvg(group, 'path', name);
    const hit = addSvg(handles.get(id)?.on.kind === 'spacer' ? above : below, 'path', 'hit');
    dragHandle(group, hit, hands, () => {
      const handle = handles.get(id);
      return handle && { handle, scale };
    });
    return {
      group,
      hit,
      touch: path('touch'),
      trace: path('trace'),
      grip: path('grip'),
      text: addSvg(group, 'text', 'grip-text'),
    };
  };

  return (shown: ViewState, sheet: CornerSheet): Moving | undefined => {
    const { corner, moving, now, isPreview } = shown;
    const unit = now.project.units;
    ({ scale } = sheet);
    handles = new Map(handlesOf(corner).map((handle) => [handle.id, handle]));
    for (const [id, { group, hit }] of drawn)
      if (!handles.has(id)) {
        group.remove();
        hit.remove();
        drawn.delete(id);
      }
    let found: Moving | undefined;
    for (const [id, handle] of handles) {
      const parts = drawn.get(id) ?? make(id);
      drawn.set(id, parts);
      const shape = handleShape(handle, sheet, unit);
      drawPath(parts.grip, shape.grip);
      if (shape.text !== undefined) {
        setText(parts.text, shape.text);
        setAttribute(parts.text, 'x', px(shape.middle[0]));
        setAttribute(parts.text, 'y', px(sheet.top - 17));
      }
      const isMoving = moving?.handle === id;
      // What is not seen of the others follows with the plan.
      if (isMoving || !isPreview) {
        const state = isMoving ? (moving.stop.length > 0 ? ' moving stopped' : ' moving') : '';
        setAttribute(parts.group, 'class', `handle along-${handle.axis}${state}`);
        drawPath(parts.trace, shape.trace);
      }
      if (!isPreview) describe(parts, handle, shape, shown);
      if (isMoving) found = { handle, middle: shape.middle };
    }
    return found;
  };
};

/** Where a handle can be taken hold of, and what it is for screen readers. */
const describe = (
  { hit, touch, group: node }: Drawn,
  handle: Handle,
  shape: HandleShape,
  shown: ViewState,
): void => {
  const targets = shape.targets();
  drawPath(hit, targets.hit);
  setAttribute(hit, 'class', `hit along-${handle.axis}`);
  drawPath(touch, targets.touch);
  setAttribute(node, 'aria-label', handle.label);
  setAttribute(node, 'aria-description', `changes ${changedWords(handle, shown)}`);
  setAttribute(node, 'aria-valuenow', String(Math.round(handle.value * 100) / 100));
  setAttribute(node, 'aria-valuemax', String(Math.round(handle.most)));
  setAttribute(node, 'aria-valuetext', valueWords(handle, shown.now.project.units));
  setAttribute(node, 'aria-orientation', handle.axis === 'u' ? 'vertical' : 'horizontal');
};
