import { readFileSync } from 'node:fs';
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
