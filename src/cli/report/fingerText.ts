import type { DrawerSet } from '../../drawer/drawer.ts';
import { type SpacerGroup, spacerList } from '../../drawer/spacers/spacerList.ts';
import type { SpacerPrice } from '../../drawer/spacers/spacerPrices.ts';
import { gapBlock, SPACER_TOLERANCE, spacersToCut } from '../../drawer/spacers/spacersToCut.ts';
import { table } from '../../render/table.ts';
import type { FingerCut } from '../../router/fingers/fingerCut.ts';
import type { SocketWay } from '../../router/fingers/socketWay.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { finest, type Notation, unitWords } from '../../units/notation.ts';
import { terminalLines } from './jointText.ts';

/**
 * How the fingers are set for a corner, and what cuts the pin board along them.
 * @param outer whether any outer space is cut too, where the router has no finger beyond it
 */
export const fingerText = ({ setting, pins }: FingerCut, outer: boolean, unit: Notation): string[] => {
  const { pairs, gaps } = setting;
  const fine = finest(unit);
  return [
    ...terminalLines(
      `The pairs of fingers over the tails, from the reference edge, ${unitWords(unit)}${fine === unit ? '' : `; spacers ${unitWords(fine)}`}:`,
    ),
    ...table(
      ['', 'from', 'to', 'spacer', 'gap above'],
      pairs.map(({ from, to, spacer }, i) => [
        `pair ${i + 1}`,
        formatNumber(from, unit),
        formatNumber(to, unit),
        spacer === 0 ? 'none' : formatNumber(spacer, fine),
        gaps[i] === undefined ? '' : formatNumber(gaps[i], unit),
      ]),
      [false, true, true, true, true],
    ),
    ...(outer
      ? terminalLines(
          'No finger is beyond the half spaces: put a support as high as the fingers under the router beyond each edge.',
        )
      : []),
    ...(pins.kind === 'straight'
      ? terminalLines(beyondText(pins.beyond, unit))
      : [
          ...terminalLines(WAYS[pins.way]),
          ...table(
            ['', 'channel from', 'to'],
            pins.channels.map(([from, to], i) => [
              `socket ${i + 1}`,
              formatNumber(from, unit),
              formatNumber(to, unit),
            ]),
            [false, true, true],
          ),
        ]),
  ];
};

const WAYS: Readonly<Record<SocketWay, string>> = {
  pairs: 'The sockets: set a pair over each pin, between the channels of the guide bush:',
  'half pitch':
    "The sockets: leave the tails' setting, and lay the front half a pitch along. The guide bush's channels:",
  channel: 'The sockets: turn the fingers to their channels, with the same spacers. The guide bush runs:',
  none: 'The sockets: along a guide board, or by hand. The channels of a guide bush would be:',
};

const beyondText = (beyond: number | undefined, unit: Notation): string =>
  beyond === undefined
    ? 'The pins: along a guide board, or by hand.'
    : `The pins: turn the fingers to their tapered ends, with the same spacers, and set the pin board's inside face ${formatLength(Math.abs(beyond), unit)} ${beyond < 0 ? 'short of' : 'beyond'} their mark, ${beyond < 0 ? 'towards their narrow end' : 'towards their wide end'}.`;

/** The spacers of a set, and how it looks with few of them, which `spacerPrices` finds; nothing without fingers. */
export const spacerText = (set: DrawerSet, prices: readonly SpacerPrice[], unit: Notation): string[] => {
  if (set.asked === undefined) return [];
  const groups = spacerList(set);
  return [
    ...(groups.length === 0
      ? ['No pair of fingers needs a spacer.']
      : [
          `The spacers between the fingers of a pair, ${unitWords(finest(unit))}:`,
          ...groupTable(groups, unit),
        ]),
    ...(prices.length === 0
      ? []
      : [
          '',
          'With few different spacers at the front corners (family: spacers):',
          ...priceTable(prices, unit),
        ]),
  ];
};

/** The spacers of a set as parts to cut, one spare among them, and its gap block; nothing without fingers. */
export const spacerPartsText = (set: DrawerSet, unit: Notation): string[] => {
  const groups = spacersToCut(set);
  const block = gapBlock(set);
  const fine = finest(unit);
  return [
    ...(groups.length === 0
      ? []
      : [
          ...terminalLines(
            `The spacers between fingers, one spare counted, ${unitWords(fine)}; their thickness within ${formatLength(SPACER_TOLERANCE, fine)} over or under:`,
          ),
          ...groupTable(groups, unit),
        ]),
    ...(block === undefined
      ? []
      : [`One block ${formatLength(block, fine)} wide checks the gap between any two pairs.`]),
  ];
};

/** Spacers by width, and the corners that need them. */
const groupTable = (groups: readonly SpacerGroup[], unit: Notation): string[] => {
  const rows = table(
    ['width', 'count', 'corners'],
    groups.map(({ width, count, corner }) => [formatNumber(width, finest(unit)), String(count), corner]),
    [true, true, false],
  );
  return rows.flatMap((row, i) => {
    const group = groups[i - (rows.length - groups.length)];
    return group === undefined ? [row] : terminalLines(`${row}  ${group.drawers.join(', ')}`);
  });
};

const priceTable = (prices: readonly SpacerPrice[], unit: Notation): string[] =>
  table(
    ['spacers', 'widest by narrowest', 'half pins', 'drawers changed'],
    prices.map(({ spacers, look }) =>
      look === undefined
        ? [String(spacers), 'cannot be', '', '']
        : [
            String(spacers),
            look.spread.toFixed(3),
            look.halfPins.map((half) => formatNumber(half, unit)).join(' to '),
            String(look.changed.length),
          ],
    ),
    [true, true, true, true],
  );
