import { describe, expect, it } from 'vitest';
import { speak } from '../../src/units/phrase.ts';
import {
  everydayNames,
  findWood,
  isSolidWood,
  SOURCE_NOTES,
  WOODS,
  type Wood,
} from '../../src/wood/species.ts';

const nameOf = (name: string): string | false => {
  const result = findWood(name);
  return result.ok && result.value.name;
};

const closest = (name: string): string[] => {
  const result = findWood(name);
  const says = result.ok ? '' : result.complaints.map((complaint) => speak(complaint.says, 'mm')).join();
  const listed = says.split(/the closest name(?:s are|\sis) |one of several woods: /u)[1] ?? '';
  return listed.split('; ').map((wood) => wood.replace(/ \(\d.*/u, '').replaceAll('"', ''));
};

describe('findWood', () => {
  it('finds every wood by its own name', () => {
    for (const wood of WOODS) expect(findWood(wood.name)).toEqual({ ok: true, value: wood });
  });

  it('gives the figures of the table and where they come from', () => {
    expect(findWood('Cherry, black')).toEqual({
      ok: true,
      value: { name: 'Cherry, black', radial: 0.00126, tangential: 0.00248, source: 'handbook' },
    });
    expect(findWood('Teak')).toEqual({
      ok: true,
      value: { name: 'Teak', radial: 0.00101, tangential: 0.00186, source: 'memory' },
    });
  });

  it.each(['black cherry', 'BLACK CHERRY', ' cherry  black ', 'Cherry,black', 'cherry-black'])(
    'takes %j for Cherry, black',
    (name) => {
      expect(nameOf(name)).toBe('Cherry, black');
    },
  );

  it('does not split a name inside a word with an accent', () => {
    expect(nameOf('chérry')).toBe(false);
  });

  it.each([
    ['alder', 'Alder, red'],
    ['ash', 'Ash, white'],
    ['white ash', 'Ash, white'],
    ['American ash', 'Ash, white'],
    ['aspen', 'Aspen, quaking'],
    ['basswood', 'Basswood, American'],
    ['American linden', 'Basswood, American'],
    ['beech', 'Beech, American'],
    ['buckeye', 'Buckeye, yellow'],
    ['white walnut', 'Butternut'],
    ['catalpa', 'Catalpa, northern'],
    ['cherry', 'Cherry, black'],
    ['American cherry', 'Cherry, black'],
    ['American black cherry', 'Cherry, black'],
    ['chestnut', 'Chestnut, American'],
    ['white elm', 'Elm, American'],
    ['red elm', 'Elm, slippery'],
    ['pecan', 'Hickory, pecan'],
    ['honey locust', 'Honeylocust'],
    ['robinia', 'Locust, black'],
    ['false acacia', 'Locust, black'],
    ['madrone', 'Madrone, Pacific'],
    ['magnolia', 'Magnolia, southern'],
    ['hard maple', 'Maple, sugar'],
    ['rock maple', 'Maple, sugar'],
    ['red oak', 'Oak, commercial red'],
    ['American red oak', 'Oak, commercial red'],
    ['white oak', 'Oak, commercial white'],
    ['American white oak', 'Oak, commercial white'],
    ['persimmon', 'Persimmon, common'],
    ['sweet gum', 'Sweetgum'],
    ['red gum', 'Sweetgum'],
    ['tan oak', 'Tanoak'],
    ['black gum', 'Tupelo, black'],
    ['walnut', 'Walnut, black'],
    ['American walnut', 'Walnut, black'],
    ['American black walnut', 'Walnut, black'],
    ['tulip poplar', 'Yellow-poplar'],
    ['American tulipwood', 'Yellow-poplar'],
    ['Douglas fir', 'Douglas-fir, coast'],
    ['white pine', 'Pine, eastern white'],
  ])('knows %s, in common use, as %s', (everyday, name) => {
    expect(nameOf(everyday)).toBe(name);
  });

  it.each(['oak', 'maple', 'elm', 'birch', 'sycamore', 'poplar', 'constructor', '__proto__', ''])(
    'does not guess at %j',
    (name) => {
      expect(nameOf(name)).toBe(false);
    },
  );

  it('names the woods that a family name could be, the everyday ones first', () => {
    expect(closest('maple')).toEqual(['Maple, sugar', 'Maple, bigleaf', 'Maple, red', 'Maple, silver']);
    expect(closest('birch')).toEqual(['Birch, paper', 'Birch, river', 'Birch, yellow']);
    expect(closest('oak').slice(0, 2)).toEqual(['Oak, commercial red', 'Oak, commercial white']);
    expect(closest('oak').toSorted()).toEqual(
      WOODS.flatMap(({ name }) => (/^Oak,|^Tanoak$/u.test(name) ? [name] : [])).toSorted(),
    );
  });

  it('names the only wood of a family, if it is that', () => {
    expect(closest('pine')).toEqual(['Pine, eastern white']);
    expect(closest('poplar')).toEqual(['Yellow-poplar']);
    expect(findWood('poplar')).toMatchObject({
      complaints: [{ at: [], hint: ['', '"Yellow-poplar"', ''] }],
    });
  });

  it("names a maker's own woods of the family first", () => {
    const own: Wood = { name: 'Pine, Scots', radial: 0.0015, tangential: 0.0028, source: 'own' };
    const result = findWood('pine', [own]);
    expect(result.ok ? '' : speak(result.complaints[0]?.says ?? [], 'mm')).toMatch(
      /may be one of several woods: "Pine, Scots" \(0\.150, 0\.280\); "Pine, eastern white" \(0\.071, 0\.212\) /u,
    );
  });

  it.each([
    ['chery', 'Cherry, black'],
    ['blak chery', 'Cherry, black'],
    ['red okk', 'Oak, commercial red'],
    ['white ash, kiln dried', 'Ash, white'],
    ['mahogony', 'Mahogany'],
    ['sycamore', 'Sycamore, American'],
  ])('offers what %j was meant for first', (misspelt, name) => {
    expect(closest(misspelt)[0]).toBe(name);
  });

  it('names three different woods for any name, even one like none', () => {
    for (const name of ['', 'xyz', '木', '123', 'black']) expect(new Set(closest(name)).size).toBe(3);
  });

  it('begins with the plainest of those that are as near', () => {
    expect(closest('wallnut')[0]).toBe('Walnut, black');
  });

  it('says what was asked for', () => {
    const result = findWood('Iroko');
    expect(result).toMatchObject({ complaints: [{ at: [], remedy: ['choose one of these'] }] });
    expect(result.ok ? '' : result.complaints.map(({ says }) => speak(says, 'mm')).join()).toMatch(
      /^"Iroko" is not a wood that is known here; the closest names are /u,
    );
  });

  it("knows the user's own woods before those of the table, and offers them too", () => {
    const own: Wood[] = [
      { name: 'Plum 2', radial: 0.002, tangential: 0.003, source: 'own' },
      { name: 'Black cherry', radial: 0.001, tangential: 0.002, source: 'own' },
    ];
    expect(findWood('plum 2', own)).toEqual({ ok: true, value: own[0] });
    expect(findWood('cherry, black', own)).toEqual({ ok: true, value: own[1] });
    expect(findWood('cherry', own)).toMatchObject({ value: { name: 'Cherry, black', source: 'handbook' } });
    const result = findWood('plumb', own);
    expect(result.ok ? '' : result.complaints.map(({ says }) => speak(says, 'mm')).join()).toContain(
      'the closest names are "Plum 2"; ',
    );
  });
});

describe('SOURCE_NOTES', () => {
  it('marks figures from memory apart from those of the book', () => {
    expect(SOURCE_NOTES.memory).toContain('from memory');
    expect(SOURCE_NOTES.handbook).toContain('FPL-GTR-190');
    expect(SOURCE_NOTES.handbook).not.toContain('memory');
    expect(SOURCE_NOTES.own).toBe('your own figures');
  });
});

describe('everydayNames', () => {
  it('are all that lead to a wood, and nothing for one with no other name', () => {
    for (const wood of WOODS) for (const name of everydayNames(wood)) expect(nameOf(name)).toBe(wood.name);
    const [cherry, apple] = ['Cherry, black', 'Apple'].map((name) =>
      WOODS.find((wood) => wood.name === name),
    );
    expect(cherry && everydayNames(cherry)).toEqual(['cherry', 'American cherry', 'American black cherry']);
    expect(apple && everydayNames(apple)).toEqual([]);
  });
});

describe('isSolidWood', () => {
  it.each(['ash', 'Black cherry', 'oak'])('knows %j as a wood or a family of woods', (name) => {
    expect(isSolidWood(name)).toBe(true);
  });

  it.each(['birch plywood', 'oak veneer', 'hardboard', '', '-'])('does not know %j as one', (name) => {
    expect(isSolidWood(name)).toBe(false);
  });
});
