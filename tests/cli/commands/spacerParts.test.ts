import { describe, expect, it } from 'vitest';
import { CHEST, halfpin } from '../program.ts';

const FINGERS = 'examples/haberdashery-chest-fingers.yaml';
const record = (command: string, plan: string) => JSON.parse(halfpin([command, plan, '--json']).out);

describe('the parts of a plan with fingers', () => {
  it('have the spacers beside them, with one spare of each, and the gap block', () => {
    const { parts, spacers, gapBlock } = record('parts', FINGERS);
    expect(new Set(parts.map(({ part }: { part: string }) => part))).toEqual(
      new Set(['front', 'side', 'back', 'bottom']),
    );
    const needed = record('set-out', FINGERS).spacers;
    expect(needed.length).toBeGreaterThan(2);
    expect(spacers).toEqual(
      needed.map((each: { count: number }) => ({ ...each, count: each.count + 1, tolerance: 0.05 })),
    );
    expect(gapBlock).toBeCloseTo(16.01, 2);
  });

  it('are listed in words too, within 80 columns', () => {
    const { out } = halfpin(['parts', FINGERS]);
    expect(out).toMatch(
      /The spacers between fingers, one spare counted, mm; their thickness within 0\.05\s+mm over/u,
    );
    // Five tails fill 189 mm beside four pins of 8.5, the widest upper half pin of 10, and a lower one that hides the groove.
    expect(out).toMatch(/^ 5\.91 +6 +front +Cloth$/mu);
    expect(out).toContain('One block 16.01 mm wide checks the gap between any two pairs.');
    expect(out.split('\n').every((line) => line.length <= 80)).toBe(true);
  });

  it('are as ever without fingers', () => {
    const without = record('parts', CHEST);
    expect(['spacers', 'gapBlock'].filter((key) => key in without)).toEqual([]);
    expect(halfpin(['parts', CHEST]).out).not.toContain('spacer');
  });
});
