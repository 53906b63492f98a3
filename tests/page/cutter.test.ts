import { describe, expect, it } from 'vitest';
import { adjust, dragQuantity } from '../../src/page/model/adjust.ts';
import { dragLine, oneMore } from '../../src/page/model/edits.ts';
import { quantity } from '../../src/page/model/quantities.ts';
import { FIRST_SCOPE } from '../../src/page/model/scope.ts';
import { type Snapshot, snapshot } from '../../src/page/model/snapshot.ts';
import { linesOf, widthsOf } from '../../src/page/model/widths.ts';
import { readProject } from '../../src/project/readProject.ts';
import type { Result } from '../../src/units/complaint.ts';
import { speak } from '../../src/units/phrase.ts';
import { openChest } from '../openChest.ts';
import { BACK, cornerIn, FRONT, LONE, snapshotOf } from './chest.ts';

const GUIDED = openChest('guided');
const CUTTER = 'cutter: {diameter: 12.7, angle: 8, length: 20, straight: 8, bush: 16, pinBush: 11}';
const guided = snapshotOf(GUIDED);
const words = (complaints: Extract<Result<never>, { ok: false }>['complaints']): string =>
  complaints.map(({ says }) => speak(says, 'mm')).join('; ');
const measure = (now: Snapshot, key: string) => {
  const corner = cornerIn(now, FRONT);
  const found = quantity(corner, key);
  if (found === undefined) throw new Error(`no ${key}`);
  return { corner, found };
};

describe('a plan with a cutter', () => {
  it('is set out within its limits and says how every corner is cut', () => {
    // The cutter's slope: 1 / tan 8 degrees.
    expect(cornerIn(guided, FRONT).joint.slope.run).toBeCloseTo(1 / Math.tan((8 * Math.PI) / 180), 9);
    for (const { front, back } of guided.project.set.drawers) {
      expect(guided.project.cuts.get(front)?.guides).toHaveLength(2);
      // Beside a single tail there are half spaces only, which at the back are cut by hand.
      expect(guided.project.cuts.get(back)?.guides).toHaveLength(back.tails.length > 1 ? 2 : 1);
    }
  });

  it('stops a pin where the cutter removes more, and says so', () => {
    const corner = cornerIn(guided, FRONT);
    const lines = linesOf(widthsOf(corner.joint));
    const { snapshot: next, stop } = dragLine(guided, corner, 2, (lines[2] ?? 0) - 4);
    // 12.7 mm less 2 x 15 tan 8 degrees, the narrow end of its cut at a depth of 15 mm.
    const least = 12.7 - 30 * Math.tan((8 * Math.PI) / 180);
    const after = widthsOf(cornerIn(next, FRONT).joint);
    expect(after[2]).toBeGreaterThanOrEqual(least - 0.02);
    expect(after[2]).toBeLessThan(least + 0.1);
    expect(words(stop)).toMatch(/pin 1 is 8\.4\d* mm wide; at this depth the cutter removes 8\.48 mm/u);
  });

  it('stops the lap where the cutter does not reach', () => {
    // 20 mm of front; at a cutting length of 20 less 4 the lap is 4 at the least.
    const short = snapshotOf(GUIDED.replace('length: 20', 'length: 16'));
    const { corner, found } = measure(short, 'lap');
    const { snapshot: next, stop } = dragQuantity(short, corner, found, 3, FIRST_SCOPE);
    expect(cornerIn(next, FRONT).joint.pinBoard.lap).toBeCloseTo(4, 6);
    expect(words(stop)).toMatch(/the cutter cuts 16 mm deep; the joint is 16\.1 mm deep/u);
  });

  it('stops a tail where the cutter cannot enter its socket', () => {
    const corner = cornerIn(guided, FRONT);
    const lines = linesOf(widthsOf(corner.joint));
    const { snapshot: next, stop } = dragLine(guided, corner, 3, (lines[2] ?? 0) + 8);
    const width = widthsOf(cornerIn(next, FRONT).joint)[3] ?? 0;
    expect(width).toBeGreaterThanOrEqual(12.68);
    expect(words(stop)).toMatch(/cannot enter its socket/u);
  });

  it('refuses another slope than the cutter has', () => {
    const { corner, found } = measure(guided, 'slope');
    const refused = adjust(guided, corner, found, 6, FIRST_SCOPE);
    expect(refused.ok ? '' : words(refused.complaints)).toMatch(/a slope of 1:6 is not the cutter's/u);
  });

  it('keeps its cutter as it is written, whatever is changed', () => {
    const more = oneMore(guided, cornerIn(guided, BACK));
    const dragged = dragLine(guided, cornerIn(guided, FRONT), 0, 7).snapshot;
    const { corner, found } = measure(guided, 'grooveOffset');
    const grooved = adjust(guided, corner, found, 12, FIRST_SCOPE);
    const texts = [more, grooved].flatMap((each) => (each.ok ? [each.value.text] : []));
    expect(texts).toHaveLength(2);
    for (const text of [...texts, dragged.text]) {
      expect(text).not.toBe(GUIDED);
      expect(text).toContain(`\n${CUTTER}\n`);
    }
  });

  it('is refused where its bush will not do for a corner, at the line of the bush', () => {
    const text = GUIDED.replace('bush: 16', 'bush: 60');
    const made = readProject(text);
    if (made.ok) throw new Error('it was let in');
    expect(made.complaints[0]?.line).toBe(
      text.split('\n').findIndex((line) => line.startsWith('cutter:')) + 1,
    );
    expect(snapshot(text).ok).toBe(false);
  });

  it('holds a corner of its own within the same limits', () => {
    const one = snapshotOf(`name: Box
cutter: {diameter: 12.7, angle: 8, length: 20}
joints:
  - {name: Corner, kind: through, width: 90, tailBoard: 12, pinBoard: 12, tails: 4}
`);
    const corner = cornerIn(one, LONE);
    const lines = linesOf(widthsOf(corner.joint));
    const { stop } = dragLine(one, corner, 2, (lines[1] ?? 0) + 2);
    expect(words(stop)).toMatch(/at this depth the cutter removes 9\.33 mm/u);
  });
});
