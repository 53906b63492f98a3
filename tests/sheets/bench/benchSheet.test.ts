import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawerCut } from '../../../src/drawer/drawerCut.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import type { Size } from '../../../src/paper/printable.ts';
import { namedCorners } from '../../../src/project/project.ts';
import { cutCorners } from '../../../src/router/guide/cutCorners.ts';
import { CAUTIONS } from '../../../src/router/limits/cautions.ts';
import { benchSheet } from '../../../src/sheets/bench/benchSheet.ts';
import { formatNumber } from '../../../src/units/formatLength.ts';
import type { Notation } from '../../../src/units/notation.ts';
import { speak } from '../../../src/units/phrase.ts';
import { drawer, inOpening } from '../../drawer/chest.ts';
import { movement } from '../../drawer/year.ts';
import { AREAS, anyDrawer, made } from '../anyDrawer.ts';
import { sheetFaults, textsOf, wordsOf } from '../sheetFaults.ts';

const sheet = (spec: DrawerSpec, units: Notation = 'mm', area: Size = AREAS.A4) => {
  const found = made(spec);
  if (found === undefined) throw new Error('this drawer can be made');
  return benchSheet(found.drawer, found.parts, { units, area }).draw();
};

const words = (spec: DrawerSpec, units: Notation = 'mm') => sheet(spec, units).map(wordsOf).join(' ');

