import { describe, expect, it } from 'vitest';
import { moveRail } from '../../../../src/page/model/cabinet/railEdits.ts';
import { snapshotOf } from '../../chest.ts';

/** 418 less two rails of 14 is 390 for three rows. */
const chest = (heights: string, units = 'mm') => `units: ${units}
stock: {front: {thickness: 20mm}, side: {thickness: 11mm}}
cabinet: {width: 300mm, height: 418mm, depth: 420mm, rail: 14mm, rows: [Buttons, Thread, Cloth], heights: ${heights}} # from the top
`;
const moved = (heights: string, rail: number, by: number, isBroken = false) => {
  const { snapshot, stop } = moveRail(snapshotOf(chest(heights)), rail, by, isBroken);
  const rows = snapshot.project.cabinet?.openings.map(({ height }) => height);
  const [, written] = /heights: (.*)\} # from the top/u.exec(snapshot.text) ?? [];
  return { rows, written, stop: stop.map(({ at }) => at.join('.')) };
};

describe('moveRail', () => {
  it('changes what fixes a progression, and all rows follow', () => {
    // 390 = 3 a + 3 d: with 110 on top d is 20.
    expect(moved('{progression: arithmetic, first: 100}', 0, 10)).toEqual({
      rows: [110, 130, 150],
      written: '{progression: arithmetic, first: 110}',
      stop: [],
    });
    expect(moved('{progression: arithmetic, step: 30}', 0, 10)).toEqual({
      rows: [110, 130, 150],
      written: '{progression: arithmetic, step: 20}',
      stop: [],
    });
    // With nothing said the step is the rail: 116, 130 and 144; now 10.
    expect(moved('{progression: arithmetic}', 0, 4).written).toBe('{progression: arithmetic, step: 10}');
    // The upper two are 240 of 390: 110 and 130.
    expect(moved('{progression: arithmetic, first: 100}', 1, 10).written).toBe(
      '{progression: arithmetic, first: 110}',
    );
    // 100, 200 ... no: 390 = 30 (1 + 3 + 9) is a ratio of 3; a ratio of 1 is 130 each.
    expect(moved('{progression: geometric, ratio: 1.5}', 0, 130 - 82)).toEqual({
      rows: [130, 130, 130],
      written: '{progression: geometric, ratio: 1}',
      stop: [],
    });
  });

  it('lists the rows of a rule that is broken', () => {
    expect(moved('{progression: arithmetic, first: 100}', 0, 10, true)).toEqual({
      rows: [110, 120, 160],
      written: '[110, 120, 160]',
      stop: [],
    });
    expect(moved('equal', 1, -10, true)).toEqual({
      rows: [130, 120, 140],
      written: '[130, 120, 140]',
      stop: [],
    });
  });

  it('leaves equal rows equal', () => {
    expect(moved('equal', 0, 10)).toEqual({
      rows: [130, 130, 130],
      written: 'equal',
      stop: ['cabinet.heights'],
    });
  });

  it('moves listed rows by themselves, and lets the others share what they shared', () => {
    expect(moved('[100, 130, 160]', 1, 15).written).toBe('[100, 145, 145]');
    expect(moved('[100, auto, auto]', 0, 15)).toMatchObject({
      rows: [115, 130, 145],
      written: '[115, 130, auto]',
    });
  });

  it('goes as far as the drawers can be made, and tells why it stops', () => {
    const { rows, stop } = moved('[100, 130, 160]', 0, -90);
    expect(stop).not.toEqual([]);
    expect(rows?.[0]).toBeLessThan(60);
    expect(rows?.[1]).toBe(230 - (rows?.[0] ?? 0));
    // A mark less would be refused.
    expect(moved(`[${rows?.[0]}, ${rows?.[1]}, 160]`, 0, -0.5).rows).toEqual(rows);
  });

  it('moves by sixteenths of an inch in an inch plan, which are exact', () => {
    const text = chest('{progression: arithmetic, first: 4}', 'in')
      .replace('418mm', '16 1/2')
      .replace('14mm', '1/2');
    // 15 1/2 less 3 x 4 1/16 is 3 5/16, a third of which is the step.
    const { snapshot } = moveRail(snapshotOf(text), 0, 25.4 / 16, false);
    expect(snapshot.text).toContain('first: 4 1/16}');
    // Sixteenths: 64, 82.67 and 101.33 of 248, rounded 64, 83 and 101; then one more above the rail and one less below.
    const listed = moveRail(snapshotOf(text), 0, 25.4 / 16, true).snapshot.text;
    expect(listed).toContain('heights: [4 1/16, 5 1/8, 6 5/16]');
  });
});
