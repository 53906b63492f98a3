import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerCut } from '../../drawer/drawerCut.ts';
import type { Handed } from '../../drawer/drawerSpec.ts';
import { ofHand } from '../../drawer/made/drawerCorners.ts';
import { dividers, groupDividers } from '../../joint/gauges.ts';
import { type Joint, meanPin, meanTail } from '../../joint/joint.ts';
import type { GaugeSetting } from '../../joint/kinds/kind.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { formatSlope } from '../../units/slope.ts';
import { type Block, rule, space, stack, type TextRun } from '../typeset/block.ts';
import { columnsOf, tableRow } from '../typeset/tableRow.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';
import { figure } from '../typeset/typeSizes.ts';
import { fingerRows, type SettingPlaces } from './benchFingers.ts';
import { routerRows, type SettingRow } from './benchRouter.ts';

/** Shares of the width: the label, then each pair of corners. */
const SHARES = [52, 24, 24];
const NONE = '–';

/** How a drawer's corners at one hand are cut and set; absent for hand tools. */
export interface HandWork {
  /** The router's cut; absent for hand tools. */
  readonly cut?: DrawerCut;
  /** The places of its settings in the order in which the fingers of its set are set; absent without fingers. */
  readonly places?: SettingPlaces;
}

/**
 * Settings of gauge, sliding bevel and dividers for a drawer's front and back corners. Where its sides differ, those of the left
 * corners and then what differs at the right.
 */
export const benchSettings = (
  drawer: Drawer,
  work: Handed<HandWork>,
  unit: Notation,
  type: TypeSizes,
  width: number,
): Block[] => {
  const rows = rowsOf(ofHand(drawer, 'left'), work.left, unit);
  const table = (heading: string, corners: readonly [string, string], rows: readonly SettingRow[]) =>
    tableOf(heading, corners, rows, unit, type, width);
  const title = `Settings, ${unitOf(unit)}`;
  if (drawer.right === undefined) return table(title, ['front A, B', 'back C, D'], rows);
  const same = new Set(rows.map((row) => JSON.stringify(row)));
  const others = rowsOf(ofHand(drawer, 'right'), work.right, unit);
  return [
    ...table(`${title}, left`, ['front A', 'back D'], rows),
    space(type.heading),
    ...table(
      'Right, where not as left',
      ['front B', 'back C'],
      others.filter((row) => !same.has(JSON.stringify(row))),
    ),
  ];
};

const rowsOf = (drawer: Drawer, { cut, places }: HandWork, unit: Notation): SettingRow[] => [
  ...settingsOf(drawer, cut === undefined ? unit : undefined).map(({ label, value }) => ({
    label,
    front: value(drawer.front),
    back: value(drawer.back),
  })),
  ...(cut === undefined ? [] : [...routerRows(drawer, cut), ...fingerRows(drawer, cut, places, unit)]),
];

const tableOf = (
  title: string,
  [atFront, atBack]: readonly [string, string],
  rows: readonly SettingRow[],
  unit: Notation,
  type: TypeSizes,
  width: number,
): Block[] => {
  const columns = columnsOf(SHARES, width);
  const cell = (value: number | string | undefined): TextRun[] =>
    figure(typeof value === 'number' ? formatNumber(value, unit) : (value ?? NONE), type);
  const heading = stack([
    tableRow(
      columns,
      [
        [{ text: title, size: type.heading, weight: 'bold' }],
        [{ text: atFront, size: type.text, weight: 'bold' }],
        [{ text: atBack, size: type.text, weight: 'bold' }],
      ],
      type.heading,
    ),
    rule(width, 0.8),
  ]);
  return rows.map(({ label, front, back }, i) => {
    const row = tableRow(
      columns,
      [[{ text: label, size: type.text, weight: 'regular' }], cell(front), cell(back)],
      type.figure,
    );
    return i === 0 ? stack([heading, row]) : row;
  });
};

interface Setting {
  readonly label: string;
  value(joint: Joint): number | string | undefined;
}

const VARIED = 'varied';

/** @param stepped the notation of what tails are stepped off by; none where a router's guide places them */
const settingsOf = (drawer: Drawer, stepped: Notation | undefined): Setting[] => [
  ...rebateOf(drawer),
  ...(drawer.spec.box === undefined
    ? [
        {
          label: 'joint, above reference edge',
          value: (joint: Joint) => (joint === drawer.back ? drawer.sizes.backFrom : 0),
        },
      ]
    : []),
  ...gaugesOf(drawer),
  ...shouldersOf(drawer),
  ...(drawer.front.mitre === undefined && drawer.back.mitre === undefined
    ? []
    : [
        {
          label: 'mitre, off the side’s face',
          value: ({ mitre }: Joint) => mitre && `${Number(mitre.degrees.toFixed(2))}°`,
        },
      ]),
  { label: 'slope (sliding bevel)', value: ({ slope }) => formatSlope(slope) },
  { label: 'tails', value: ({ tails }) => String(tails.length) },
  { label: 'tail width', value: (joint) => (joint.even ? meanTail(joint) : VARIED) },
  { label: 'pin width', value: (joint) => (joint.even ? meanPin(joint) : VARIED) },
  ...(stepped === undefined ? [] : stepsOf(drawer, stepped)),
];

