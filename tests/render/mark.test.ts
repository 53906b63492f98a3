import { describe, expect, it } from 'vitest';
import { readMark } from '../../src/render/mark.ts';
import { pdfBytes } from './pdfBytes.ts';

const whole = Buffer.from(await pdfBytes([{ width: 210, height: 297, placed: [] }])).toString('latin1');

/** The mark in a text, read by what refuses a place that is no whole number, as some versions of Node do. */
const markIn = (text: string): Promise<string | undefined> =>
  readMark(text.length, async (from, length) => {
    if (!Number.isSafeInteger(from) || from < 0) throw new RangeError(`there is no place ${from}`);
    return Buffer.from(text.slice(from, from + length), 'latin1');
  });

describe('the mark of a PDF', () => {
  it('is found where our writer puts it', async () => {
    expect(await markIn(whole)).toBe('Halfpin');
  });

  it.each([
    ['a trailer', () => '%PDF-1.7 my own'],
    ['an end', () => whole.slice(0, -200)],
    ['a table where the trailer says', () => whole.replace(/startxref\n\d+/u, 'startxref\n1')],
    ['a creator', () => whole.replace('/Creator', '/Creatur')],
    ['the object of its creator', () => whole.replace(/\/Creator \d+ 0 R/u, '/Creator 99999999 0 R')],
    ['its information', () => whole.replace(/\/Info \d+ 0 R/u, '/Info 99999999 0 R')],
  ])('is none in one without %s', async (_, text) => {
    expect(text()).not.toBe(whole);
    expect(await markIn(text())).toBeUndefined();
  });
});
