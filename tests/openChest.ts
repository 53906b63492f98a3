import { readFileSync } from 'node:fs';

/** The openings that the chest's cabinet gives its drawers, worked out by hand: 2 x 280 and a divider of 14 are 574. */
const OPENINGS: Readonly<Record<string, readonly [width: number, height: number]>> = {
  Buttons: [280, 76],
  Thread: [280, 76],
  Ribbon: [280, 110],
  Patches: [574, 110],
  Notions: [574, 146],
  Cloth: [574, 190],
};

/** One of the chest's examples, its drawers with openings of their own in place of the cabinet. */
export const openChest = (kind: '' | 'seasons' | 'guided' | 'fingers' | 'boards' = ''): string =>
  readFileSync(`examples/haberdashery-chest${kind === '' ? '' : `-${kind}`}.yaml`, 'utf8')
    .replace(/^cabinet:.*\n(?: .*\n)+\n/mu, '')
    .replace('runThrough: rows ', 'runThrough: [[Buttons, Buttons], [Thread, Thread], [Ribbon, Ribbon]] ')
    .replace(/\{name: (\w+)(, count: 2)?/gu, (all, name: string, count = '') => {
      const [width, height] = OPENINGS[name] ?? [];
      return width === undefined
        ? all
        : `{name: ${name}${count}, opening: {width: ${width}, height: ${height}, depth: 420}}`.slice(0, -1);
    });
