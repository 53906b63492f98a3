import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setFittings } from '../../../src/drawer/fittings/setFittings.ts';
import { readProject } from '../../../src/project/readProject.ts';
import { sentence } from '../../../src/units/complaint.ts';
import { typeOut } from '../../../src/units/phrase.ts';
import { value } from '../../value.ts';

type Keys = Readonly<Record<string, unknown>>;

/** Fronts 20 mm thick, sides 11; the groove takes 11 to 16 mm above the reference edge, the clearances are 0.5 and 1. */
const plan = (keys: Keys, drawers: readonly Keys[]): Keys => ({
  stock: { front: { thickness: 20 }, side: { thickness: 11 } },
  joint: { slope: '1:7', pin: 5, halfPin: 6, lap: 5 },
  groove: { offset: 11, width: 5, depth: 5 },
  fit: { side: 0.5, top: 1, behind: 12 },
  ...keys,
  drawers,
});

const BUTTONS = { name: 'Buttons', opening: { width: 281, height: 77, depth: 420 } };

const drawersOf = (keys: Keys, drawers: readonly Keys[]) => {
  const reading = readProject(JSON.stringify(plan(keys, drawers)));
  if (!reading.ok) throw new Error(JSON.stringify(reading.complaints));
  return reading.value.set.drawers;
};

const fitted = (keys: Keys, drawers: readonly Keys[] = [BUTTONS]) => {
  const set = drawersOf(keys, drawers);
  const { of } = value(setFittings(set));
  return set.map((drawer) => of.get(drawer));
};

const pullsAt = (keys: Keys, drawers: readonly Keys[] = [BUTTONS]) =>
  fitted(keys, drawers).map((each) => each?.pulls.map(({ at }) => at));

const refusals = (keys: Keys, drawers: readonly Keys[] = [BUTTONS]): string[] => {
  const result = setFittings(drawersOf(keys, drawers));
  return result.ok ? [] : result.complaints.map((each) => `${each.at.join('.')}: ${sentence(each, 'mm')}`);
};

const adviceOf = (keys: Keys, drawers: readonly Keys[] = [BUTTONS]): string[] =>
  value(setFittings(drawersOf(keys, drawers))).advice.map(
    (each) => `${each.at.join('.')}: ${sentence(each, 'mm')}`,
  );

describe('pulls', () => {
  // The front is 281 - 2 x 0.5 = 280 mm long and 77 - 1 = 76 mm wide.
  it('are in the middle of the front, one to each, unless more is said', () => {
    expect(pullsAt({ pulls: {} })).toEqual([[[140, 38]]]);
    expect(fitted({ pulls: {} })[0]?.pulls[0]?.holes).toEqual([{ at: [140, 38], diameter: 5 }]);
    expect(fitted({})).toEqual([undefined]);
  });

  it('stand above the middle by a length, or by a share that follows the height of each front', () => {
    const Cloth = { name: 'Cloth', opening: { width: 575, height: 191, depth: 420 } };
    // 5 % of 76 is 3.8 and of 190 is 9.5.
    expect(pullsAt({ pulls: { above: '5%' } }, [BUTTONS, Cloth])).toEqual([[[140, 41.8]], [[287, 104.5]]]);
    expect(pullsAt({ pulls: { above: 4 } }, [BUTTONS, Cloth])).toEqual([[[140, 42]], [[287, 99]]]);
    expect(pullsAt({ pulls: { above: -2 } })).toEqual([[[140, 36]]]);
  });

  it('are two as far from each end as is said, their holes side by side', () => {
    expect(pullsAt({ pulls: { number: 2 } })).toEqual([
      [
        [70, 38],
        [210, 38],
      ],
    ]);
    expect(pullsAt({ pulls: { number: 2, fromEnds: 60 } })).toEqual([
      [
        [60, 38],
        [220, 38],
      ],
    ]);
    const [each] = fitted({ pulls: { number: 2, fromEnds: '30%', holes: { diameter: 4, spacing: 64 } } });
    expect(each?.pulls.map(({ holes }) => holes.map(({ at: [x], diameter }) => [x, diameter]))).toEqual([
      [
        [52, 4],
        [116, 4],
      ],
      [
        [164, 4],
        [228, 4],
      ],
    ]);
  });

  it('are measured from the edges of the lip, and the height that they follow is that of the whole front', () => {
    // With a lip of 6 and clearances of 0.5 and 1, the front is 281 + 12 = 293 long and 77 + 12 = 89 wide.
    expect(pullsAt({ pulls: {}, front: { lip: 6 } })).toEqual([[[146.5, 44.5]]]);
  });

  it('of one drawer may differ from the set, or be left out', () => {
    const keys = { pulls: { number: 2, above: 4 } };
    expect(
      pullsAt(keys, [
        BUTTONS,
        { ...BUTTONS, name: 'Thread', pulls: { number: 0 } },
        { ...BUTTONS, name: 'Ribbon', pulls: { number: 1, above: 0 } },
      ]),
    ).toEqual([
      [
        [70, 42],
        [210, 42],
      ],
      undefined,
      [[140, 38]],
    ]);
  });
});

