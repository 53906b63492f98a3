import type { Family } from '../../drawer/drawer.ts';
import { blockPicture } from '../../joint/blockPicture.ts';
import { dividers, glueArea, groupDividers } from '../../joint/gauges.ts';
import { type Joint, meanTail } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { railWork, type TopRail } from '../../joint/topRail.ts';
import { type Complaint, sentence } from '../../units/complaint.ts';
import { formatArea, formatLength, formatNumber, nearestMark } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { degrees, formatSlope } from '../../units/slope.ts';
import { wrapText } from '../../units/wrapText.ts';
import { COLUMNS, fitTable } from './fitTable.ts';

/**
 * A corner to mark out from, without a printer: a small picture, every line's place, and the settings.
 * @param pinBoardFrom what the pin board's faces are gauged from, where that is not its end
 */
export const jointText = (heading: string, joint: Joint, unit: Notation, pinBoardFrom?: string): string[] => {
  const { kind, width, tailBoard, pinBoard, slope, tails } = joint;
  const length = (value: number): string => formatLength(value, unit);
  const picture = blockPicture(joint, 64).map((row, i) => `${['tip ', '', '', 'base'][i]?.padEnd(6)}${row}`);
  const own = kindOf(joint).lengths.map(({ word, of }) => `a ${word} of ${length(of(joint))}`);
  return [
    ...terminalLines(
      `${heading}: ${kind} joint, ${length(width)} wide, tail board ${length(tailBoard.thickness)}, pin board ${length(pinBoard.thickness)}${own.length === 0 ? '' : ` with ${own.join(', ')}`}, slope ${formatSlope(slope)} (${degrees(slope).toFixed(2)}°)`,
    ),
    ...terminalLines(countText(joint, unit)),
    '',
    ...(picture.length === 0 ? [] : [...picture, '']),
    `From the reference edge, ${unitWords(unit)}:`,
    ...fitTable(
      ['', 'tip from', 'tip to', 'base from', 'base to', 'tail width'],
      tails.map(({ tip, base }, i) => [
        `tail ${i + 1}`,
        ...[...tip, ...base, nearestMark(tip[1], unit) - nearestMark(tip[0], unit)].map((value) =>
          formatNumber(value, unit),
        ),
      ]),
      [false, true, true, true, true, true],
      1,
    ),
    '',
    ...smallPinText(joint, unit),
    ...settingsText(joint, unit, pinBoardFrom).flatMap(terminalLines),
  ];
};

/** Where the small pins of a hound's tooth lie. */
const smallPinText = ({ smallPins }: Joint, unit: Notation): string[] =>
  smallPins === undefined
    ? []
    : [
        ...fitTable(
          ['', 'narrow from', 'narrow to', 'wide from', 'wide to', 'depth'],
          smallPins.map(({ narrow, wide, depth }, i) => [
            `small pin ${i + 1}`,
            ...[...narrow, ...wide, depth].map((value) => formatNumber(value, unit)),
          ]),
          [false, true, true, true, true, true],
          1,
        ),
        '',
      ];

/**
 * How a single corner is made, where its kind has an order of work of its own, and which faces of a carcase show it.
 * @param routed whether a router cuts what it can of it first
 * @param rail what its tail board is, where that is a rail over the drawers
 */
export const workText = (joint: Joint, unit: Notation, routed: boolean, rail?: TopRail): string[] => {
  const { work, inCarcase } = kindOf(joint);
  const steps =
    rail === undefined
      ? work(joint, { tail: 'tail board', pin: 'pin board', routed })
      : railWork(rail, joint, routed);
  return [
    ...(steps.length === 0
      ? []
      : [
          '',
          routed && rail === undefined ? 'Order of work, after the router:' : 'Order of work:',
          ...steps.flatMap((step, i) => terminalLines(`${i + 1}. ${speak(step, unit)}`)),
        ]),
    ...(inCarcase === undefined || rail !== undefined ? [] : ['', ...terminalLines(speak(inCarcase, unit))]),
  ];
};

