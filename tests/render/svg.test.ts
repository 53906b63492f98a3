import { describe, expect, it } from 'vitest';
import type { Drawing, Mark, TextMark } from '../../src/drawing/drawing.ts';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { renderSvg } from '../../src/render/svg.ts';
import { svgWindow } from '../../src/render/svgWindow.ts';
import { FONTS } from './fonts.ts';

const tools = { fonts: FONTS, window: svgWindow() };

/** A box that starts away from the origin, so that a renderer that forgets it is found out. */
const drawing = (...marks: Mark[]): Drawing => ({ box: { x0: -5, y0: 10, x1: 35, y1: 30 }, marks });

const svg = (...marks: Mark[]): string => renderSvg(drawing(...marks), { title: 'Buttons' }, tools);

const label = (text: string, more: Partial<TextMark> = {}): TextMark => ({
  kind: 'text',
  role: 'label',
  text,
  at: [0, 20],
  size: 4,
  turn: 0,
  anchor: 'start',
  weight: 'regular',
  ...more,
});

/** Where each letter of the labels begins: x of the first point of its outline. */
const starts = (file: string): number[] => [...file.matchAll(/M(-?[\d.]+) /g)].map(([, x]) => Number(x));

describe('renderSvg', () => {
  it('writes a piece at full size, y downward from its top left corner, a group for each role', () => {
    const file = svg(
      {
        kind: 'stroke',
        role: 'baseline',
        pen: 'baseline',
        paths: [
          {
            points: [
              [-5, 12.34567],
              [35, 12.34567],
            ],
          },
        ],
      },
      {
        kind: 'stroke',
        role: 'outline',
        pen: 'cut',
        paths: [
          {
            points: [
              [-5, 10],
              [35, 10],
              [35, 30],
            ],
            closed: true,
          },
        ],
      },
      {
        kind: 'stroke',
        role: 'baseline',
        pen: 'lap',
        paths: [
          {
            points: [
              [0, 30],
              [0, 10],
            ],
          },
        ],
      },
      {
        kind: 'stroke',
        role: 'baseline',
        pen: 'baseline',
        paths: [
          {
            points: [
              [1, 30],
              [1, 10],
            ],
          },
        ],
      },
      {
        kind: 'fill',
        role: 'outline',
        tone: 0.8,
        paths: [
          {
            points: [
              [0, 10],
              [1, 10],
              [1, 11],
            ],
            closed: true,
          },
        ],
      },
    );
    expect(file).toBe(
      [
        '<svg xmlns="http://www.w3.org/2000/svg" version="1.1" xmlns:xlink="http://www.w3.org/1999/xlink" width="40mm" height="20mm" viewBox="0 0 40 20">',
        '<title>Buttons</title>',
        '<g class="baseline">',
        '<path fill="none" stroke="black" stroke-width="0.25" d="M0 17.6543L40 17.6543M6 0L6 20"></path>',
        '<path fill="none" stroke="black" stroke-width="0.25" stroke-dasharray="3 1" d="M5 0L5 20"></path>',
        '</g>',
        '<g class="outline">',
        '<path fill="#cccccc" d="M5 20L6 20L6 19Z"></path>',
        '<path fill="none" stroke="black" stroke-width="0.13" d="M0 20L40 20L40 0Z"></path>',
        '</g>',
        '</svg>\n',
      ].join(''),
    );
  });

  it('never uses a transform', () => {
    expect(svg(label('Tail', { turn: 90 }), label('pin', { turn: 180, anchor: 'end' }))).not.toMatch(
      /transform/,
    );
  });

  it('keeps the words of the title, the description and the labels, whatever characters they hold', () => {
    const file = renderSvg(
      drawing(label('<½″ & "1:7">\n'), label('\u0000\ud800'), label('loud', { weight: 'bold' })),
      { title: 'a<b>&c\u0001', description: 'x\u00a0y' },
      tools,
    );
    expect(file).toContain('<title>a&lt;b&gt;&amp;c\ufffd</title><desc>x y</desc>');
    expect(file).toContain('aria-label="&lt;½″ &amp; &quot;1:7&quot;&gt; ; \ufffd\ufffd"');
    expect(file).toContain('aria-label="loud"');
  });

  it('sets letters by their advances, without kerning', () => {
    const [a1 = 0, , a2 = 0] = starts(svg(label('AVA')));
    expect(a2 - a1).toBeCloseTo(textWidth('AV', 4, 'regular'), 3);
    const bold = starts(svg(label('AVA', { weight: 'bold' })));
    expect((bold[2] ?? 0) - (bold[0] ?? 0)).toBeCloseTo(textWidth('AV', 4, 'bold'), 3);
  });

  it('moves text back by its width, or half of it, where its end or middle is anchored', () => {
    const [start = 0] = starts(svg(label('Half pin')));
    const [middle = 0] = starts(svg(label('Half pin', { anchor: 'middle' })));
    const [end = 0] = starts(svg(label('Half pin', { anchor: 'end' })));
    expect(start - middle).toBeCloseTo(textWidth('Half pin', 4, 'regular') / 2, 3);
    expect(start - end).toBeCloseTo(textWidth('Half pin', 4, 'regular'), 3);
  });

  it('draws a box for a character that the font lacks, and nothing for a space', () => {
    expect(starts(svg(label('漢\u{1FAB5} \n')))).toHaveLength(2);
  });

  it('gives the same file for the same drawing', () => {
    expect(svg(label('Tail 3'))).toBe(svg(label('Tail 3')));
  });
});
