import { readFileSync } from 'node:fs';
import { type CornerRef, cornerOf, type EditedCorner } from '../../src/page/model/editedCorner.ts';
import { type Snapshot, snapshot } from '../../src/page/model/snapshot.ts';
import { openChest } from '../openChest.ts';

/** The example that the page begins with. */
export const EXAMPLE = readFileSync('examples/haberdashery-chest.yaml', 'utf8');

/** The same with an opening of its own for each drawer. */
export const CHEST = openChest();

/** Keys whose numbers are no lengths. */
const PLAIN = ['count', 'angle', 'spacers', 'tails', 'pairs'];

/** A plan in mm told in inches: few of its lengths are whole, so that their fractions are long. */
export const inInches = (text: string): string =>
  text
    .replace('units: mm', 'units: in')
    .replace(/\b(\w+): (\d[\d.]*)(?=[,}]|$)/gmu, (all, key: string, number: string) =>
      PLAIN.includes(key) ? all : `${key}: ${number}mm`,
    )
    .replace(/\[\d+(?:, \d+)+\]/gu, (list) => list.replace(/\d+/gu, '$&mm'));

export const snapshotOf = (text: string): Snapshot => {
  const made = snapshot(text);
  if (!made.ok) throw new Error(JSON.stringify(made.complaints));
  return made.value;
};

export const cornerIn = (now: Snapshot, ref: CornerRef): EditedCorner => {
  const corner = cornerOf(now.project, ref);
  if (corner === undefined) throw new Error('no such corner');
  return corner;
};

export const FRONT: CornerRef = { of: 'drawer', index: 0, end: 'front' };
export const BACK: CornerRef = { of: 'drawer', index: 0, end: 'back' };

/** A corner of its own, even: half pins 4, pins 4, tails 12, slope 1:8 so that each tail loses 1.25 of 10 a side. */
export const BOX = `name: Box
joints:
  - name: Corner # the only one
    kind: through
    width: 56
    tailBoard: 10
    pinBoard: 10
    pin: 4
    tails: 3
`;
export const LONE: CornerRef = { of: 'joint', index: 0 };
