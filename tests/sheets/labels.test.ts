import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDENTITY } from '../../src/drawing/affine.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { NO_SPLITS, type Piece } from '../../src/paper/piece.ts';
import { splitToFit } from '../../src/paper/split.ts';
import { drawPart, partsOf } from '../../src/paper/tile.ts';
import type { GrooveMark } from '../../src/sheets/template/grooveMark.ts';
import { formatNumber } from '../../src/units/formatLength.ts';
import { inkBox, overlaps } from '../paper/ink.ts';
import { anyName, type KnownJoint, knownJoint } from './anyCorner.ts';
import { faults } from './faults.ts';
import { cornerOf, everyPiece, grooved, textsOf, wordsOf } from './pieces.ts';

const anyHand = fc.constantFrom('left' as const, 'right' as const);

/** A groove that the lowest tail hides, where that is wide enough for one; on every other joint it stops short of the end. */
const grooveIn = ({ tails: [lowest], depth }: KnownJoint, part: number): GrooveMark | undefined => {
  const [from, to] = lowest?.base ?? [0, 0];
  const room = to - from - 2;
  const width = 1 + part * (room - 1);
  return room < 1
    ? undefined
    : {
        offset: from + 1 + (1 - part) * (room - width),
        width,
        ...(part > 0.5 && { stopped: part * (depth - 1) }),
      };
};

/** Whether some word of a piece says one of these. */
const says = (words: readonly string[], ...wordings: readonly string[]): boolean =>
  words.some((word) => wordings.some((wording) => word === wording));

