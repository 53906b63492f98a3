import { describe, expect, it } from 'vitest';
import { ALL } from './all.ts';

const INPUTS = 500;

describe('whatever is given, the answer is valid or a clear refusal', () => {
  for (const { name, share, run } of ALL)
    it(`to ${name}`, async () => {
      const counts = await run(Math.ceil(INPUTS * share));
      expect(counts.valid + counts.refused).toBeGreaterThan(0);
    });
});
