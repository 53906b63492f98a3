import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
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