describe('a bench sheet', () => {
  it('is one page for a drawer, on A4, Letter and A3', () => {
    for (const area of [AREAS.A4, AREAS.Letter, AREAS.A3])
      expect(sheet(drawer(), 'mm', area)).toHaveLength(1);
  });

  it('is one page with the gap through the year too, and in inches, its gap seen as a curve', () => {
    const quiet = { making: 8, driest: 7.5, dampest: 8.5 };
    // Advice takes lines of its own; then there is room on A4.
    const sticking = { making: 8, driest: 6, dampest: 12 };
    for (const [width, height] of [
      [280, 76],
      [280, 110],
      [574, 190],
    ] as const)
      for (const [units, area, climate] of [
        ['mm', AREAS.A4, sticking],
        ['in', AREAS.A4, sticking],
        ['mm', AREAS.Letter, quiet],
        ['in', AREAS.Letter, quiet],
      ] as const) {
        const pages = sheet(inOpening(width, height, 420, { movement: movement({ climate }) }), units, area);
        expect([width, units, pages.length]).toEqual([width, units, 1]);
        expect(pages.flatMap(sheetFaults)).toEqual([]);
        const texts = pages.flatMap(textsOf);
        expect(texts.some(({ text }) => text.startsWith('Advice'))).toBe(climate === sticking);
        const dampest = texts.find(({ text }) => text === 'dampest');
        const heading = texts.find(({ text }) => text === 'Gap above, through the year');
        // Between heading and axis lie the legend and at least 12 mm of curve.
        expect((heading?.at[1] ?? 0) - (dampest?.at[1] ?? 0)).toBeGreaterThan(18);
      }
  });

  it('sets larger type on larger paper', () => {
    const least = (area: Size) =>
      Math.min(
        ...sheet(drawer(), 'mm', area)
          .flatMap(textsOf)
          .map(({ size }) => size),
      );
    expect(least(AREAS.A3)).toBeGreaterThan(1.2 * least(AREAS.A4));
  });

  it('has the drawer’s name on every page, and the quantity to make', () => {
    const pages = sheet(drawer({ name: 'Notions', count: 3 }), 'mm', AREAS.A5);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(wordsOf(page)).toContain('Notions');
    expect(pages.map(wordsOf).join(' ')).toContain('quantity\u00A03');
  });

  it('lists the parts: how many, rough, length, width, thickness', () => {
    // Front 280 - 2 × 0.5 by 76 - 1; each lapped end spares 20 - 5 + 3, each through one 11 + 3.
    // Side 420 - 12 - 5; back 75 - 16 - 4; bottom 279 - 22 + 10 - 1 by 408 - 20 + 5.
    const text = words(drawer({ count: 2 }));
    expect(text).toContain('Parts, mm rough length length width thickness');
    expect(text).toContain('2 fronts 315 279 75 20 Cherry, black; grain along its length;');
    expect(text).toContain('4 sides 435 403 75 11 Ash, white;');
    expect(text).toContain('2 backs 307 279 55 11');
    expect(text).toContain('2 bottoms 393 393 266 5');
  });

  it('gives every setting for the front corners and for the back ones', () => {
    // Three tails share 75 - 6 - 6 - 2 × 5, two share 55 - 6 - 6 - 5.
    const text = words(drawer());
    expect(text).toContain('gauge sides, all round, from end 15 11');
    expect(text).toContain('11 11'); // both faces of the pin boards: the side's thickness
    expect(text).toContain('slope (sliding bevel) 1:7 1:7');
    expect(text).toContain('tails 3 2');
    expect(text).toContain('tail width 17.67 19');
    expect(text).toContain('pin width 5 5');
    expect(text).toContain('dividers 22.67 24');
    expect(text).toContain('step up from 6 6');
    expect(text).toContain('step down from 69 49');
  });

  it('has no dividers to set where tails differ or there is only one', () => {
    const graded = { kind: 'graded', ratio: 1.2, from: 'edge' } as const;
    const text = words(drawer({ joint: { ...drawer().joint, spacing: graded } }));
    expect(text).toContain('tail width varied 19');
    expect(text).toContain('dividers – 24 step up from – 6 step down from – 49');
    // Without tails to step off at the front or the back, nothing is said of dividers.
    const all = [graded, { kind: 'even', tails: 1 } as const].map((spacing) =>
      words(
        drawer({
          joint: { ...drawer().joint, spacing },
          backJoint: { ...drawer().backJoint, spacing },
        }),
      ),
    );
    for (const none of all) expect(none).not.toMatch(/dividers|step up|step down/u);
  });

  it('dimensions the sketch: outside, the side, and what lies at which height', () => {
    const text = words(drawer());
    for (const number of ['279', '408', '403']) expect(text.split(' ')).toContain(number);
    expect(text).toContain('0 reference edge 11 groove 16 back’s lower edge 71 back’s upper edge 75 sides');
  });

  it('letters the corners clockwise from the front’s left end, as seen from above', () => {
    const [page] = sheet(drawer());
    const letters = textsOf(page ?? { box: { x0: 0, y0: 0, x1: 0, y1: 0 }, marks: [] }).filter(({ text }) =>
      /^[A-D]$/u.test(text),
    );
    const at = (letter: string) => letters.find(({ text }) => text === letter)?.at ?? [0, 0];
    const [a, b, c, d] = ['A', 'B', 'C', 'D'].map(at);
    expect([a?.[1], d?.[0], c?.[1]]).toEqual([b?.[1], a?.[0], d?.[1]]);
    expect(b?.[0]).toBeGreaterThan(a?.[0] ?? 0);
    expect(d?.[1]).toBeGreaterThan(a?.[1] ?? 0);
  });

  it('gives the length of the diagonals between the inside corners', () => {
    // Inside 279 - 2 × 11 by 408 - 20 - 11.
    expect(Math.hypot(257, 377)).toBeCloseTo(456.27, 2);
    expect(words(drawer())).toContain('Both diagonals inside: 456.27\u00A0mm');
  });

  it('gives the error of swollen paper at this width', () => {
    // 0.5 % of 189 mm.
    const cloth = drawer({
      space: {
        kind: 'opening',
        opening: { width: 574, height: 190, depth: 420 },
        fit: { side: 0.5, top: 1, behind: 12 },
      },
    });
    expect(words(cloth)).toContain('189\u00A0mm is 0.95\u00A0mm');
  });

  it.each([
    // 403 mm is 15.866 in.
    ['in', '15\u00A055/64', 'inches to 1/64'],
    ['in/16', '15\u00A07/8', 'inches to 1/16'],
    ['in/1000', '15.866', 'inches to .001'],
  ] as const)('sets figures large in %s: %s', (notation, shown, roundedTo) => {
    const [page] = sheet(drawer(), notation);
    const texts = page === undefined ? [] : textsOf(page);
    expect(texts.find(({ text }) => text === shown)?.size).toBeGreaterThanOrEqual(5);
    expect(texts.map(({ text }) => text).join(' ')).toContain(roundedTo);
  });

  it('has the steps of the dividers end at a line in inches, where an opening to the nearest mark would add up', () => {
    const [page] = sheet(drawer(), 'in');
    const text = (page === undefined ? [] : textsOf(page)).map(({ text }) => text).join(' ');
    expect(text).toContain('last step up ends at');
    expect(words(drawer())).not.toContain('last step up');
  });

  it('shows a groove in slips, a lip and a through front as they are', () => {
    expect(
      words(drawer({ bottom: { kind: 'solid', slack: 1, hold: { kind: 'slips', width: 12, height: 22 } } })),
    ).toMatch(
      /Groove front and slips\..*Glue, clamp, check again\. 12 Trim the drawer slips to fit between front and back\. Glue them inside the sides, lower edges flush\. 13 Slide the bottom in .*No finish where the slips are glued, up each side: 22.mm/u,
    );
    // The front stands out 6 mm and half the gap on each side: 279 + 2 × 6.5.
    expect(words(drawer({ lip: { sides: 6, top: 6, bottom: 0 } })).split(' ')).toContain('292');
    const through = words(drawer({ joint: { kind: 'through', spacing: { kind: 'even' } } }));
    expect(through).toContain('gauge front and back, both faces, from end');
    expect(through).not.toContain('front’s end grain');
  });

  it('gives the height on the sides where the back joint begins', () => {
    // The groove is 11 mm up and 5 mm wide.
    expect(words(drawer())).toContain('joint, above reference edge 0 16');
  });

  it('measures a front with a lip from its rebate, which is cut before anything is gauged', () => {
    // The lip, and the gap that it covers: 6 + 0.5 at each end. The rebate goes down to the lap: 20 - 5.
    const lipped = words(drawer({ lip: { sides: 6, top: 5, bottom: 4 } }));
    expect(lipped).toContain(
      'front’s rebate, depth 15 – rebate, in from the end 6.5 – rebate, up from the lower edge 4 – rebate, down from the upper edge 6 –',
    );
    expect(lipped).toContain('gauge front’s inside face, from shoulder; back’s both faces 11 11');
    expect(lipped).toContain(
      '2 Cut the front’s rebate along its ends and both edges. 3 Gauge every end; the front from its rebate’s shoulder and the rebate’s lower edge.',
    );
    const flush = words(drawer({ lip: { sides: 6, top: 5, bottom: 0 } }));
    expect(flush).toContain('Gauge every end; the front from its rebate’s shoulder.');
    expect(flush).not.toContain('rebate, up');
    expect(flush).toContain('Cut the front’s rebate along its ends and its upper edge.');
    expect(words(drawer())).not.toMatch(/rebate|shoulder/u);
    expect(words(drawer())).toContain('2 Gauge every end.');
  });

  describe('of a drawer that a router cuts', () => {
    const pages = (
      bushes: { bush?: number; pinBush?: number },
      units: Notation = 'mm',
      area = AREAS.A4,
      spec = inOpening(280, 110, 420),
    ) => {
      const cutter = { diameter: 12.7, angle: 8, length: 20 };
      const { slope: _, ...wish } = spec.joint;
      const { slope: __, ...backWish } = spec.backJoint;
      const found = made({
        ...spec,
        cutter,
        joint: { ...wish, pin: 8.5 },
        backJoint: { ...backWish, pin: 9.62 },
      });
      if (found === undefined) throw new Error('this drawer can be made');
      const cuts = cutCorners(namedCorners({ set: { drawers: [found.drawer], advice: [] }, joints: [] }), {
        cutter,
        straight: 8,
        ...bushes,
      });
      if (!cuts.ok) throw new Error(JSON.stringify(cuts.complaints));
      const cut = drawerCut(found.drawer, cuts.value);
      if (cut === undefined) throw new Error('every corner is cut');
      return benchSheet(found.drawer, found.parts, { units, area, cut }).draw();
    };
    const guided = (bushes: { bush?: number; pinBush?: number }) =>
      pages(bushes).map(wordsOf).join(' ').replaceAll('\u00A0', ' ');

    it('gives the settings of cutters and bushes for both kinds of corners', () => {
      const text = guided({ bush: 16, pinBush: 11 });
      expect(text).toContain('dovetail cutter 12.7 12.7 – its angle 8° 8°');
      // Fronts of 20 with a lap of 5; sides and backs of 11.
      expect(text).toContain('tails: dovetail cutter’s depth 15 11');
      expect(text).toContain('tails: guide bush 16 16');
      expect(text).toContain('pins: straight cutter – 8');
      expect(text).toContain('pins: cutter’s depth 15 11');
      expect(text).toContain('pins: guide bush 16 11');
      // At the surface the cut is 12.7 - 2 × 15 tan 8° = 8.4837 wide, or 9.6081 at 11 deep; the centre stops half of it
      // short of the 11 mm that a side is thick. The round at the bottom is 6.35: 6.35 - √(6.35² - 4.2419²) = 1.6245.
      expect(text).toContain('pins: cutter’s centre stops from end 6.76 –');
      expect(text).toContain('tails’ inside arrises: round from inside face 4.24 –');
      expect(text).toContain('– in at the base 4.24 – – in at the tip 1.62 –');
      expect(text).toContain('least pin width 8.48 9.61');
      expect(text).not.toMatch(/dividers|step up/u);
    });

    it('gives the router’s order of work, with its cautions', () => {
      const text = guided({ bush: 16, pinBush: 11 });
      const steps = [
        '3 Make the guides, one for each board of a corner.',
        '4 Unplug the router. Fit the dovetail cutter and its guide bush; set its depth.',
        '5 Cut a trial joint in scrap of the same thickness. Correct the settings by it.',
        '6 Cut every part to its finished length.',
        '7 Saw and chop the half spaces of the sides’ back ends by their templates: the cutter would cut into the sides.',
        '8 Tails of the front corners, by the tails’ guide: score lightly first, right to left; then full depth, left to right.',
        // The same depth serves both boards of the front; only then is it changed for the back.
        '9 Front’s sockets, by the pins’ guide, same cutter and depth: score first, then in to the stop and across along it.',
        '10 Set the dovetail cutter’s depth for the back. Its tails, by the tails’ guide.',
        '11 Back’s pins, by the pins’ guide: fit the straight cutter and its guide bush; set its own depth. Cut a trial in scrap first.',
        '12 Round the tails’ inside arrises to the front’s sockets.',
        '13 Scrape off the paper. Fit dry, and check.',
      ];
      expect(text).toContain(steps.join(' '));
      expect(text).not.toMatch(/Saw and chop the tails|Scribe|Glue the tail/u);
      for (const caution of CAUTIONS) expect(text).toContain(`– ${speak(caution, 'mm')}`);
    });

    it('sends the sockets of a front with a lip to its rebate’s shoulder, fence and stop', () => {
      const of = (bushes: { bush?: number; pinBush?: number }, lip: DrawerSpec['lip'], side = 0.5) =>
        pages(bushes, 'mm', AREAS.A4, {
          ...drawer({
            space: {
              kind: 'opening',
              opening: { width: 280, height: 110, depth: 420 },
              fit: { side, top: 1, behind: 12 },
            },
          }),
          ...(lip && { lip }),
        })
          .map(wordsOf)
          .join(' ')
          .replaceAll('\u00A0', ' ');
      const bushes = { bush: 16, pinBush: 11 };
      const allRound = { sides: 6, top: 6, bottom: 6 };
      expect(of(bushes, allRound)).toContain(
        'Front’s sockets, by the pins’ guide, its fence in the rebate, same cutter and depth: score',
      );
      expect(of(bushes, allRound)).toContain('pins: cutter’s centre stops from shoulder 6.76 –');
      // Without a guide there is no fence.
      expect(of({}, allRound)).not.toContain('fence');
      // A lip along the edges only, with no gap at the sides to cover: the end has no shoulder.
      const edges = of(bushes, { sides: 0, top: 6, bottom: 6 }, 0);
      expect(edges).toContain('Front’s sockets, by the pins’ guide, same cutter and depth: score');
      expect(edges).toContain('pins: cutter’s centre stops from end 6.76 –');
    });

    it('tells after the router’s steps what is left to the hand of corners that it cannot cut whole', () => {
      const spec = inOpening(280, 110, 420, { stock: { ...drawer().stock, side: { thickness: 14 } } });
      const { spacing, slope } = spec.joint;
      const text = pages({ bush: 16, pinBush: 11 }, 'mm', AREAS.A4, {
        ...spec,
        joint: { kind: 'double-lapped', lap: 5, tailLap: 4, spacing, ...(slope && { slope }) },
      })
        .map(wordsOf)
        .join(' ')
        .replaceAll('\u00A0', ' ');
      expect(text).toContain('Front’s sockets, by the pins’ guide, while its end is whole: score first');
      expect(text).toContain(
        'Then the front corners by hand. Round the tails’ inside arrises to the front’s sockets before you fit them.',
      );
      expect(text).toContain('Rebate its end from the inside face, 4 mm long and 15 mm deep.');
      expect(text).not.toMatch(/Tails of the front corners|Cut the pins first/u);
      // The sockets are the dovetail cutter's; no space between tails is.
      expect(text).toContain('dovetail cutter 12.7 12.7');
      expect(text).toContain('tails: dovetail cutter’s depth – 11');
      // From the board's end, whole: 14 less 4.24.
      expect(text).toContain('pins: cutter’s centre stops from end 9.76 –');
    });

    it('leaves the router out of back ends whose only spaces are the outer ones', () => {
      const text = pages({ bush: 16, pinBush: 11 }, 'mm', AREAS.A4, { ...drawer(), backDrop: 0 })
        .map(wordsOf)
        .join(' ')
        .replaceAll('\u00A0', ' ');
      // Of a back that is as high as the sides, the upper half space ends at the sides' edge.
      expect(text).toContain('Saw and chop the lower half space of the sides’ back ends');
      expect(text).toContain('tails: dovetail cutter’s depth 15 11');
      const low = pages({ bush: 16, pinBush: 11 }, 'mm', AREAS.A4, drawer()).map(wordsOf).join(' ');
      // 75 - 16 - 4 mm are left for the back: one tail, and half spaces only.
      expect(low.replaceAll('\u00A0', ' ')).toContain(
        'tails: dovetail cutter’s depth 15 – tails: guide bush 16 –',
      );
      expect(low).not.toContain('depth for the back');
    });

    it('names no guide and no bush where there is none', () => {
      const text = guided({});
      expect(text).toContain(
        'Tails of the front corners, at the centres that are set out: score lightly first',
      );
      expect(text).not.toMatch(/ bush|’ guide/u);
      expect(text).toContain('tails: dovetail cutter’s depth 15 11');
    });

    it('has nothing over anything else and nothing outside, on any paper', () => {
      for (const area of Object.values(AREAS))
        for (const units of ['mm', 'in'] as const)
          expect(pages({ bush: 16, pinBush: 11 }, units, area).flatMap(sheetFaults)).toEqual([]);
    });

    it('gives saw and chisel for all others', () => {
      expect(words(drawer())).toContain(
        '3 Cut a trial joint in the spare length; then cut every part to its finished length. 4 Glue the tail templates on the sides’ ends. 5 Saw and chop the tails. 6 Scribe the pins from the tails, each corner from its own tails. Or use the pin templates. 7 Saw the pins',
      );
      expect(words(drawer())).not.toMatch(/router|cutter|bush/iu);
    });
  });

  it('has nothing small, nothing over anything else and nothing outside, for any drawer on any paper', () => {
    fc.assert(
      fc.property(
        anyDrawer,
        fc.constantFrom<Notation>('mm', 'in', 'in/16', 'in/1000'),
        fc.constantFrom(...Object.values(AREAS)),
        ({ drawer: drawn, parts }, units, area) => {
          const pages = benchSheet(drawn, parts, { units, area }).draw();
          expect(pages.flatMap(sheetFaults)).toEqual([]);
          for (const { size } of pages.flatMap(textsOf)) expect(size).toBeGreaterThanOrEqual(3.3);
          const text = pages.map(wordsOf).join(' ').replaceAll('\u00A0', ' ');
          for (const { length, width, thickness, roughLength } of parts)
            for (const measure of [length, width, thickness, roughLength])
              expect(text).toContain(formatNumber(measure, units));
        },
      ),
      { numRuns: 30 },
    );
  });
});
