import { describe, expect, it } from 'vitest';
import { halfpin } from './program.ts';

const SIZES = ['--width', '152', '--tail-board', '14', '--pin-board', '20', '--slope', '1:5', '--pin', '8'];
const lay = (...args: string[]) => halfpin(['lay', ...SIZES, ...args]);
const refused = (...args: string[]): string[] => {
  const { status, err } = lay(...args);
  expect(status).toBe(2);
  return err.trimEnd().split('\n');
};

describe('lay --spacing', () => {
  it("tells a hound's tooth in JSON and in words: one small pin for each tail, and how it is made", () => {
    const tooth = ['--spacing', 'hounds-tooth', '--tails', '3'];
    const [joint] = JSON.parse(lay(...tooth, '--json').out).joints;
    // 152 = 4 x 8 + 3 x 40; half a pin is 4, and 20 / 5 wider at half depth.
    expect(joint.smallPins).toEqual([
      { narrow: [26, 30], wide: [24, 32], depth: 10 },
      { narrow: [74, 78], wide: [72, 80], depth: 10 },
      { narrow: [122, 126], wide: [120, 128], depth: 10 },
    ]);
    expect(joint.tails[0]).toEqual({ tip: [8, 48], base: [12, 44] });
    const { out } = lay(...tooth);
    expect(out).toMatch(/small pin 2 +74 +78 +72 +80 +10/u);
    expect(out).toContain('gauge  tail board, small pins, both faces, from its end: 10 mm');
    expect(out).toContain('Order of work:');
    const narrow = JSON.parse(lay(...tooth, '--small-pin', '5', '--json').out).joints[0].smallPins[0].narrow;
    expect(narrow).toEqual([25.5, 30.5]);
  });

  it('groups the tails', () => {
    const { out } = lay('--spacing', 'grouped', '--groups', '1,2', '--group-pin', '20', '--json');
    const [joint] = JSON.parse(out).joints;
    // 152 = 2 x 8 + 8 + 20 + 3 x 36.
    expect(joint.tails.map(({ tip }: { tip: unknown }) => tip)).toEqual([
      [8, 44],
      [64, 100],
      [108, 144],
    ]);
    expect(joint).not.toHaveProperty('smallPins');
    expect([joint.dividers, joint.alternatives]).toEqual([null, []]);
    const other = JSON.parse(
      lay('--kind', 'lapped', '--spacing', 'grouped', '--groups', '1, 2', '--json').out,
    );
    expect(other.joints[0].tails).toHaveLength(3);
  });

  it('closes tails in at both edges', () => {
    const closer = ['--spacing', 'closer-edges', '--closer', '0.5', '--closer-tails', '1', '--tails', '4'];
    const [joint] = JSON.parse(lay(...closer, '--json').out).joints;
    // 152 = 5 x 8 + 112; weights of 3, so 112 / 3 in the middle, half of that at the edges.
    expect(
      joint.tails.map(({ tip: [from, to] }: { tip: [number, number] }) => (to - from).toFixed(3)),
    ).toEqual(['18.667', '37.333', '37.333', '18.667']);
    expect(refused('--spacing', 'closer-edges', '--tails', '20,30', '--graded', '0.9')).toHaveLength(4);
    expect(refused('--closer', '0.7', '--closer-tails', '2')).toEqual([
      '--closer: this is for tails in another spacing; try --spacing closer-edges',
      '--closer-tails: this is for tails in another spacing; try --spacing closer-edges',
    ]);
    expect(refused('--spacing', 'closer-edges', '--closer', 'half', '--closer-tails', '1.5')).toEqual([
      '--closer: "half" is not a number; try 0.9',
      '--closer-tails: "1.5" is not a number of tails; it must be a whole number from 1; try 2',
    ]);
  });

  it('is as it is without where it is even', () => {
    expect(lay('--spacing', 'even')).toEqual(lay());
  });

  it('is refused beside a pitch, by the names of all that the pitch replaces', () => {
    expect(refused('--pitch', '30', '--spacing', 'even')).toEqual([
      '--pitch: the pitch sets the tails and both half pins by itself, over the whole width; remove --spacing',
    ]);
    expect(
      refused('--pitch', '30', '--spacing', 'grouped', '--groups', '1,2', '--group-pin', '9')[0],
    ).toContain('remove --spacing and --groups and --group-pin');
  });

  it('says what is wrong, and what to try', () => {
    expect(refused('--spacing', 'both-ways')).toEqual([
      '--spacing: "both-ways" is no spacing; it must be even, hounds-tooth, grouped or closer-edges; to grade tails there is graded, and for both ways its from: middle',
    ]);
    expect(refused('--spacing', 'grouped')).toHaveLength(1);
    expect(refused('--spacing', 'grouped', '--groups', '2,x')).toEqual([
      '--groups: "2,x" lists no groups; each must be a whole number of tails; try 2,3,2',
    ]);
    expect(
      refused('--spacing', 'grouped', '--groups', '2,1', '--tails', '3', '--graded', '0.9'),
    ).toHaveLength(2);
    expect(refused('--groups', '2,1', '--group-pin', '9', '--small-pin', '4')).toEqual([
      '--groups: this is for tails in another spacing; try --spacing grouped',
      '--group-pin: this is for tails in another spacing; try --spacing grouped',
      '--small-pin: this is for tails in another spacing; try --spacing hounds-tooth',
    ]);
    expect(refused('--spacing', 'hounds-tooth', '--kind', 'lapped')).toEqual([
      '--spacing: the tails of a lapped joint end behind a lap, where no small pin would show; try even, or choose a through joint',
    ]);
    expect(refused('--spacing', 'hounds-tooth', '--small-pin', '5', '--chisel', '6')).toEqual([
      '--small-pin: the small pin, whose socket the narrowest chisel must enter, is 5 mm; it must be 6 mm to 152 mm',
    ]);
    const cutter = ['--cutter-diameter', '16', '--cutter-angle', '11.3', '--cutter-length', '25'];
    expect(refused('--spacing', 'hounds-tooth', ...cutter)[0]).toContain(
      "--spacing: a hound's tooth cannot be cut along a guide",
    );
    expect(lay('--spacing', 'grouped', '--groups', '1,2', ...cutter).status).toBe(0);
  });
});
