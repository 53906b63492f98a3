import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatPlanComplaint } from '../../src/plan/planComplaint.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { starterPlan } from '../../src/plan/starterPlan.ts';

/** Whatever is given: a plan, or a reason at a place that the text has. */
const judge = (given: string | Uint8Array): void => {
  const reading = readPlan(given);
  if (reading.ok) {
    expect(reading.plan.drawers.length + reading.plan.joints.length).toBeGreaterThan(0);
    return;
  }
  expect(reading.complaints.length).toBeGreaterThan(0);
  const lines = String(typeof given === 'string' ? given : new TextDecoder().decode(given)).split(
    /\r\n|\n|\r/u,
  );
  for (const complaint of reading.complaints) {
    expect(complaint.line).toBeGreaterThanOrEqual(1);
    expect(complaint.line).toBeLessThanOrEqual(lines.length);
    expect(complaint.column).toBeGreaterThanOrEqual(1);
    expect(complaint.column).toBeLessThanOrEqual((lines[complaint.line - 1] ?? '').length + 1);
    const told = formatPlanComplaint('plan.yaml', complaint, 'mm');
    expect(told).not.toMatch(/undefined|\[object|\n/u);
    expect(told.length).toBeLessThan(600);
  }
};

const plans = [
  readFileSync('examples/haberdashery-chest.yaml', 'utf8'),
  readFileSync('examples/trinket-box.yaml', 'utf8'),
  starterPlan('mm'),
  starterPlan('in'),
];

/** A piece of a plan, put somewhere else in it, doubled, or lost. */
const mutated = fc
  .record({
    plan: fc.constantFrom(...plans),
    cuts: fc.array(
      fc.record({
        from: fc.double({ min: 0, max: 1, noNaN: true }),
        length: fc.integer({ min: 0, max: 12 }),
        put: fc.oneof(
          fc.constantFrom(
            '',
            ':',
            ' ',
            '\n',
            '\t',
            '{',
            '}',
            '[',
            ']',
            ',',
            '"',
            "'",
            '-',
            '#',
            '&a ',
            '*a',
            '!',
            '|',
            '?',
            '0',
            '-1',
            '1e999',
            '.nan',
            'null',
            '~',
          ),
          fc.string({ maxLength: 4 }),
        ),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ plan, cuts }) =>
    cuts.reduce((text, { from, length, put }) => {
      const start = Math.floor(from * text.length);
      return `${text.slice(0, start)}${put}${text.slice(start + length)}`;
    }, plan),
  );

const value = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 3 },
    fc.oneof(
      fc.constant(null),
      fc.boolean(),
      fc.double(),
      fc.integer(),
      fc.string({ unit: 'binary', maxLength: 6 }),
    ),
    fc.constantFrom<unknown>('1:7', '3/4in', 'through', 'lapped', 'none', 5, 20, 280),
    fc.array(tie('value'), { maxLength: 3 }),
    fc.dictionary(
      fc.constantFrom(
        'name',
        'units',
        'stock',
        'front',
        'side',
        'thickness',
        'joint',
        'joints',
        'drawers',
        'opening',
        'size',
        'width',
        'height',
        'depth',
        'kind',
        'tails',
        'pins',
        'graded',
        'ratio',
        'halfPin',
        'lip',
        'slips',
        'bottom',
        'back',
        'fit',
        'tailBoard',
        'pinBoard',
        'toString',
        '__proto__',
      ),
      tie('value'),
      { maxKeys: 6 },
    ),
  ),
})).value;

describe('any text', () => {
  it('that is a plan with slips in it is read or refused with places', () => {
    fc.assert(fc.property(mutated, judge), { numRuns: 400 });
  });

  it('that has the keys of a plan with values of any kind is read or refused with places', () => {
    fc.assert(
      fc.property(value, value, (drawer, joint) =>
        judge(JSON.stringify({ drawers: [drawer], joints: [joint] })),
      ),
      { numRuns: 400 },
    );
  });

  it('of any letters is refused with a place', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 60 }), judge), { numRuns: 400 });
  });

  it('of any bytes is refused with a place', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 60 }), judge), { numRuns: 400 });
  });
});
