import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readProject } from '../../src/project/readProject.ts';
import { speak } from '../../src/units/phrase.ts';

const PLAN = readFileSync('examples/haberdashery-chest.yaml', 'utf8');

const advice = (climate: string): { at: string; says: string }[] => {
  const laid = readProject(`${PLAN}climate: ${climate}\n`);
  if (!laid.ok) throw new Error(JSON.stringify(laid.complaints));
  return laid.value.set.advice.map(({ at, says }) => ({ at: at.join('.'), says: speak(says, 'mm') }));
};

it('a climate beyond the published figures is advised of, before all else', () => {
  // The Wood Handbook's coefficients of change hold from 6 to 14 percent.
  expect(advice('{making: 8%, driest: 6%, dampest: 14%}').map(({ at }) => at)).not.toContain(
    'climate.dampest',
  );
  const [driest, dampest] = advice('{making: 8%, driest: 5%, dampest: 16%}');
  expect(driest).toMatchObject({
    at: 'climate.driest',
    says: expect.stringMatching(/^at 5 % moisture content/u),
  });
  expect(dampest).toMatchObject({
    at: 'climate.dampest',
    says: expect.stringMatching(/^at 16 % moisture content the size is a rough guide/u),
  });
});

/** Whole thirty-seconds of an inch, or whole halves of a mm, written in the plan's unit. */
const written = (mm: number, inches: boolean): number =>
  inches ? Math.round((mm / 25.4) * 32) / 32 : Math.round(2 * mm) / 2;

const between = (min: number, max: number) => fc.integer({ min, max });

it('no default draws advice', () => {
  fc.assert(
    fc.property(
      fc.record({
        inches: fc.boolean(),
        side: between(8, 16),
        front: between(18, 32),
        bottom: fc.constantFrom(undefined, 2, 3, 4, 5),
        proud: fc.constantFrom(0, 0.5, 1),
        lip: fc.constantFrom(0, 6),
        slips: fc.constantFrom(undefined, 8, 12),
        kind: fc.constantFrom('panel', 'solid'),
        openings: fc.array(
          fc.record({ width: between(300, 900), height: between(50, 300), depth: between(150, 700) }),
          { minLength: 1, maxLength: 4 },
        ),
      }),
      ({ inches, side, front, bottom, proud, lip, slips, kind, openings }) => {
        const length = (mm: number) => written(mm, inches);
        const laid = readProject(
          JSON.stringify({
            units: inches ? 'in' : 'mm',
            stock: {
              front: { thickness: length(front) },
              side: { thickness: length(side) },
              ...(bottom !== undefined && { bottom: { thickness: length(bottom) } }),
            },
            joint: { proud: length(proud) },
            front: { lip: length(lip) },
            bottom: {
              kind,
              ...(slips !== undefined && { slips: { width: length(slips), height: length(20) } }),
            },
            drawers: openings.map(({ width, height, depth }, i) => ({
              name: `Drawer ${i + 1}`,
              opening: { width: length(width), height: length(height), depth: length(depth) },
            })),
          }),
        );
        if (!laid.ok) throw new Error(JSON.stringify(laid.complaints));
        expect(laid.value.set.advice.map(({ at, says }) => `${at.join('.')}: ${speak(says, 'mm')}`)).toEqual(
          [],
        );
      },
    ),
    { numRuns: 60 },
  );
});

describe('a set', () => {
  /** In 64ths of an inch. */
  const size = (from: number, to: number) =>
    fc.integer({ min: Math.ceil(from * 64), max: Math.floor(to * 64) });
  const drawers = fc.uniqueArray(
    fc.record({
      name: fc.stringMatching(/^[A-Z][a-z]{4}$/),
      width: size(10, 20),
      height: size(3, 9),
      depth: size(12, 20),
      // With pins of their own, two widths may be equally frequent.
      pin: fc.constantFrom(undefined, 12, 16),
    }),
    { minLength: 2, maxLength: 7, selector: ({ name }) => name },
  );
  type Made = typeof drawers extends fc.Arbitrary<infer T> ? T : never;
  const boards = fc.record({ front: size(0.7, 1), side: size(0.4, 0.6) });
  const kinds = fc.constantFrom('through', 'lapped');

  const planOf = (
    { front, side }: { front: number; side: number },
    kind: string,
    entries: Made,
    length: (marks: number) => string,
    units = 'mm',
  ): string =>
    [
      `units: ${units}`,
      `stock: {front: {thickness: ${length(front)}}, side: {thickness: ${length(side)}}}`,
      `joint: {kind: ${kind}}`,
      'drawers:',
      ...entries.map(
        ({ name, width, height, depth, pin }) =>
          `  - {name: ${name}, opening: {width: ${length(width)}, height: ${length(height)}, depth: ${length(depth)}}${pin === undefined ? '' : `, joint: {pin: ${length(pin)}}`}}`,
      ),
    ].join('\n');

  /** What is laid out, drawer by drawer in the order of their names. */
  const laid = (text: string) => {
    const project = readProject(text);
    if (!project.ok) return undefined;
    const { family, drawers: made } = project.value.set;
    return {
      family: family && { target: family.target, pin: family.pin, spread: family.spread },
      drawers: [...made].sort((a, b) => (a.spec.name < b.spec.name ? -1 : 1)),
    };
  };
  const inMm = (marks: number): string => String((marks * 25.4) / 64);
  const inInches = (marks: number): string => `${marks}/64in`;

  it('is the same in whatever order its drawers are written', () => {
    const shuffled = drawers.chain((entries) =>
      fc.tuple(fc.constant(entries), fc.shuffledSubarray(entries, { minLength: entries.length })),
    );
    let count = 0;
    fc.assert(
      fc.property(boards, kinds, shuffled, (thick, kind, [entries, other]) => {
        const set = laid(planOf(thick, kind, entries, inMm));
        if (set !== undefined) count++;
        expect(laid(planOf(thick, kind, other, inMm))).toEqual(set);
      }),
      { numRuns: 200 },
    );
    expect(count).toBeGreaterThan(100);
  });

  it('is the same to a hair in whichever unit a plan writes its lengths', () => {
    const rounded = (value: unknown) =>
      JSON.parse(
        JSON.stringify(value ?? null, (_, each: unknown) =>
          typeof each === 'number' ? Math.round(each * 1e6) / 1e6 + 0 : each,
        ),
      ) as unknown;
    fc.assert(
      fc.property(boards, kinds, drawers, fc.constantFrom('mm', 'in'), (thick, kind, entries, units) => {
        const [mm, inches] = [(n: number) => `${inMm(n)}mm`, inInches].map((length) =>
          laid(planOf(thick, kind, entries, length, units)),
        );
        expect(rounded(mm)).toEqual(rounded(inches));
      }),
      { numRuns: 200 },
    );
  });
});
