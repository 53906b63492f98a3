import { describe, expect, it } from 'vitest';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { cutJoint, type JointCut } from '../../../src/router/guide/cutJoint.ts';
import { NO_OVERHANG, type Overhang } from '../../../src/router/passes/routerCut.ts';
import { routerSettings } from '../../../src/router/passes/routerSettings.ts';
import { CUTTER, cutOf, LAPPED, THROUGH } from '../example.ts';

const cut = (spec: JointSpec, bush?: number, overhang: Overhang = NO_OVERHANG): JointCut => {
  const tools = { cutter: CUTTER, straight: 8, ...(bush !== undefined && { bush, pinBush: 11 }) };
  const result = cutJoint(cutOf(spec).joint, tools, overhang);
  if (!result.ok) throw new Error(JSON.stringify(result.complaints));
  return result.value;
};

/** What the cutter of 12.7 at 8 degrees is wide, so far above its end. */
const wide = (height: number): number => 12.7 - 2 * height * Math.tan((8 * Math.PI) / 180);

describe('the settings of a router', () => {
  it('for a lapped corner are one depth for both boards, the stop, and the easing of the tails', () => {
    // The joint is 20 - 5 deep; its tail board, 14 thick, fills the socket.
    const round = wide(15) / 2;
    const settings = [...routerSettings(cut(LAPPED))];
    expect(settings.map(([name]) => name)).toEqual([
      'tailDepth',
      'pinDepth',
      'stop',
      'easeFromFace',
      'easeAtBase',
      'easeAtTip',
      'leastPin',
    ]);
    const expected = [15, 15, 14 - round, round, round, 6.35 - Math.sqrt(6.35 ** 2 - round ** 2), wide(15)];
    settings.forEach(([, value], i) => {
      expect(value).toBeCloseTo(expected[i] ?? Number.NaN, 9);
    });
  });

  it('for a through corner are a depth for each of two cutters', () => {
    const settings = routerSettings(cut(THROUGH));
    expect([...settings.keys()]).toEqual(['tailDepth', 'straight', 'pinDepth', 'leastPin']);
    expect([settings.get('tailDepth'), settings.get('straight'), settings.get('pinDepth')]).toEqual([
      16, 8, 14,
    ]);
  });

  it('name the bushes of the guides that there are', () => {
    const settings = routerSettings(cut(THROUGH, 16));
    expect([settings.get('tailBush'), settings.get('pinBush')]).toEqual([16, 11]);
  });

  it('leave out the dovetail cutter where all spaces of the tails are cut by hand', () => {
    const one = { ...THROUGH, spacing: { kind: 'even', tails: 1 } } as const;
    const settings = routerSettings(cut(one, 16, { lower: true, upper: true }));
    expect([...settings.keys()]).toEqual(['straight', 'pinDepth', 'pinBush']);
  });
});
