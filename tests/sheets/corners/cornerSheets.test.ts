import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OUTSIDE } from '../../../src/sheets/corners/axonometry.ts';
import { cornerPicture, pictureSize } from '../../../src/sheets/corners/cornerPicture.ts';
import { cornerSheets } from '../../../src/sheets/corners/cornerSheets.ts';
import { closedSpec, jointsOf, ordinarySpec, shoulderedSpec } from '../../joint/anySpec.ts';
import { jointOf } from '../../joint/told.ts';
import { AREAS } from '../anyDrawer.ts';
import { sheetFaults, wordsOf } from '../sheetFaults.ts';

const anyCorner = jointsOf(fc.oneof(ordinarySpec, shoulderedSpec, closedSpec));
const SHOWN = ['closed', 'open', 'inside'] as const;

const plain = jointOf({
  kind: 'lapped',
  width: 96,
  tailBoard: 11,
  pinBoard: 20,
  lap: 5,
  spacing: { kind: 'even', tails: 4 },
});

describe('the picture of a corner', () => {
  it('is as large as it is told to be', () => {
    fc.assert(
      fc.property(anyCorner, fc.constantFrom(...SHOWN), (joint, shown) => {
        const { box } = cornerPicture(joint, shown, 1);
        const size = pictureSize(joint, shown);
        // Its lines are 0.25 wide.
        expect(Math.abs(box.x1 - box.x0 - size.width)).toBeLessThan(0.51);
        expect(Math.abs(box.y1 - box.y0 - size.height)).toBeLessThan(0.26);
      }),
      { numRuns: 15 },
    );
  });

  it('shows closed what shows at the outside: of a secret-mitred one no end grain', () => {
    const secret = jointOf({
      kind: 'secret-mitred',
      width: 96,
      tailBoard: 18,
      pinBoard: 18,
      spacing: { kind: 'even', tails: 3 },
    });
    const grain = (joint: typeof secret) =>
      cornerPicture(joint, 'closed', 1).marks.flatMap((mark) =>
        mark.kind === 'stroke' && mark.role === 'waste' ? mark.paths : [],
      );
    expect(grain(secret)).toEqual([]);
    expect(grain(plain)).not.toEqual([]);
  });

  it('is seen more at the pin board’s outside face than at the tail board’s, and from above', () => {
    const [x, y, z] = OUTSIDE.eye;
    expect(y).toBeGreaterThan(z);
    expect(Math.min(x, z)).toBeGreaterThan(0);
  });
});

describe('the sheets of corners', () => {
  it('name each corner and what it is', () => {
    const [page, ...more] = cornerSheets([{ name: 'Ribbon: front', joint: plain }], {
      title: 'Haberdashery chest',
      units: 'mm',
      area: AREAS.A4,
    });
    expect(more).toEqual([]);
    const text = page === undefined ? '' : wordsOf(page).replaceAll('\u00A0', ' ');
    expect(text).toContain('Haberdashery chest: corners');
    expect(text).toContain(
      'Ribbon: front lapped, 4 tails, 96 mm wide, tail board 11 mm, pin board 20 mm, lap 5 mm',
    );
  });

  it('keep every mark on the page, and no line over a word', () => {
    fc.assert(
      fc.property(
        fc.array(anyCorner, { minLength: 1, maxLength: 3 }),
        fc.constantFrom(AREAS.A4, AREAS.A5),
        (joints, area) => {
          const corners = joints.map((joint, i) => ({ name: `Corner ${i + 1}`, joint }));
          const pages = cornerSheets(corners, { title: 'Corners', units: 'mm', area });
          expect(pages.flatMap(sheetFaults)).toEqual([]);
          expect(
            pages
              .map(wordsOf)
              .join(' ')
              .match(/Corner \d/gu),
          ).toHaveLength(joints.length);
        },
      ),
      { numRuns: 15 },
    );
  });
});
