import { describe, expect, it } from 'vitest';
import { adviseCutter, BEFORE_ROUTING, CAUTIONS } from '../../../src/router/limits/cautions.ts';
import { diameterAt } from '../../../src/router/limits/cutter.ts';
import { speak } from '../../../src/units/phrase.ts';
import { CUTTER, cutOf, LAPPED } from '../example.ts';

const { joint } = cutOf(LAPPED);
const said = (cutter: typeof CUTTER): string[] =>
  adviseCutter(joint, cutter).map(({ at, says }) => `${at.join('.')}: ${speak(says, 'mm')}`);

describe('adviseCutter', () => {
  it('is content with a cutter that cuts more than the joint is deep', () => {
    expect(said({ ...CUTTER, length: 16, neck: 8 })).toEqual([]);
  });

  it('warns of a cutter with little of its length to spare', () => {
    expect(said({ ...CUTTER, length: 15.5 })).toEqual([
      'cutter.length: set 15 mm deep, the cutter has 0.5 mm of its cutting length to spare: a deeper setting after a trial joint may be more than it cuts',
    ]);
  });

  it('warns of a neck that is wider than the cut at the surface', () => {
    expect(said({ ...CUTTER, neck: 8.49 })).toEqual([
      "cutter.neck: a neck of 8.49 mm is wider than the cut at the surface (8.48 mm): it rubs as soon as it comes down to the wood, 20 mm above the cutter's end",
    ]);
  });
});

describe('a neck just as wide as the cut', () => {
  it('does not rub', () => {
    expect(said({ ...CUTTER, neck: diameterAt(CUTTER, joint.depth) })).toEqual([]);
  });
});

describe('the cautions', () => {
  it('tell to score the grain before the full cut, and to try in scrap', () => {
    const texts = CAUTIONS.map((phrase) => speak(phrase, 'mm'));
    for (const text of texts) expect(text).toMatch(/^[A-Z].*[.]$/u);
    expect(texts.filter((text) => text.startsWith('Score the grain first'))).toHaveLength(1);
    expect(texts.at(-1)).toMatch(/^Cut one trial joint in scrap/u);
  });

  it('begin with what is minded before the router runs: plug, guards, eyes, ears and dust, clamps, the manual', () => {
    expect(CAUTIONS.slice(0, BEFORE_ROUTING.length)).toEqual(BEFORE_ROUTING);
    const before = BEFORE_ROUTING.map((phrase) => speak(phrase, 'mm')).join(' ');
    for (const word of [
      /^Unplug/u,
      /guards on/u,
      /eye and ear protection and a dust mask/u,
      /Clamp work and guide/u,
      /manual/u,
    ])
      expect(before).toMatch(word);
  });
});