/** The widths of mitred shoulders, in mm, at the edges that have any. */
const shouldersOf = ({ front, back }: Drawer): Setting[] =>
  (['lower', 'upper'] as const)
    .filter((edge) => front.shoulder[edge] > 0 || back.shoulder[edge] > 0)
    .map((edge) => ({
      label: `mitred shoulder, ${edge} edge`,
      value: ({ shoulder }) => shoulder[edge] || undefined,
    }));

/** How tails are stepped off by hand; nothing where dividers have no opening, as where all tails differ. */
const stepsOf = ({ front, back }: Drawer, unit: Notation): Setting[] => {
  const any = (opening: (joint: Joint) => unknown): boolean =>
    [front, back].some((joint) => opening(joint) !== undefined);
  return [
    ...(any(dividers) ? stepsIn(unit) : []),
    ...(any(groupDividers)
      ? [{ label: 'dividers, in each group', value: (joint: Joint) => groupDividers(joint)?.step }]
      : []),
  ];
};

/** In inches the opening is only near, and what the steps must come to sets it, so that no rounding adds up. */
const stepsIn = (unit: Notation): Setting[] => [
  { label: unit === 'mm' ? 'dividers' : 'dividers, near', value: (joint) => dividers(joint)?.step },
  { label: 'step up from', value: (joint) => dividers(joint)?.from },
  ...(unit === 'mm'
    ? []
    : [{ label: 'last step up ends at', value: (joint: Joint) => dividers(joint)?.upTo }]),
  { label: 'step down from', value: (joint) => dividers(joint)?.downFrom },
];

/** The gauge's settings by their names, each named for the front unless only the back has it. */
const gaugesOf = ({ front, back, sizes: { rebate } }: Drawer): Setting[] => {
  const of = (joint: Joint) => kindOf(joint).gauges(joint);
  const [atFront, atBack] = [of(front), of(back)];
  const ofBackOnly = atBack.filter(({ name }) => !atFront.some((gauge) => gauge.name === name));
  const end = rebate.sides > 0 ? 'shoulder' : 'end';
  const other = ({ name }: GaugeSetting) => atBack.find((gauge) => gauge.name === name);
  return [
    ...atFront.map((gauge) => [gauge.name, gaugeLabel(gauge, other(gauge), end)] as const),
    ...ofBackOnly.map((gauge) => [gauge.name, backGaugeLabel(gauge)] as const),
  ].map(([name, label]) => ({
    label: `gauge ${label}`,
    value: (joint) => of(joint).find((gauge) => gauge.name === name)?.length,
  }));
};

const backGaugeLabel = ({ board, line, on, from }: GaugeSetting): string =>
  `${board === 'tail' ? 'sides' : 'back'}, ${line === undefined ? '' : `${line}, `}${on === 'end' ? 'end grain' : on}, from ${from}`;

const gaugeLabel = (front: GaugeSetting, back: GaugeSetting | undefined, end: string): string => {
  const on = front.on === 'end' ? 'end grain' : front.on;
  const line = front.line === undefined ? '' : `${front.line}, `;
  if (front.board === 'tail' && front.from === 'end') {
    const atBack = back === undefined || back.on === front.on ? '' : `; at the back ${back.on}`;
    return `sides, ${line}${on}, from end${atBack}`;
  }
  const board = front.board === 'tail' ? 'side' : 'front';
  const from = `, from ${front.from === 'end' ? end : front.from}`;
  // Only a box has such at its back too.
  if (back !== undefined && front.board === 'tail') return `sides, ${line}${on}${from}`;
  if (back !== undefined && line !== '') return `${board} and back, ${line}${on}${from}`;
  if (line !== '') return `${board}’s ${line}${on}${from}`;
  if (back === undefined) return `${board}’s ${on}${from}`;
  return front.on === back.on
    ? `${board} and back, ${on}${from}`
    : `${board}’s ${on}${from}; back’s ${back.on}`;
};

/** Depth and shoulders of a front's rebate, which its measures start from, mm. */
const rebateOf = ({ spec, sizes: { rebate }, front }: Drawer): Setting[] => {
  const ofFront = (label: string, length: number): Setting => ({
    label,
    value: (joint) => (joint === front ? length : undefined),
  });
  return [
    ...(spec.lip === undefined ? [] : [ofFront('front’s rebate, depth', front.depth)]),
    ...(rebate.sides > 0 ? [ofFront('rebate, in from the end', rebate.sides)] : []),
    ...(rebate.bottom > 0 ? [ofFront('rebate, up from the lower edge', rebate.bottom)] : []),
    ...(rebate.top > 0 ? [ofFront('rebate, down from the upper edge', rebate.top)] : []),
  ];
};
