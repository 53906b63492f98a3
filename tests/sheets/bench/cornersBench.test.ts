import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../src/drawing/drawing.ts';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { type BenchCorner, cornersBench } from '../../../src/sheets/bench/cornersBench.ts';
import { jointOf } from '../../joint/told.ts';

const cornerOf = (name: string, spec: JointSpec, routed = false): BenchCorner => ({
  name,
  joint: jointOf(spec),
  boards: { tail: 'tail board', pin: 'pin board' },
  routed,
});

/** 172 = 2 x 6 + 3 x 6 + 4 x 35.5. */
const through: JointSpec = {
  kind: 'through',
  width: 172,
  tailBoard: 12,
  pinBoard: 14,
  pin: 6,
  spacing: { kind: 'even', tails: 4 },
};
const AREA = { width: 186, height: 262 };

const wordsOn = (pages: readonly Drawing[]): string =>
  pages
    .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
    .join(' ')
    .replaceAll('\u00A0', ' ');

const sheetOf = (corners: readonly BenchCorner[], area = AREA) =>
  cornersBench(corners, { title: 'Chest', units: 'mm', area });

describe('the bench sheet of single corners', () => {
  it('has the settings of each, worked out for its boards, and the usual order of work', () => {
    const words = wordsOn(sheetOf([cornerOf('Plinth', through)]).draw());
    expect(words).toContain('Chest: corners');
    expect(words).toContain('through, 172 mm wide; tail board 12 mm, pin board 14 mm thick');
    // The tail board is gauged to the pin board's thickness, and the other way round; one tail and one pin are 41.5.
    for (const [label, figure] of [
      ['gauge tail board, all round, from end, mm', '14'],
      ['gauge pin board, both faces, from end, mm', '12'],
      ['tails', '4'],
      ['tail width', '35.5'],
      ['pin width', '6'],
      ['dividers', '41.5'],
      ['step up from', '6'],
      ['step down from', '166'],
    ])
      expect(words).toContain(`${label} ${figure}`);
    expect(words).toMatch(/1 Gauge every end\. .*Scribe the pins from the tails.*Take care/u);
    expect(words).not.toContain('In a carcase');
  });

  it('says nothing of dividers where tails differ', () => {
    const spacing = { kind: 'graded', ratio: 1.2, from: 'edge' } as const;
    const words = wordsOn(sheetOf([cornerOf('Plinth', { ...through, spacing })]).draw());
    expect(words).toContain('tail width varied');
    expect(words).not.toMatch(/dividers|step up|step down/u);
  });

  it('has a kind’s own order of work, and says which way its lap faces in a carcase', () => {
    const words = wordsOn(sheetOf([cornerOf('Top', { ...through, kind: 'double-lapped' })]).draw());
    expect(words).toMatch(
      /– In a carcase, tails on the sides show the .* 1 Gauge the pin board\. Rebate its end /u,
    );
    expect(words).not.toContain('Scribe the pins from the tails');
    expect(wordsOn(sheetOf([cornerOf('Top', { ...through, kind: 'lapped' })]).draw())).toContain(
      'In a carcase, tails on the top show above, and the laps face the sides.',
    );
  });

  it('has the cautions of the router where one cuts', () => {
    expect(wordsOn(sheetOf([cornerOf('Plinth', through)]).draw())).not.toContain('At the router');
    expect(wordsOn(sheetOf([cornerOf('Plinth', through, true)]).draw())).toContain('At the router');
  });

  it('goes on over as many pages as it needs, within each', () => {
    const corners = Array.from({ length: 9 }, (_, i) => cornerOf(`Corner ${i}`, through));
    for (const area of [AREA, { width: 136, height: 190 }]) {
      const { count, draw } = sheetOf(corners, area);
      const pages = draw();
      expect(pages).toHaveLength(count);
      expect(count).toBeGreaterThan(1);
      for (const { marks } of pages)
        for (const mark of marks) if (mark.kind === 'text') expect(mark.at[1]).toBeGreaterThan(0);
      for (const { name } of corners) expect(wordsOn(pages)).toContain(name);
    }
  });
});