describe('the labels of a piece', () => {
  it('are 2.4 mm high, inside the outline, off every line and off each other, on any joint with any name', () => {
    fc.assert(
      fc.property(
        knownJoint,
        anyName,
        fc.boolean(),
        anyHand,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom('mm' as const, 'in' as const),
        (known, item, flat, hand, part, units) => {
          const groove = grooveIn(known, part);
          const plain = cornerOf(known, { item, hand, units });
          const corner = groove === undefined ? plain : grooved(plain, groove);
          // Of a side's back end too, whose joint starts at the groove's upper edge.
          const above = { offset: 2 + 20 * part, width: 2 + 5 * part };
          const jointFrom = above.offset + above.width;
          const back = {
            ...plain,
            tailBoard: { ...plain.tailBoard, jointFrom, ...(item.length % 2 > 0 && { groove: above }) },
          };
          for (const piece of [...everyPiece(corner, flat), ...everyPiece(back, flat)])
            expect([piece.name, ...faults(piece)]).toEqual([piece.name]);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('give the length to measure whole on every part with a tab, on flat templates of any joint, on the line or over waste', () => {
    fc.assert(
      fc.property(
        knownJoint.filter(({ width }) => width > 150),
        fc.constantFrom('mm' as const, 'in' as const),
        fc.boolean(),
        (known, units, flat) => {
          for (const piece of everyPiece(cornerOf(known, { units }), flat)) {
            const splits = splitToFit(piece, { width: 120, height: 180 });
            if (splits === undefined) continue;
            const whole = piece.draw(splits);
            for (const part of partsOf(piece, splits, 0)) {
              const words = textsOf(drawPart(part, whole, units)).map(({ text }) => text);
              for (const { axis } of part.tabbed) {
                const length = formatNumber(piece.taped[axis]?.length ?? 0, units);
                const told = words.filter((word) => word.includes(length.split(' ')[0] ?? ''));
                // Across a strip for thin boards a long number finds no room; then there is none, not a part of it.
                const wide =
                  textWidth(length, 3.3, 'regular') + 3 <= Math.min(known.tailBoard, known.pinBoard);
                expect([piece.name, words, told.length > 0 || !wide]).toEqual([piece.name, words, true]);
              }
              expect(words.filter((word) => /taped.*…|\d…/u.test(word))).toEqual([]);
              const letters = [...part.tabbed, ...part.covering].map(({ letter }) => letter);
              const joins = words.filter((word) => /^(join )?[A-Z]{1,2}$/.test(word) && word !== 'C');
              expect(joins.map((word) => word.replace('join ', '')).sort()).toEqual(letters.sort());
              // Across the end grain of a thin board the word would hide a line.
              if (!/end$/.test(piece.name)) for (const word of joins) expect(word).toMatch(/^join /);
            }
          }
        },
      ),
      { numRuns: 30 },
    );
  });

  it('are clear of any splits as well, and repeated on every part that has room', () => {
    fc.assert(
      fc.property(
        knownJoint.filter(({ width }) => width > 150),
        anyName,
        anyHand,
        fc.array(fc.tuple(fc.nat(), fc.double({ min: 0, max: 1, noNaN: true })), {
          minLength: 1,
          maxLength: 4,
        }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (known, item, hand, wishes, part) => {
          const groove = grooveIn(known, part);
          const plain = cornerOf(known, { item, hand });
          for (const piece of everyPiece(groove === undefined ? plain : grooved(plain, groove), false)) {
            const y = wishes
              .map(([tail, share]) => {
                const [from, to] = piece.splittable.y[tail % piece.splittable.y.length] ?? [0, 0];
                return from + share * (to - from);
              })
              .sort((a, b) => a - b);
            const splits = { x: piece.splittable.x, y };
            expect([piece.name, ...faults(piece, splits)]).toEqual([piece.name]);
            const levels = [0, ...y, known.width];
            const texts = textsOf(piece.draw(splits)).map((mark) => ({
              text: mark.text,
              box: textBox(mark),
            }));
            levels.slice(1).forEach((to, i) => {
              const from = levels[i] ?? 0;
              const words = texts.filter(({ box }) => box.y0 >= from && box.y1 <= to).map(({ text }) => text);
              // A groove may take the best of a part; without one, 70 mm are enough for any name.
              if (to - from > 70 && groove === undefined) expect([piece.name, ...words]).toContain('C');
            });
          }
        },
      ),
      { numRuns: 100 },
    );
  });

  it('give every fact of a piece, on the smallest joints too', () => {
    fc.assert(
      fc.property(knownJoint, fc.boolean(), anyHand, (known, flat, hand) => {
        const { joint, kind } = known;
        const run = Number(joint.slope.run.toFixed(2));
        for (const piece of everyPiece(cornerOf(known, { hand }), flat)) {
          const words = wordsOf(piece.draw(NO_SPLITS));
          const front = piece.name.startsWith('buttons-front');
          const part = piece.name.endsWith('rod') ? 'rod, left side' : front ? 'front' : 'left side';
          const missing = [
            [`Buttons · ${part}`, `Buttons ${part}`, `Butt… ${part}`],
            ['C'],
            [`slope 1:${run}`, `1:${run}`],
            ['quantity 2', 'qty 2'],
            ['reference edge', 'reference', 'edge'].flatMap((edge) => [`← ${edge}`, `↓ ${edge}`]),
            ['50 mm', '20 mm', '10 mm'],
            [front ? 'left end' : 'front end'],
            ...(front && kind === 'lapped' ? [[`lap ${Number(joint.pinBoard.lap.toFixed(2))} mm`]] : []),
          ].filter((wordings) => !says(words, ...wordings));
          expect([piece.name, words, missing]).toEqual([piece.name, words, []]);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('never say IN or OUT, which are inches or nothing at all', () => {
    fc.assert(
      fc.property(knownJoint, anyName, fc.boolean(), anyHand, (known, item, flat, hand) => {
        for (const piece of everyPiece(cornerOf(known, { item: `${item}s`, hand, units: 'in' }), flat))
          for (const word of wordsOf(piece.draw(NO_SPLITS)))
            expect([piece.name, word]).not.toEqual([piece.name, expect.stringMatching(/^(IN|OUT)$/)]);
      }),
      { numRuns: 60 },
    );
  });

  it('are 1 mm clear of the bar to measure with a rule, on any joint', () => {
    fc.assert(
      fc.property(knownJoint, anyName, fc.boolean(), anyHand, (known, item, flat, hand) => {
        for (const piece of everyPiece(cornerOf(known, { item, hand }), flat)) {
          const drawing = piece.draw(NO_SPLITS);
          const bars = drawing.marks.filter((mark) => mark.kind === 'stroke' && mark.role === 'scale');
          expect(bars.length).toBeGreaterThan(0);
          for (const bar of bars.map((mark) => inkBox([mark], IDENTITY))) {
            const room = { x0: bar.x0 - 1, y0: bar.y0 - 1, x1: bar.x1 + 1, y1: bar.y1 + 1 };
            const near = textsOf(drawing).filter((text) => overlaps(room, textBox(text)));
            expect([piece.name, ...near.map(({ text }) => text)]).toEqual([piece.name]);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('point to the edge that aligns the template, whatever the direction of the text', () => {
    fc.assert(
      fc.property(knownJoint, fc.boolean(), anyHand, (known, flat, hand) => {
        for (const piece of everyPiece(cornerOf(known, { hand }), flat)) {
          const pointing = textsOf(piece.draw(NO_SPLITS)).filter(({ text }) =>
            /^. (reference|edge)/.test(text),
          );
          expect(pointing.length).toBeGreaterThan(0);
          for (const { text, turn } of pointing)
            expect([turn, text[0]]).toEqual([turn, turn === 0 ? '↓' : '←']);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('name every face that a piece covers, and the end grain on its own flat template', () => {
    const onFlap = (face: string) => [`this flap: ${face}`, `other flap: ${face}`];
    const named: Readonly<Record<string, readonly string[]>> = {
      inside: ['INSIDE FACE', 'INSIDE', ...onFlap('INSIDE FACE'), ...onFlap('INSIDE')],
      outside: ['OUTSIDE FACE', 'OUTSIDE', ...onFlap('OUTSIDE FACE'), ...onFlap('OUTSIDE')],
      end: ['END GRAIN', 'END'],
    };
    fc.assert(
      fc.property(knownJoint, anyName, fc.boolean(), (known, item, flat) => {
        const faces = (piece: Piece) =>
          flat
            ? [piece.name.split('-').at(-1) ?? '']
            : piece.name.startsWith('buttons-front') && known.kind === 'lapped'
              ? ['inside']
              : ['inside', 'outside'];
        for (const piece of everyPiece(cornerOf(known, { item }), flat)) {
          if (/rod$/.test(piece.name)) continue;
          const words = wordsOf(piece.draw(NO_SPLITS));
          for (const face of faces(piece))
            expect([face, says(words, ...(named[face] ?? [])), words]).toEqual([face, true, words]);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('never make a piece too large for the smallest paper, nor too long to be cut apart there', () => {
    // ISO 216: A5 is 148 x 210 mm; 6 mm stay white, and the strip at the foot and the bar at the side take their room.
    const room = { width: 148 - 12 - 5, height: 210 - 12 - 10 };
    fc.assert(
      fc.property(knownJoint, anyName, fc.boolean(), (known, item, flat) => {
        for (const piece of everyPiece(cornerOf(known, { item }), flat))
          expect([piece.name, piece.width, piece.height, splitToFit(piece, room)]).not.toContain(undefined);
      }),
      { numRuns: 100 },
    );
  });
});
