import type { G, Text } from '@svgdotjs/svg.js';
import { px, setAttribute, setText } from '../browser/dom.ts';

/** Texts of a drawing, whose elements are used again: start, put each, end. */
export class Texts {
  readonly #group: G;
  readonly #texts: Text[] = [];
  #used = 0;

  constructor(group: G) {
    this.#group = group;
  }

  start(): void {
    this.#used = 0;
  }

  /** @param look class names; @param turn degrees, clockwise */
  put(words: string, x: number, y: number, look: string, turn = 0): void {
    const text = this.#texts[this.#used] ?? this.#group.plain('');
    this.#texts[this.#used++] = text;
    setText(text.node, words);
    setAttribute(text.node, 'x', px(x));
    setAttribute(text.node, 'y', px(y));
    if (turn !== 0) setAttribute(text.node, 'transform', `rotate(${turn} ${px(x)} ${px(y)})`);
    else if (text.node.hasAttribute('transform')) text.node.removeAttribute('transform');
    setAttribute(text.node, 'class', look);
  }

  end(): void {
    for (const text of this.#texts.splice(this.#used)) text.remove();
  }
}
