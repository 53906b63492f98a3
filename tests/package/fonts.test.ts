import { readFileSync } from 'node:fs';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';

const open = (path: string): Font => create(readFileSync(new URL(`../../${path}.ttf`, import.meta.url)));

describe('a font beside the program', () => {
  it.each(['DejaVuSansCondensed', 'DejaVuSansCondensed-Bold'])(
    'draws every character of %s as the whole font does',
    (name) => {
      const ours = open(`dist/fonts/${name}`);
      const whole = open(`node_modules/dejavu-fonts-ttf/ttf/${name}`);
      expect(ours.characterSet.length).toBeGreaterThan(5000);
      expect(ours.characterSet).toEqual(whole.characterSet);
      const drawn = (font: Font, codePoint: number) => {
        const { id, advanceWidth, path } = font.glyphForCodePoint(codePoint);
        return JSON.stringify([id, advanceWidth, path.commands]);
      };
      const wrong = ours.characterSet.filter(
        (codePoint) => drawn(ours, codePoint) !== drawn(whole, codePoint),
      );
      expect(wrong).toEqual([]);
    },
  );
});
