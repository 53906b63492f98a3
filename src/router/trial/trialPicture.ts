import { formatLength } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import type { DepthMove } from './depthCorrection.ts';
import type { GuideMove } from './guideCorrection.ts';

/** The socket seen from the pin board's end, in letters: how deep the trial was cut, dotted, and how deep the next one is. */
export const depthPicture = ({ depth, change }: DepthMove, unit: Notation): string[] => {
  const length = (value: number): string => formatLength(value, unit);
  const next = { name: `next, ${length(depth)}`, floor: '_' };
  const trial = { name: `trial, ${length(depth - change)}`, floor: '.' };
  const floors =
    change === 0
      ? [{ ...next, name: `right at ${length(depth)}` }]
      : change > 0
        ? [trial, next]
        : [next, trial];
  const column = Math.max('inside face'.length, ...floors.map(({ name }) => name.length));
  const line = (name: string, picture: string): string => `  ${name.padEnd(column)}  ${picture}`.trimEnd();
  return [
    line('inside face', `${'─'.repeat(14)}┐${' '.repeat(8)}┌${'─'.repeat(14)}`),
    line('', `${' '.repeat(13)}/${' '.repeat(10)}\\`),
    ...floors.map(({ name, floor }, i) => line(name, `${' '.repeat(12 - i)}/${floor.repeat(12 + 2 * i)}\\`)),
  ];
};

/** A pin seen from the pin board's end, in letters, and which way its guide moves. */
export const guidePicture = ({ move }: GuideMove, unit: Notation): string[] => {
  const arrow = move > 0 ? '↑' : '↓';
  const beside = (text: string): string => (move === 0 ? '' : `  ${arrow} ${text}`.trimEnd());
  const how =
    move === 0 ? '' : `${formatLength(Math.abs(move), unit)}, for ${move > 0 ? 'wider' : 'narrower'} pins`;
  return [
    `  outside face  ${'─'.repeat(9)}/──────\\${'─'.repeat(9)}${beside('')}`,
    `                ${' '.repeat(8)}/  pin   \\${' '.repeat(8)}${beside(how)}`,
    `  inside face   ${'─'.repeat(7)}/──────────\\${'─'.repeat(7)}${beside('')}`,
  ].map((row) => row.trimEnd());
};
