import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { NO_SPLITS } from '../../src/paper/piece.ts';
import { guidePieces } from '../../src/project/guidesOf.ts';
import { chooseOnly } from '../../src/project/only.ts';
import type { Project } from '../../src/project/project.ts';
import { readProject } from '../../src/project/readProject.ts';
import { settingsOf } from '../../src/project/settingsOf.ts';
import { sheetsOf } from '../../src/project/sheetsOf.ts';
import { sheetFaults, wordsOf } from '../sheets/sheetFaults.ts';
import { value } from '../value.ts';

const CHEST = readFileSync('examples/haberdashery-chest-fingers.yaml', 'utf8');

const projectOf = (text: string): Project => {
  const reading = readProject(text);
  if (!reading.ok) throw new Error('the plan cannot be made');
  return reading.value;
};
const CHEST_PROJECT = projectOf(CHEST);
const namesOf = (project: Project): string[] => settingsOf(project).map(({ titles }) => titles.item);

describe('the settings of fingers', () => {
  it('are one for each different corner, the front corners first, as the cutter is set once for each depth', () => {
    const names = namesOf(CHEST_PROJECT);
    expect(new Set(names)).toEqual(
      new Set([
        'Buttons front, Thread front',
        'Ribbon front, Patches front',
        'Notions front',
        'Cloth front',
        'Buttons back, Thread back',
        'Ribbon back, Patches back',
        'Notions back',
        'Cloth back',
      ]),
    );
    expect(names.map((name) => name.includes('front'))).toEqual([
      true,
      true,
      true,
      true,
      false,
      false,
      false,
      false,
    ]);
  });

  it("begin at the side's own reference edge at the back too, where a stop holds it", () => {
    const cloth = CHEST_PROJECT.set.drawers.find(({ spec }) => spec.name === 'Cloth');
    const back = settingsOf(CHEST_PROJECT).find(({ titles }) => titles.item === 'Cloth back')?.setting;
    // A groove of 5 mm that is 11 mm up; pairs (16 - 12.7) / 2 inside the tails' bases.
    expect(back?.from).toBe(16);
    expect(back?.to).toBe(16 + (cloth?.back.width ?? 0));
    expect(back?.pairs.length).toBeGreaterThan(2);
    back?.pairs.forEach(({ from, to }, i) => {
      const base = cloth?.back.tails[i]?.base ?? [0, 0];
      expect(from).toBeCloseTo(16 + base[0] + 1.65, 9);
      expect(to).toBeCloseTo(16 + base[1] - 1.65, 9);
    });
  });

  it('leave out corners of which nothing is cut along fingers', () => {
    // The sides extend beyond a back of one tail, so its two half spaces are cut by hand; its pins along tapered ends, if there are some.
    const untapered = projectOf(CHEST.replace(/, through: \{channel: \d+\}/u, ''));
    expect(namesOf(untapered)).toEqual(
      namesOf(CHEST_PROJECT).filter((name) => !name.startsWith('Buttons back')),
    );
    expect(settingsOf(projectOf(CHEST.replace(/^fingers: .*$/mu, '').replace(/^family: .*$/mu, '')))).toEqual(
      [],
    );
  });

  it('are those of the drawers that are drawn', () => {
    const only = value(chooseOnly(CHEST_PROJECT, 'Cloth,Notions/back'))?.only;
    expect(only).toBeDefined();
    expect(namesOf({ ...CHEST_PROJECT, ...(only && { only }) })).toEqual(['Cloth front', 'Cloth back']);
  });

  it('have a rod each among the guides, with a name of its own', () => {
    const rods = guidePieces(CHEST_PROJECT);
    expect(rods.map(({ title }) => title)).toEqual(
      namesOf(CHEST_PROJECT).map((name) => `${name}, setting rod for the fingers`),
    );
    expect(new Set(rods.map(({ name }) => name)).size).toBe(rods.length);
    for (const rod of rods) expect(rod.draw(NO_SPLITS).marks.length).toBeGreaterThan(5);
  });
});

const A4 = { name: 'A4', width: 210, height: 297, roll: false } as const;
const textOf = (project: Project, kind: 'guides' | 'bench'): { words: string; faults: string[] } => {
  const drawings = value(sheetsOf(project, { paper: A4, kinds: [kind] })).flatMap((set) =>
    [...set.pages()].flatMap(({ placed }) => placed.map(({ drawing }) => drawing)),
  );
  return {
    words: drawings.map(wordsOf).join(' ').replaceAll('\u00A0', ' '),
    faults: drawings.slice(0, 1).flatMap(sheetFaults),
  };
};

describe('the sheets of a plan with fingers', () => {
  it('list the spacers with a spare, the gap block, and the order of settings, before the rods', () => {
    const { words, faults } = textOf(CHEST_PROJECT, 'guides');
    expect(faults).toEqual([]);
    expect(words).toContain('Haberdashery chest, fingers: fingers and spacers');
    // Five pairs of the widest front, and one spare.
    expect(words).toMatch(/5\.91 6 front: Cloth/u);
    expect(words).toMatch(/Gap block: 16\.01 mm/u);
    expect(words).toMatch(/Order of settings/u);
    expect(words).toMatch(/Clamp a backing board behind the work/u);
    expect(words).toMatch(/A, C with their OUTSIDE FACE towards you, those of B, D with their INSIDE FACE/u);
  });

  it('are two bench sheets for each drawer', () => {
    const sets = value(sheetsOf(CHEST_PROJECT, { paper: A4, kinds: ['bench'] }));
    expect(sets.flatMap((set) => [...set.pages()])).toHaveLength(2 * 6);
  });

  it('say on each bench sheet which setting of the set a drawer has, and what is along the fingers', () => {
    const { words } = textOf(CHEST_PROJECT, 'bench');
    const places = [...words.matchAll(/fingers: place in the order (\d) of 8 (\d) of 8/gu)].map(
      ([, front, back]) => [Number(front), Number(back)],
    );
    expect(places).toHaveLength(6);
    const items = settingsOf(CHEST_PROJECT).map(({ titles }) => titles.names);
    CHEST_PROJECT.set.drawers.forEach(({ spec: { name } }, i) => {
      const [front = 0, back = 0] = places[i] ?? [];
      expect([items[front - 1], items[back - 1]]).toEqual([
        expect.arrayContaining([`${name} front`]),
        expect.arrayContaining([`${name} back`]),
      ]);
    });
    expect(words).toMatch(/Tails of the front corners, along the fingers/u);
    expect(words).toMatch(/Clamp a backing board/u);
  });
});