describe('pulls in line with those of another drawer', () => {
  const cabinet = {
    width: 575,
    height: 300,
    depth: 420,
    rail: 20,
    divider: 15,
    rows: [['Buttons', 'Buttons'], 'Cloth'],
    heights: [77, 'auto'],
  };
  const drawers = (cloth: Keys, buttons: Keys = {}) => [
    { name: 'Buttons', ...buttons },
    { name: 'Cloth', ...cloth },
  ];
  const inLine = { pulls: { lineUpWith: 'Buttons' } };

  it('stand over the middles of the narrow drawers', () => {
    // Openings of (575 - 15)/2 = 280 begin at 0 and 295: their middles are 140 and 435; Cloth's front begins at 0.5.
    // It is 300 - 20 - 77 - 1 = 202 high.
    expect(pullsAt({ cabinet, pulls: {} }, drawers(inLine))[1]).toEqual([
      [139.5, 101],
      [434.5, 101],
    ]);
  });

  it('stand over those of every drawer in its row, which have their own', () => {
    const rows = [[{ name: 'Buttons', width: 200 }, 'Thread'], 'Cloth'];
    const set = [{ name: 'Buttons' }, { name: 'Thread' }, { name: 'Cloth' }];
    // Thread has 575 - 200 - 15 = 360, from 215: its middle is at 395. Clearances of 0.5 are taken off.
    expect(pullsAt({ cabinet: { ...cabinet, rows }, pulls: { lineUpWith: 'Buttons' } }, set)).toEqual([
      [[99.5, 38]],
      [[179.5, 38]],
      [
        [99.5, 101],
        [394.5, 101],
      ],
    ]);
  });

  it('is for all drawers but the one that is named, where it is given for all', () => {
    expect(pullsAt({ cabinet, pulls: { lineUpWith: 'buttons' } }, drawers({}))).toEqual([
      [[139.5, 38]],
      [
        [139.5, 101],
        [434.5, 101],
      ],
    ]);
  });

  it('is refused where it says nothing', () => {
    const told = (cloth: Keys, buttons: Keys = {}) =>
      refusals({ cabinet, pulls: {} }, drawers(cloth, buttons));
    expect(told({ pulls: { lineUpWith: 'Button' } })).toEqual([
      'drawers.1.pulls.lineUpWith: "Cloth": there is no drawer called "Button"; name one of Buttons, Cloth',
    ]);
    expect(told(inLine, { pulls: { number: 0 } })).toEqual([
      'drawers.1.pulls.lineUpWith: "Cloth": no pull of the row of "Buttons" stands over or under this front; there must be one or 2; name a drawer of another row, or give fromEnds in place of this',
    ]);
    expect(told(inLine, { pulls: { number: 2 } })).toEqual([
      'drawers.1.pulls.lineUpWith: "Cloth": 4 pulls of the row of "Buttons" stand over or under this front; there must be one or 2; name a drawer of another row, or give fromEnds in place of this',
    ]);
    expect(told({ pulls: { number: 1, lineUpWith: 'Buttons' } })).toEqual([
      'drawers.1.pulls.number: "Cloth": 2 pulls of the row of "Buttons" stand over or under this front, and 1 is wished; try 2, or leave the number out',
    ]);
    expect(refusals({ pulls: inLine.pulls }, [BUTTONS, { ...BUTTONS, name: 'Cloth' }])).toEqual([
      'drawers.1.pulls.lineUpWith: "Cloth": pulls line up where drawers have places in a cabinet, and "Cloth" has none; name it in cabinet: rows, or give fromEnds in place of this',
    ]);
  });

  it('is refused with a row whose pulls line up with others themselves', () => {
    const rows = [['Buttons', 'Buttons'], 'Cloth', 'Patches'];
    const all = [...drawers(inLine), { name: 'Patches', pulls: { lineUpWith: 'Cloth' } }];
    expect(refusals({ cabinet: { ...cabinet, rows, heights: 'equal' }, pulls: {} }, all)).toEqual([
      'drawers.2.pulls.lineUpWith: "Patches": the pulls of "Cloth", in the row of "Cloth", line up with others themselves; name the drawer that those line up with',
    ]);
  });

  it('is refused for equal drawers that do not stand alike over them', () => {
    const rows = [
      ['Buttons', 'Buttons', 'Thread'],
      ['Cloth', 'Cloth'],
    ];
    expect(
      refusals({ cabinet: { ...cabinet, rows }, pulls: {} }, [...drawers(inLine), { name: 'Thread' }]),
    ).toEqual([
      'drawers.1.pulls.lineUpWith: "Cloth": the places of this drawer do not stand alike over the pulls of the row of "Buttons", and equal drawers are drilled alike; give them two names, or give fromEnds in place of this',
    ]);
  });
});

