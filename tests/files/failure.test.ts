import { describe, expect, it } from 'vitest';
import { Failure, failWith, optionName, refuseOptions, WRONG_INPUT } from '../../src/files/failure.ts';
import { ioMessage } from '../../src/files/ioMessage.ts';
import { sentence } from '../../src/units/complaint.ts';
import { mm, say } from '../../src/units/phrase.ts';

/** What a refusal says, a line each, and its exit status. */
const caught = (work: () => unknown): [readonly string[], number] | undefined => {
  try {
    work();
    return undefined;
  } catch (error) {
    return error instanceof Failure ? [error.lines, error.status] : undefined;
  }
};

describe('sentence', () => {
  it('says what is wrong and what to try, in the unit that the user reads', () => {
    const complaint = { at: ['lap'], says: say`the lap is ${mm(25.4)}`, hint: say`${mm(5)}` };
    expect(sentence(complaint, 'mm')).toBe('the lap is 25.4 mm; try 5mm');
    expect(sentence(complaint, 'in')).toBe('the lap is 1"; try 13/64in');
    expect(sentence({ at: [], says: say`no` }, 'mm')).toBe('no');
  });
});

describe('optionName', () => {
  it('is the option as it is typed', () => {
    expect(optionName(['halfPin'])).toBe('--half-pin');
    expect(optionName(['measuredD1'])).toBe('--measured-d1');
    expect(optionName(['tails', 2])).toBe('--tails');
  });
});

describe('refuseOptions', () => {
  it('ends the run with exit 2 and a line for each complaint, equal ones once', () => {
    const complaint = { at: ['width'], says: say`too wide` };
    expect(
      caught(() => refuseOptions([complaint, { at: ['lap'], says: say`none` }, complaint], 'mm')),
    ).toEqual([['--width: too wide', '--lap: none'], WRONG_INPUT]);
  });
});

describe('failWith', () => {
  const failure = new Failure(['one'], WRONG_INPUT);

  it('adds what a further check finds wrong', () => {
    const check = () => {
      throw new Failure(['two'], WRONG_INPUT);
    };
    expect(caught(() => failWith(failure, check))).toEqual([['one', 'two'], WRONG_INPUT]);
    expect(caught(() => failWith(failure, () => 'sound'))).toEqual([['one'], WRONG_INPUT]);
  });

  it('lets other errors through, untouched and at once', () => {
    const fault = new Error('disk');
    expect(() => failWith(fault, () => expect.unreachable())).toThrow(fault);
    expect(() =>
      failWith(failure, () => {
        throw fault;
      }),
    ).toThrow(fault);
  });
});

describe('ioMessage', () => {
  it('is one line, in plain words where the fault is a usual one', () => {
    const fault = (more: object) => ioMessage(Object.assign(new Error('EIEIO: odd\n at somewhere'), more));
    expect(fault({ code: 'ENOSPC', path: 'a.pdf' })).toBe('a.pdf: the disk is full');
    expect(fault({ code: 'EACCES', path: '/b' })).toBe('/b: this may not be read or written here');
    expect(fault({ code: 'ENOSPC' })).toBe('halfpin: the disk is full');
    expect(fault({ code: 'EIEIO', path: 'a.pdf' })).toBe('a.pdf: EIEIO: odd');
    expect(fault({ code: 'ENOENT', path: '' })).toBe('"": its folder does not exist');
  });

  it.each([
    'EMFILE',
    'ENFILE',
    'ENAMETOOLONG',
    'EFBIG',
    'ENOSPC',
    'EDQUOT',
    'EROFS',
    'ELOOP',
    'EBADF',
    'EBUSY',
    'ERR_FS_EISDIR',
  ])('has words for %s', (code) => {
    expect(ioMessage(Object.assign(new Error(`${code}: odd`), { code, path: 'a' }))).toMatch(
      /^a: [a-z, ]+$/u,
    );
  });
});
