import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { halfpin } from './program.ts';

const HERE = mkdtempSync(join(tmpdir(), 'halfpin-rail-'));
afterAll(() => rmSync(HERE, { recursive: true, force: true }));

const planOf = (rail: string): string => {
  const path = join(HERE, 'plan.yaml');
  writeFileSync(
    path,
    `name: Chest
joints:
  - {name: Top rail, kind: lapped, width: 60, tailBoard: 20, pinBoard: 19, lap: 6, halfPin: 10, rail: ${rail}}
`,
  );
  return path;
};
const PLAN = '{between: 574, sideWidth: 430, setBack: 2}';

describe('a rail over the drawers', () => {
  it('has its numbers in JSON: tails of 19 - 6, and as long as both of them and 574', () => {
    const { out } = halfpin(['lay', planOf(PLAN), '--json']);
    const [joint] = JSON.parse(out).joints;
    expect(joint.rail).toEqual({ between: 574, sideWidth: 430, setBack: 2, length: 600 });
    // 40 - 2 x 13 / 8 at the base.
    expect(joint.tails).toEqual([{ tip: [10, 50], base: [11.625, 48.375] }]);
    expect(joint.gauges).toMatchObject({ tailBoard: 13, pinBoardFace: 20, pinBoardEnd: 13 });
  });

  it('has its order of work, and nothing about a carcase’s other corners', () => {
    const { out } = halfpin(['lay', planOf(PLAN)]);
    expect(out).toContain('1. Cut the rail 600 mm long: 574 mm between its shoulders');
    expect(out).not.toContain('In a carcase');
  });

  it('is a part, though the plan has no drawers, with wood for a trial joint at each end', () => {
    const { frame, parts } = JSON.parse(halfpin(['parts', planOf(PLAN), '--json']).out);
    expect(parts).toEqual([]);
    // 600 + 2 x (13 + 3).
    expect(frame).toMatchObject([
      { part: 'rail', count: 1, length: 600, shoulders: 574, width: 60, thickness: 20, roughLength: 632 },
    ]);
    expect(halfpin(['parts', planOf(PLAN)]).out).toMatch(/^rail +1 +600 +574 +60 +20 +632/mu);
    expect(halfpin(['parts', planOf(PLAN), '--csv']).out).toContain(',rail,1,600,60,20,632,');
    expect(halfpin(['parts', planOf(PLAN), '--cutting-list']).out).toMatch(/1 +632 +66 +1 rail/u);
  });

  it('has templates for both ends of the rail, and for both sides’ top ends', () => {
    const out = join(HERE, 'out');
    expect(halfpin(['draw', planOf(PLAN), '--as', 'svg', '--out', out]).status).toBe(0);
    expect(readdirSync(out).sort()).toEqual([
      'top-rail-left-side-a.svg',
      'top-rail-rail-a.svg',
      'top-rail-rail-b.svg',
      'top-rail-right-side-b.svg',
    ]);
  });

  it('is refused in the plan’s own words', () => {
    const { status, err } = halfpin(['lay', planOf('{between: 574, sideWidth: 50}')]);
    expect(status).toBe(2);
    expect(err).toContain('joints[0].width: a rail 60 mm wide is wider than the sides');
    expect(err).toContain('try 50mm');
  });
});
