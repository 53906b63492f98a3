import type { Drawer } from '../drawer/drawer.ts';
import type { DrawerCut } from '../drawer/drawerCut.ts';
import type { Joint } from '../joint/joint.ts';
import { meanPin, meanTail } from '../joint/proportion.ts';
import { dividers, gauges } from '../joint/settings.ts';
import { formatNumber } from '../units/formatLength.ts';
import { formatSlope } from '../units/slope.ts';
import type { Unit } from '../units/unit.ts';
import { type RouterSetting, routerSettings } from './benchRouter.ts';
import { type Block, type Run, rule, stack } from './block.ts';
import { figure } from './figure.ts';
import { columnsOf, tableRow } from './table.ts';
import type { TypeSizes } from './typeSizes.ts';

/** Shares of the width: what is set, then each pair of corners. */
const SHARES = [44, 28, 28];
const NONE = '–';

/** How to set gauge, bevel and dividers for a drawer's front corners and for its back ones. */
export const benchSettings = (
  drawer: Drawer,
  cut: DrawerCut | undefined,
  unit: Unit,
  type: TypeSizes,
  width: number,
): Block[] => {
  const columns = columnsOf(SHARES, width);
  const cell = (value: number | string | undefined): Run[] =>
    figure(typeof value === 'number' ? formatNumber(value, unit) : (value ?? NONE), type);
  const heading = stack([
    tableRow(
      columns,
      [
        [{ text: `Settings, ${unit}`, size: type.heading, weight: 'bold' }],
        [{ text: 'front A, B', size: type.text, weight: 'bold' }],
        [{ text: 'back C, D', size: type.text, weight: 'bold' }],
      ],
      type.heading,
    ),
    rule(width, 0.8),
  ]);
  const rows: RouterSetting[] = [
    ...settingsOf(drawer, cut === undefined).map(({ label, value }) => ({
      label,
      front: value(drawer.front),
      back: value(drawer.back),
    })),
    ...(cut === undefined ? [] : routerSettings(drawer, cut, unit)),
  ];
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

/** @param stepped whether tails are stepped off by hand, rather than placed by a router's guide */
const settingsOf = (drawer: Drawer, stepped: boolean): Setting[] => [
  ...rebateOf(drawer),
  {
    label: 'side’s edge to joint',
    value: (joint) => (joint === drawer.back ? drawer.sizes.backFrom : 0),
  },
  { label: 'gauge, side’s end', value: (joint) => gauges(joint).tailBoard },
  { label: pinBoardLabel(drawer), value: (joint) => gauges(joint).pinBoardFace },
  ...(drawer.front.kind === 'lapped'
    ? [
        {
          label: 'gauge, front’s end, from inside',
          value: (joint: Joint) => (joint.kind === 'lapped' ? gauges(joint).pinBoardEnd : undefined),
        },
      ]
    : []),
  { label: 'bevel', value: ({ slope }) => formatSlope(slope) },
  { label: 'tails', value: ({ tails }) => String(tails.length) },
  { label: 'tail, at its tip', value: (joint) => (joint.even ? meanTail(joint) : VARIED) },
  { label: 'pin, narrow', value: (joint) => (joint.even ? meanPin(joint) : VARIED) },
  ...(stepped ? STEPS : []),
];

const STEPS: readonly Setting[] = [
  { label: 'dividers', value: (joint) => dividers(joint)?.step },
  { label: 'step up from', value: ({ tails }) => tails[0]?.tip[0] },
  { label: 'step down from', value: ({ tails }) => tails.at(-1)?.tip[1] },
];

const pinBoardLabel = ({ front: { kind }, sizes: { rebate } }: Drawer): string => {
  if (kind === 'through') return 'gauge, front and back, both faces';
  const from = rebate.sides > 0 ? ', from the shoulder' : '';
  return `gauge, front’s inside face${from}; back, both faces`;
};

/** Where the front is measured from, when its own end and edge lie further out. */
const rebateOf = ({ spec, sizes: { rebate }, front }: Drawer): Setting[] => {
  const ofFront = (label: string, length: number): Setting => ({
    label,
    value: (joint) => (joint === front ? length : undefined),
  });
  return [
    ...(spec.lip === undefined ? [] : [ofFront('front’s rebate, deep', front.depth)]),
    ...(rebate.sides > 0 ? [ofFront('rebate, in from the end', rebate.sides)] : []),
    ...(rebate.bottom > 0 ? [ofFront('rebate, up from the lower edge', rebate.bottom)] : []),
    ...(rebate.top > 0 ? [ofFront('rebate, down from the upper edge', rebate.top)] : []),
  ];
};
