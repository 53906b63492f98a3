import { describe, expect, it } from 'vitest';
import { priceTable } from '../../../../src/page/model/fingers/priceTable.ts';
import { openChest } from '../../../openChest.ts';
import { snapshotOf } from '../../chest.ts';

const TEXT = openChest('fingers');
const tableOf = (text: string) => priceTable(snapshotOf(text).project.set);

describe('the table of what few spacers cost', () => {
  it('ends with the set as it is without a limit, whatever is asked for', () => {
    const asked = tableOf(TEXT);
    const free = snapshotOf(TEXT.replace('spacers: 2, ', '')).project.set;
    expect(asked.map(({ limit }) => limit)).toEqual([1, 2, 3, undefined]);
    const last = asked.at(-1);
    expect(last?.look?.spread).toBe(free.family?.spread);
    expect(last?.look?.halfPins.map((half) => half.toFixed(6))).toEqual(['6.000000', '6.000000']);
    expect(last?.look?.changed).toEqual([]);
    // Tails as wide as the wished half pins leave them: four widths in six drawers, as two have the same height twice.
    const tails = new Set(
      free.drawers.map(({ front }) => (front.tails[0]?.base[1] ?? 0) - (front.tails[0]?.base[0] ?? 0)),
    );
    expect(last?.spacers).toBe(new Set([...tails].map((tail) => tail.toFixed(3))).size);
    expect(tableOf(TEXT.replace('spacers: 2, ', ''))).toEqual(asked);
    // A spacer more never makes the set less alike, nor changes more drawers of this one.
    const looks = asked.slice(0, 3).flatMap(({ look }) => look ?? []);
    expect(looks.map(({ changed }) => changed.length)).toEqual([6, 4, 3]);
    expect(looks[0]?.spread).toBeGreaterThan((looks[1]?.spread ?? 0) + 0.1);
  });

  it('goes on to the first number that can be met', () => {
    // Five boards, each with one tail that its half pins can hardly change.
    const heights = [55, 90, 120, 150, 180];
    const apart = `name: Apart
stock: {front: {thickness: 20}, side: {thickness: 11}, back: {thickness: 11}, bottom: {thickness: 5}}
cutter: {diameter: 12.7, angle: 8, length: 20, straight: 8}
fingers: {together: 14, bush: 16}
family: {halfPins: [5.9, 6.1]}
joint: {pin: 8.5, halfPin: 6, lap: 5, tails: 1}
back: {joint: {pin: 9.62, tails: 1}}
groove: {offset: 11, width: 5, depth: 5}
drawers:
${heights.map((height, i) => `  - {name: Drawer ${i + 1}, opening: {width: 280, height: ${height}, depth: 420}}`).join('\n')}
`;
    const met = tableOf(apart).map(({ limit, look }) => [limit, look !== undefined]);
    expect(met).toEqual([
      [1, false],
      [2, false],
      [3, false],
      [4, false],
      [5, true],
      [undefined, true],
    ]);
  });

  it('is the set without a limit alone where too many drawers would be sought', () => {
    const many = TEXT.replace('spacers: 2, ', '').replace(
      /( {2}- \{name: Cloth[^\n]*\n)/u,
      (line) => line + Array.from({ length: 11 }, (_, i) => line.replace('Cloth', `Cloth ${i}`)).join(''),
    );
    expect(tableOf(many).map(({ limit }) => limit)).toEqual([undefined]);
  });

  it('has nothing without fingers', () => {
    expect(tableOf(openChest('guided'))).toEqual([]);
  });
});