describe('a hole', () => {
  it('that would run into the groove is refused with the nearest that does not', () => {
    // A hole of 5 is kept 3 mm above the groove, which ends at 16: 21.5 up, 16.5 below the middle.
    expect(refusals({ pulls: { above: -20 } })).toEqual([
      'drawers.0.pulls.above: "Buttons": a hole of 5 mm for a pull, 18 mm above the front\'s lower edge, would run into the groove, or come within 3 mm of it; try -16.5mm',
    ]);
    expect(refusals({ pulls: { above: -16.5 } })).toEqual([]);
  });

  it('that would run off the front or into its lip is refused', () => {
    // The most is 76 - 3 - 2.5 = 70.5 up, 32.5 above the middle.
    const size = { width: 10, height: 10 };
    expect(refusals({ pulls: { above: 34, size } })).toEqual([
      'drawers.0.pulls.above: "Buttons": a hole of 5 mm for a pull, 72 mm above the front\'s lower edge, would run into the front\'s upper edge, or come within 3 mm of it; try 32.5mm',
    ]);
    // With a lip of 6 the front is 89 wide and the box ends at 6 + 76 = 82: at most 76.5 up, 32 above the middle.
    expect(refusals({ pulls: { above: 34, size }, front: { lip: 6 } })[0]).toMatch(
      /into the lip.*; try 32mm$/u,
    );
  });

  it('that would run into a corner joint is refused', () => {
    // The side is 11 thick: at least 11 + 3 + 2.5 = 16.5 from the end.
    expect(refusals({ pulls: { number: 2, fromEnds: 12, size: { width: 20, height: 20 } } })).toEqual([
      'drawers.0.pulls.fromEnds: "Buttons": 12 mm from the front\'s end a hole would run into the corner joint; try 16.5mm',
    ]);
    expect(refusals({ pulls: { number: 2, fromEnds: 40, holes: { spacing: 64 } } })).toEqual([
      'drawers.0.pulls.fromEnds: "Buttons": 8 mm from the front\'s end a hole would run into the corner joint; try 48.5mm',
    ]);
    // Between the sides there is 280 - 22 = 258, and 5.5 is kept at each end.
    expect(refusals({ pulls: { holes: { spacing: 250 } } })).toEqual([
      'drawers.0.pulls.holes.spacing: "Buttons": holes 250 mm apart would run into the corner joints, or come within 3 mm of them: between the sides there is 258 mm; try 247mm',
    ]);
  });

  it('of two pulls that would meet is refused', () => {
    expect(refusals({ pulls: { number: 2, fromEnds: 130, size: { width: 30, height: 30 } } })).toEqual([
      'drawers.0.pulls.fromEnds: "Buttons": two pulls, 130 mm from the front\'s ends, would meet in the middle: the front is 280 mm long; try 125mm',
    ]);
  });

  it('that would run into the lock is refused, and a pull that would cover its keyhole', () => {
    // The body reaches from 76 down to 76 - 32 = 44: the hole is at most 44 - 5.5 = 38.5 up.
    expect(refusals({ pulls: { above: 2, size: { width: 10, height: 10 } }, locks: {} })[0]).toMatch(
      /into the lock.*; try 0\.5mm$/u,
    );
    // The keyhole, 6 wide, is 76 - 20 = 56 up; a pull 40 high under it is at most 56 - 3 - 20 = 33 up, 5 below the middle.
    expect(refusals({ pulls: { size: { width: 40, height: 40 } }, locks: {} })).toEqual([
      'drawers.0.pulls.above: "Buttons": a pull 40 mm high, its middle 38 mm above the front\'s lower edge, would cover the keyhole; try -5mm',
    ]);
  });

  it('that is accepted keeps clear of everything, and one that is refused is accepted where it is told to be', () => {
    const least = 5 / 2 + 3;
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: 10, max: 200, noNaN: true }),
        (above, fromEnds) => {
          const pulls = { number: 2, above, fromEnds, size: { width: 12, height: 12 } };
          const result = setFittings(drawersOf({ pulls }, [BUTTONS]));
          if (result.ok)
            for (const { at } of [...result.value.of.values()][0]?.pulls ?? []) {
              const [x, y] = at;
              expect(x).toBeGreaterThanOrEqual(11 + least - 1e-6);
              expect(x).toBeLessThanOrEqual(280 - 11 - least + 1e-6);
              expect(y).toBeLessThanOrEqual(76 - least + 1e-6);
              expect(y <= 11 - least + 1e-6 || y >= 16 + least - 1e-6).toBe(true);
            }
          else {
            const hints = result.complaints.map(({ at, hint = [] }) => [at.at(-1), typeOut(hint, 'mm')]);
            const mended = { ...pulls, ...Object.fromEntries(hints) };
            expect(refusals({ pulls: mended })).toEqual([]);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('a lock', () => {
  it('is in the middle of the upper edge; behind a lip, of the rebate', () => {
    expect(fitted({ locks: {} })[0]?.lock).toEqual({
      keyhole: { at: [140, 56], diameter: 6 },
      body: { x0: 115, y0: 44, x1: 165, y1: 76 },
      depth: 10,
      pin: 20,
    });
    // The box behind the lip ends 6 + 76 up.
    expect(fitted({ locks: {}, front: { lip: 6 } })[0]?.lock?.keyhole.at).toEqual([146.5, 62]);
  });

  it('that does not fit is refused with what does', () => {
    const body = { width: 260, height: 60, depth: 19 };
    expect(refusals({ locks: { body, pin: 2 } })).toEqual([
      // 280 - 22 - 2 x 3, 76 - 16 - 3, and 20 - 2.
      'drawers.0.locks.body.width: "Buttons": the lock\'s body is 260 mm wide, and would meet the corner joints; it may be at most 252 mm; try 252mm',
      'drawers.0.locks.body.height: "Buttons": the lock\'s body is 60 mm high, and would meet the groove; it may be at most 57 mm; try 57mm',
      'drawers.0.locks.body.depth: "Buttons": the lock\'s body is 19 mm deep, and would show through the front; it may be at most 18 mm; try 18mm',
      // A keyhole of 6 with 1 mm round it, on a body that is as high as it may be.
      'drawers.0.locks.pin: "Buttons": the keyhole of 6 mm, 2 mm below the upper edge, would run off the lock\'s body, 57 mm high; it must be 4 mm to 53 mm below; try 4mm',
    ]);
  });

  it('whose keyhole has no place on its body is refused with one that has', () => {
    // The body ends 32 down and the keyhole is 20 down: 12 are left, 11 with 1 round it.
    expect(refusals({ locks: { keyhole: 60 } })).toEqual([
      'drawers.0.locks.keyhole: "Buttons": a keyhole of 60 mm has no place on the lock\'s body, 50 mm wide and 32 mm high, as 1 mm of it must be left all round; try 22mm, or make the body larger (locks: body)',
    ]);
    expect(refusals({ locks: { keyhole: 22 }, pulls: { number: 0 } })).toEqual([]);
    // Its middle is 56 up: a pull 40 high under a keyhole of 22 is at most 56 - 11 - 20 = 25 up, 13 below the middle.
    const pulls = { size: { width: 40, height: 40 } };
    expect(refusals({ locks: { keyhole: 60 }, pulls })[1]).toMatch(/cover the keyhole; try -13mm$/u);
    expect(refusals({ locks: { keyhole: 22 }, pulls: { ...pulls, above: -13 } })).toEqual([]);
    // Off the body, there is no keyhole to try.
    expect(refusals({ locks: { keyhole: 60, pin: 40 } })[0]).toMatch(/all round; make the body larger/u);
  });
});

describe('stops', () => {
  it('stand as far behind the rail as the front is thick, less its lip', () => {
    // The opening is 281 wide: a fifth of it is 56.2. The bottom's underside is 11 above the rail.
    expect(fitted({ stops: {} })[0]?.stops).toEqual({
      at: [56.2, 281 - 56.2],
      behind: 20,
      width: 40,
      thickness: 6,
      depth: 25,
      under: 5,
    });
    // The lip is as thick as the lap, 5.
    expect(fitted({ stops: { number: 1 }, front: { lip: 6 } })[0]?.stops).toMatchObject({
      at: [140.5],
      behind: 15,
    });
  });

  it('that would meet the bottom, a side, a slip or each other are refused', () => {
    expect(refusals({ stops: { thickness: 10.5 } })[0]).toMatch(
      /at most 10 mm; try 10mm, or raise the groove/u,
    );
    // At most 2 x 0.5 + 11 + 1 = 13 from the side of the opening: its middle is 33 from there.
    expect(refusals({ stops: { fromSides: 30 } })[0]).toMatch(
      /meet the drawer's side; it must be 33 mm to 120\.5 mm from there; try 33mm$/u,
    );
    const slips = { bottom: { slips: { width: 10, height: 18 } } };
    expect(refusals({ ...slips, stops: { fromSides: 40 } })[0]).toMatch(
      /meet the drawer's slip.*; try 43mm$/u,
    );
    expect(refusals({ stops: { fromSides: 130 } })[0]).toMatch(/meet each other.*; try 120\.5mm$/u);
    // Between 13 and 268 there is 255, for two 127.5.
    expect(refusals({ stops: { width: 130 } })[0]).toMatch(/between them there is 255 mm; try 127\.5mm$/u);
    // The drawer is 420 - 12 = 408 deep.
    expect(refusals({ stops: { depth: 400 } })[0]).toMatch(/past the drawer's back; try 388mm$/u);
  });

  it('that do not leave the front flush are told of', () => {
    expect(adviceOf({ stops: { behind: 18 } })).toEqual([
      'drawers.0.stops.behind: "Buttons": the front stands 2 mm proud of the rail when it meets these stops; try 20mm',
    ]);
    expect(adviceOf({ stops: { behind: 16 }, front: { lip: 6 } })).toEqual([
      'drawers.0.stops.behind: "Buttons": the front\'s lip meets the cabinet 1 mm before the front meets these stops, so they do nothing; try 15mm',
    ]);
  });
});

describe('stops on the rails of a cabinet', () => {
  /** Two rows: Buttons on a rail, Cloth on the cabinet's bottom, 300 deep with 12 behind. */
  const cabinet = (width: number) => ({
    width: 300,
    height: 200,
    depth: 300,
    rail: 18,
    rails: { width },
    rows: ['Buttons', 'Cloth'],
  });
  const both = [{ name: 'Buttons' }, { name: 'Cloth' }];
  const past = (most: string) =>
    `drawers.0.stops.depth: "Buttons": stops of 25 mm from front to back, 20 mm behind the front, extend ${most}`;

  it("that extend past those are told of, but not on the cabinet's bottom", () => {
    // 20 behind and 25 deep.
    expect(adviceOf({ cabinet: cabinet(40), stops: {} }, both)).toEqual([
      past('5 mm past the rail under them, which is 40 mm wide; try 20mm'),
    ]);
    expect(adviceOf({ cabinet: cabinet(30), stops: {} }, both)).toEqual([
      past('15 mm past the rail under them, which is 30 mm wide; try 10mm'),
    ]);
    expect(adviceOf({ cabinet: cabinet(45), stops: {} }, both)).toEqual([]);
  });

  it('are refused behind their rail, with what holds a screw there', () => {
    // 10 of a rail of 31 are left behind 21.
    expect(refusals({ cabinet: cabinet(31), stops: { behind: 31 } }, both)).toEqual([
      'drawers.0.stops.behind: "Buttons": stops 31 mm behind the rail\'s front edge would lie behind the rail, which is 31 mm wide; try 21mm',
    ]);
    // A front of 20 on rails of 15.
    expect(refusals({ cabinet: cabinet(15), stops: {} }, both)).toEqual([
      'drawers.0.stops.behind: "Buttons": stops 20 mm behind the rail\'s front edge would lie behind the rail, which is 15 mm wide; try 5mm, or make the rail wider (cabinet: rails)',
    ]);
  });
});

it("stops that a drawer meets after the cabinet's back are refused with the most that fits", () => {
  // The front is 20 thick, and 12 are left behind the drawer when it is flush.
  expect(refusals({ stops: { behind: 33 } })).toEqual([
    'drawers.0.stops.behind: "Buttons": the drawer meets the cabinet\'s back, 12 mm behind it, before its front meets stops 33 mm behind the rail\'s front edge; try 32mm',
  ]);
  expect(refusals({ stops: { behind: 32 } })).toEqual([]);
});

describe('what a pull covers', () => {
  const told = (pulls: Keys, keys: Keys = {}): string[] => refusals({ ...keys, pulls });

  it('lies on the front, or is refused with the nearest place where it does', () => {
    // 14 high on a front 76 high: its middle is at least 7 up, but its hole only from 16 + 5.5 = 21.5, or up to 11 - 5.5 = 5.5.
    expect(told({ above: -32.5, size: { width: 14, height: 14 } })).toEqual([
      'drawers.0.pulls.above: "Buttons": a pull 14 mm high, its middle 5.5 mm above the front\'s lower edge, would extend 1.5 mm below it; try -16.5mm',
    ]);
    // 60 high: its middle is 30 to 46 up, 8 below to 8 above the middle of the front.
    expect(told({ above: -16, size: { width: 60, height: 60 } })[0]).toMatch(/8 mm below it; try -8mm$/u);
    expect(told({ above: 10, size: { width: 60, height: 60 } })[0]).toMatch(
      /2 mm above the upper edge; try 8mm$/u,
    );
    expect(told({ number: 2, fromEnds: 20, size: { width: 60, height: 20 } })).toEqual([
      'drawers.0.pulls.fromEnds: "Buttons": a pull 60 mm wide, its middle 20 mm from the front\'s end, would extend 10 mm beyond it; try 30mm',
    ]);
  });

  it('is no larger than the front, and no narrower than its holes', () => {
    expect(told({ size: { width: 290, height: 80 } })).toEqual([
      'drawers.0.pulls.size.width: "Buttons": a pull 290 mm wide would extend beyond the front, which is 280 mm long; try 280mm',
      'drawers.0.pulls.size.height: "Buttons": a pull 80 mm high would extend beyond the front, which is 76 mm high; try 76mm',
    ]);
    // 64 + 5.
    expect(told({ holes: { spacing: 64 }, size: { width: 40, height: 12 } })).toEqual([
      'drawers.0.pulls.size.width: "Buttons": a pull 40 mm wide would not cover its holes, which take 69 mm; try 69mm',
    ]);
    // Two, whose middles are kept 16.5 from the ends, have 280 - 33 for their middles and two halves: more than the 140 of a half.
    expect(told({ number: 2, size: { width: 150, height: 20 } })[0]).toMatch(/two pulls.* try 140mm$/u);
  });

  it('does not meet the other where they line up with those of another row', () => {
    const cabinet = { width: 575, height: 300, depth: 420, rail: 20, divider: 15 };
    const rows = [[{ name: 'Buttons', width: 60 }, { name: 'Thread', width: 60 }, 'Patches'], 'Cloth'];
    const size = { width: 80, height: 20 };
    const names = ['Buttons', 'Thread', 'Patches'].map((name) => ({
      name,
      ...(name === 'Patches' && { pulls: { number: 0 } }),
    }));
    // Middles of openings 60 wide with a divider of 15 between them are 75 apart; the first is 30 - 0.5 from the front's end.
    const line = (width: number) => ({ lineUpWith: 'Buttons', size: { ...size, width } });
    const lined = (width: number) =>
      refusals({ cabinet: { ...cabinet, rows }, pulls: {} }, [
        ...names,
        { name: 'Cloth', pulls: line(width) },
      ]);
    expect(lined(59)).toEqual([]);
    expect(lined(76)[0]).toMatch(
      /lineUpWith: "Cloth": in line with Buttons, a pull 76 mm wide.*8\.5 mm beyond/u,
    );
  });

  it('lies on the front where it is accepted, and is accepted where it is told to be', () => {
    const run = (units: 'mm' | 'in') => {
      const of = (most: number) => fc.integer({ min: 8, max: most });
      fc.assert(
        fc.property(
          fc.record({ width: of(120), height: of(100) }),
          fc.integer({ min: -60, max: 60 }),
          fc.integer({ min: 10, max: 160 }),
          fc.constantFrom(1, 2),
          fc.boolean(),
          fc.integer({ min: 46, max: 120 }),
          ({ width, height }, above, fromEnds, number, hasLock, opening) => {
            const typed = (each: number) => `${each}mm`;
            const buttons = {
              name: 'Buttons',
              opening: { width: '281mm', height: typed(opening), depth: '420mm' },
            };
            const keys = { ...IN_MM, units, ...(hasLock && { locks: { pin: '8mm', body: LOW } }) };
            const pulls = {
              number,
              above: typed(above),
              fromEnds: typed(fromEnds),
              size: { width: typed(width), height: typed(height) },
            };
            const result = setFittings(drawersOf({ ...keys, pulls }, [buttons]));
            if (result.ok) {
              const [fittings] = [...result.value.of.values()];
              for (const { outline } of fittings?.pulls ?? []) {
                expect(Math.min(outline.x0, outline.y0)).toBeGreaterThanOrEqual(-1e-6);
                expect(outline.x1).toBeLessThanOrEqual(280 + 1e-6);
                expect(outline.y1).toBeLessThanOrEqual(opening - 1 + 1e-6);
              }
              return;
            }
            const hints = result.complaints.flatMap(({ at, hint }) =>
              hint ? [[at.at(-1) ?? '', typeOut(hint, units)] as const] : [],
            );
            const size = { ...pulls.size };
            const mended: Record<string, unknown> = { ...pulls, size };
            for (const [key, hint] of hints)
              if (key === 'width' || key === 'height') size[key] = hint;
              else mended[String(key)] = hint;
            const left = setFittings(drawersOf({ ...keys, pulls: mended }, [buttons]));
            const still = left.ok ? [] : left.complaints.map(({ at }) => at.at(-1));
            for (const [key] of hints) expect(still).not.toContain(key);
            if (hints.length === result.complaints.length) expect(still).toEqual([]);
          },
        ),
        { numRuns: 30 },
      );
    };
    run('mm');
    run('in');
  });
});

/** A lock that even the lowest of those fronts holds. */
const LOW = { width: '40mm', height: '15mm', depth: '8mm' };
/** The plan's lengths with their unit. */
const IN_MM = {
  stock: { front: { thickness: '20mm' }, side: { thickness: '11mm' } },
  joint: { slope: '1:7', pin: '5mm', halfPin: '6mm', lap: '5mm' },
  groove: { offset: '11mm', width: '5mm', depth: '5mm' },
  fit: { side: '0.5mm', top: '1mm', behind: '12mm' },
};