/** Each piece of advice, on one or more lines. */
export const adviceText = (advice: readonly Complaint[], unit: Notation): string[] =>
  advice.flatMap((each) => terminalLines(`advice: ${sentence(each, unit)}`));

/** `5 tails of 21.4 mm; 4 would be 27.9 mm, 6 would be 16.9 mm`. */
const countText = (joint: Joint, unit: Notation): string => {
  const { tails, even, alternatives } = joint;
  const mean = `${tails.length} ${tails.length === 1 ? 'tail' : 'tails'} of ${even ? '' : 'on average '}${formatLength(meanTail(joint), unit)}`;
  const others = alternatives.map((other) => `${other.tails} would be ${formatLength(other.tip, unit)}`);
  return others.length === 0 ? mean : `${mean}; ${others.join(', ')}`;
};

/** Marking gauge, dividers and glue area, one a line. */
const settingsText = (joint: Joint, unit: Notation, pinBoardFrom = 'its end'): string[] => {
  const length = (value: number): string => formatLength(value, unit);
  const [stepping, inGroups] = [dividers(joint), groupDividers(joint)];
  const shoulders = (['lower', 'upper'] as const)
    .filter((edge) => joint.shoulder[edge] > 0)
    .map((edge) => `${length(joint.shoulder[edge])} at the ${edge} edge`);
  return [
    ...kindOf(joint)
      .gauges(joint)
      .map(({ board, on, from, line, length: set }) => {
        const end = board === 'pin' ? pinBoardFrom : 'its end';
        return `gauge  ${board} board, ${line === undefined ? '' : `${line}, `}${on}, from ${from === 'end' ? end : `the ${from}`}: ${length(set)}`;
      }),
    ...(shoulders.length === 0 ? [] : [`shoulder  mitred right through, ${shoulders.join(', ')}`]),
    ...(joint.mitre === undefined
      ? []
      : [
          `mitre  from the inside corner to the outside corner: ${Number(joint.mitre.degrees.toFixed(2))}° off the tail board's face`,
        ]),
    ...(joint.sawCut === undefined
      ? []
      : [
          `lid    saw it off, when the box is glued up, ${length(joint.sawCut[0])} to ${length(joint.sawCut[1])} from the reference edge`,
        ]),
    ...(stepping === undefined
      ? []
      : [
          unit === 'mm'
            ? `dividers  open to ${length(stepping.step)}: step up from ${length(stepping.from)}, then down from ${length(stepping.downFrom)}`
            : `dividers  open to near ${length(stepping.step)}, so that steps up from ${length(stepping.from)} end at ${length(stepping.upTo)}; then step down from ${length(stepping.downFrom)}`,
        ]),
    ...(inGroups === undefined
      ? []
      : [
          `dividers  in each group open to ${unit === 'mm' ? '' : 'near '}${length(inGroups.step)}: ${inGroups.groups.map(({ from, downFrom }) => `up from ${length(from)} and down from ${length(downFrom)}`).join('; ')}`,
        ]),
    `glue   long grain to long grain: ${formatArea(glueArea(joint), unit)}`,
  ];
};

/** The set's tail width, and the ratio of its widest tail to its narrowest. */
export const familySentence = ({ target, spread }: Family, units: Notation): string =>
  `The set's tail width is ${formatLength(target, units)}; its widest tail is ${spread.toFixed(2)} times its narrowest.`;

/** Blocks of lines with a blank line between; empty ones are left out. */
export const apart = (blocks: readonly (readonly string[])[]): string[] =>
  blocks.filter((block) => block.length > 0).flatMap((block, i) => (i === 0 ? block : ['', ...block]));

/** A sentence in lines no wider than the terminal, its later lines indented. */
export const terminalLines = (text: string): string[] =>
  wrapText(text, (line) => line.length <= COLUMNS, '  ');
