import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shellWord } from '../../src/units/shellWord.ts';

describe('a word for the shell', () => {
  it('is quoted only where the shell would read it otherwise', () => {
    expect([shellWord('Cloth/side'), shellWord('Buttons front')]).toEqual(['Cloth/side', '"Buttons front"']);
  });

  it('is read back by the shell as it was, whatever signs it has', () => {
    const words = fc.sample(
      fc.string({
        unit: fc.constantFrom('a', 'é', ' ', '"', "'", '$', '`', '\\', '*', '~', ';', '#', '!', '('),
        minLength: 1,
      }),
      { numRuns: 300, seed: 1 },
    );
    const read = execFileSync('sh', ['-c', `printf '%s\\n' ${words.map(shellWord).join(' ')}`], {
      encoding: 'utf8',
    });
    expect(read.split('\n').slice(0, -1)).toEqual(words);
  });
});
