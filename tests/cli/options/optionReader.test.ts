import { describe, expect, it } from 'vitest';
import { optionReader } from '../../../src/cli/options/optionReader.ts';
import { accept, refuse, sentence } from '../../../src/units/complaint.ts';
import { say } from '../../../src/units/phrase.ts';

interface Options {
  readonly width?: string;
  readonly lap?: string;
  readonly tails?: string;
}

const reading = (options: Options, unit: 'mm' | 'in' = 'mm') => {
  const read = optionReader(options, unit);
  const told = () =>
    read.complaints.map((complaint) => `${complaint.at.join('.')}: ${sentence(complaint, unit)}`);
  return { read, told };
};

describe('a reader of options', () => {
  it('reads lengths, a bare number in its unit', () => {
    expect(reading({ width: '2' }).read.length('width')).toBe(2);
    expect(reading({ width: '2' }, 'in').read.length('width')).toBe(50.8);
    expect(reading({ tails: '20, 1cm' }).read.lengths('tails')).toEqual([20, 10]);
  });

  it('gives nothing, and says nothing, where an option is not given', () => {
    const { read, told } = reading({});
    expect([read.length('width'), read.lengths('tails'), read.value('lap', accept)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(told()).toEqual([]);
  });

  it('reads something else where there is something else to read', () => {
    expect(reading({}).read.length('width', '6mm')).toBe(6);
    expect(reading({ width: '7' }).read.length('width', '6mm')).toBe(7);
  });

  it('gathers what is wrong, each at its option, in the order of reading', () => {
    const { read, told } = reading({ width: 'wide', tails: '20,x,y' });
    expect(read.lengths('tails')).toBeUndefined();
    expect(read.length('width')).toBeUndefined();
    expect(read.value('tails', () => refuse({ at: [], says: say`never` }))).toBeUndefined();
    read.need('lap', say`the lap is missing`, say`--lap 5`);
    read.need('width', say`the width is missing`, say`--width 96`);
    expect(told().map((line) => line.replace(/;.*is.*$|; try 18.*$/u, ''))).toEqual([
      'tails: "x" is not a length',
      'tails: "y" is not a length',
      'width: "wide" is not a length',
      'tails: never',
      'lap: the lap is missing; try --lap 5',
    ]);
  });
});
