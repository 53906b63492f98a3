import { addSvg, px, setAttribute, setText } from '../browser/dom.ts';

/** Texts of a drawing, whose elements are used again: start, put each, end. */
export class Texts {
  readonly #group: SVGGElement;
  readonly #texts: SVGTextElement[] = [];
  #used = 0;

  constructor(group: SVGGElement) {
    this.#group = group;
  }

  start(): void {
    this.#used = 0;
  }

  /** @param look class names; @param turn degrees, clockwise */
  put(words: string, x: number, y: number, look: string, turn = 0): void {
    const text = this.#texts[this.#used] ?? addSvg(this.#group, 'text');
    this.#texts[this.#used++] = text;
    setText(text, words);
    setAttribute(text, 'x', px(x));
    setAttribute(text, 'y', px(y));
    if (turn !== 0) setAttribute(text, 'transform', `rotate(${turn} ${px(x)} ${px(y)})`);
    else if (text.hasAttribute('transform')) text.removeAttribute('transform');
    setAttribute(text, 'class', look);
  }

  end(): void {
    for (const text of this.#texts.splice(this.#used)) text.remove();
  }
}
