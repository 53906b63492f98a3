import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linkOf, planInLink } from '../../../src/page/browser/link.ts';
import { CHEST } from '../chest.ts';

const textIn = async (hash: string): Promise<string | null | undefined> => {
  const bytes = await planInLink(hash);
  return bytes && new TextDecoder().decode(bytes);
};

describe('a link', () => {
  it('holds a whole plan, whatever is written in it', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 200 }), async (text) => {
        expect(await textIn(`#${await linkOf(text)}`)).toBe(
          new TextDecoder().decode(new TextEncoder().encode(text)),
        );
      }),
      { numRuns: 50 },
    );
    expect(await textIn(`#${await linkOf(CHEST)}`)).toBe(CHEST);
  });

  it('is short, and made of what an address may hold', async () => {
    const link = await linkOf(CHEST);
    expect(link).toMatch(/^plan=[\w-]+$/u);
    expect(link.length).toBeLessThan(CHEST.length);
  });

  it('is none where the address has something else after its #', async () => {
    expect(await planInLink('')).toBeUndefined();
    expect(await planInLink('#corner')).toBeUndefined();
  });

  it('is known to be damaged', async () => {
    const link = await linkOf(CHEST);
    expect(await planInLink(`#${link.slice(0, -9)}`)).toBeNull();
    expect(await planInLink('#plan=%%%')).toBeNull();
    expect(await planInLink('#plan=AAAA')).toBeNull();
  });

  it('does not unfold into more than a plan could be', async () => {
    const link = await linkOf('a'.repeat(30e6));
    expect(link.length).toBeLessThan(100_000);
    expect(await planInLink(`#${link}`)).toBeNull();
  });
});
