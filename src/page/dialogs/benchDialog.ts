import { html, nothing, render, type TemplateResult } from 'lit-html';
import { hasEqualEnds } from '../../drawer/drawerSizes.ts';
import { rebateFirst } from '../../drawer/rebateFirst.ts';
import { dividers, groupDividers } from '../../joint/gauges.ts';
import type { Interval } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { JointCut } from '../../router/guide/cutJoint.ts';
import { type RouterSettingName, routerSettings } from '../../router/passes/routerSettings.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { finest, type Notation, unitWords } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { formatSlope } from '../../units/slope.ts';
import { find, setText } from '../browser/dom.ts';
import {
  type CornerRef,
  cornerOf,
  cornersOf,
  type EditedCorner,
  startOnSides,
} from '../model/editedCorner.ts';
import type { AppContext } from '../model/viewState.ts';
import { fillScreen } from './fillScreen.ts';

const sameCorner = (a: CornerRef, b: CornerRef): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The numbers of one corner, large enough to be read from the bench; the screen stays on where the browser allows it. */
export const benchDialog = ({ now, unit }: AppContext): ((ref: CornerRef) => void) => {
  const dialog = find('bench-dialog', HTMLDialogElement);
  const title = find('bench-title', HTMLElement);
  const body = find('bench-body', HTMLElement);
  const awake = find('bench-awake', HTMLElement);
  let at = 0;
  let lock: WakeLockSentinel | undefined;

  const show = (): void => {
    const { project } = now();
    const refs = cornersOf(project);
    at = (at + refs.length) % refs.length;
    const ref = refs[at];
    const corner = ref && cornerOf(project, ref);
    if (corner === undefined) return;
    const ends =
      corner.ref.of === 'joint'
        ? ''
        : `, ${corner.drawer && hasEqualEnds(corner.drawer.spec) ? 'all' : corner.ref.end} corners`;
    setText(title, `${corner.name}${ends}`);
    render(
      html`${first(corner, unit())}${settings(corner, project.cuts.get(corner.joint), unit())}${marks(corner, unit())}${fingerMarks(corner, unit())}`,
      body,
    );
    body.scrollTop = 0;
    fillScreen(body);
  };

  const stayAwake = async (): Promise<void> => {
    try {
      lock = await navigator.wakeLock.request('screen');
      setText(awake, 'The screen stays on while this is open.');
    } catch {
      setText(awake, 'This browser cannot keep the screen on.');
    }
  };

  document.addEventListener('visibilitychange', () => {
    // The browser releases the wake lock when the page is hidden.
    if (dialog.open && document.visibilityState === 'visible') void stayAwake();
  });
  dialog.addEventListener('close', () => {
    void lock?.release();
    lock = undefined;
  });
  const turn = (by: number): void => {
    at += by;
    show();
  };
  find('bench-back', HTMLButtonElement).addEventListener('click', () => turn(-1));
  find('bench-on', HTMLButtonElement).addEventListener('click', () => turn(1));
  dialog.addEventListener('keydown', ({ key, altKey, ctrlKey, metaKey }) => {
    if (altKey || ctrlKey || metaKey) return;
    if (key === 'ArrowLeft') turn(-1);
    if (key === 'ArrowRight') turn(1);
  });
  addEventListener('resize', () => {
    if (dialog.open) fillScreen(body);
  });
  find('bench-close', HTMLButtonElement).addEventListener('click', () => dialog.close());

  return (ref) => {
    at = Math.max(
      0,
      cornersOf(now().project).findIndex((other) => sameCorner(other, ref)),
    );
    dialog.showModal();
    show();
    void stayAwake();
  };
};

/** What comes before gauging: at the front of a drawer with a lip its rebate, at the back from where its sides are measured. */
const first = (corner: EditedCorner, unit: Notation): TemplateResult[] => {
  const { ref, drawer } = corner;
  const start = startOnSides(corner);
  if (start !== undefined)
    return [
      html`<p>On the sides all is measured from the groove's upper edge, ${formatLength(start, unit)} above the reference edge.</p>`,
    ];
  return drawer !== undefined && ref.of === 'drawer'
    ? rebateFirst(drawer).map((says) => html`<p>Before gauging: ${speak(says, unit)}.</p>`)
    : [];
};

/** What gauges, bevel and dividers are set to, or a router in their place. */
const settings = (
  { joint, drawer }: EditedCorner,
  cut: JointCut | undefined,
  unit: Notation,
): TemplateResult => {
  const [steps, inGroups] = [dividers(joint), groupDividers(joint)];
  const rows: [string, string][] = [
    ['Tails', String(joint.tails.length)],
    ['Slope', formatSlope(joint.slope)],
    ...kindOf(joint)
      .gauges(joint)
      .map(({ board, on, line, length }): [string, string] => [
        `Gauge ${board} board, ${line === undefined ? '' : `${line}, `}${on === 'end' ? 'end grain' : on}`,
        formatLength(length, unit),
      ]),
    ...(cut === undefined
      ? []
      : routerRows(cut, (drawer?.sizes.rebate.sides ?? 0) > 0 ? 'shoulder' : 'end', unit)),
    ...(steps === undefined || cut !== undefined
      ? []
      : ([
          [unit === 'mm' ? 'Dividers' : 'Dividers, near', formatLength(steps.step, unit)],
          ['Dividers start at', formatLength(steps.from, unit)],
          ...(unit === 'mm' ? [] : [['Last step up ends at', formatLength(steps.upTo, unit)]]),
        ] as [string, string][])),
    ...(inGroups === undefined || cut !== undefined
      ? []
      : ([
          ['Dividers, in each group', formatLength(inGroups.step, unit)],
          ...inGroups.groups.map(({ from, downFrom }) => [
            'In a group, up from and down from',
            `${formatNumber(from, unit)}, ${formatLength(downFrom, unit)}`,
          ]),
        ] as [string, string][])),
  ];
  return html`<dl>${rows.map(([name, value]) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}</dl>`;
};

/** What a router is set to; its easing and its bushes are on the bench sheet. */
const routerRows = (cut: JointCut, end: 'end' | 'shoulder', unit: Notation): [string, string][] => {
  const settings = routerSettings(cut);
  const labels: readonly (readonly [RouterSettingName, string])[] = [
    ['tailDepth', 'Tails, dovetail cutter’s depth'],
    ['straight', 'Pins, straight cutter'],
    ['pinDepth', 'Pins, cutter’s depth'],
    ['stop', `Pins, centre stops from ${end}`],
  ];
  return labels.flatMap(([name, label]): [string, string][] => {
    const value = settings.get(name);
    return value === undefined ? [] : [[label, formatLength(value, unit)]];
  });
};

/** Where every tail begins and ends, and every small pin, the highest first as on the board. */
const marks = (corner: EditedCorner, unit: Notation): TemplateResult[] => {
  const edge = startOnSides(corner) === undefined ? 'reference edge' : "groove's upper edge";
  const { tails, smallPins } = corner.joint;
  const table = (
    what: string,
    ends: readonly [string, string],
    all: readonly (readonly Interval[])[],
  ): TemplateResult => {
    const rows = all.map(
      (intervals, i) =>
        html`<tr><th scope="row">${i + 1}</th>${intervals.flat().map((value) => html`<td>${formatNumber(value, unit)}</td>`)}</tr>`,
    );
    return html`<table>
    <caption>${what} from the ${edge}, in ${unitWords(unit)}</caption>
    <thead>
      <tr><td></td>${ends.map((end) => html`<th scope="colgroup" colspan="2">${end}</th>`)}</tr>
    </thead>
    <tbody>${rows.toReversed()}</tbody>
  </table>`;
  };
  return [
    table(
      'Tails',
      ['tip', 'base'],
      tails.map(({ tip, base }) => [tip, base]),
    ),
    ...(smallPins === undefined
      ? []
      : [
          table(
            'Small pins',
            ['narrow', 'wide'],
            smallPins.map(({ narrow, wide }) => [narrow, wide]),
          ),
        ]),
  ];
};

/** How the fingers are set over the tails, the highest pair first as on the board; from where the tails are marked. */
const fingerMarks = (corner: EditedCorner, unit: Notation): TemplateResult | typeof nothing => {
  if (corner.fingers === undefined) return nothing;
  const { pairs, gaps } = corner.fingers.setting;
  const fine = finest(unit);
  const edge = startOnSides(corner) === undefined ? 'reference edge' : "groove's upper edge";
  const rows = pairs.map(({ from, to, spacer }, i) => {
    const cells = [
      formatNumber(from, unit),
      formatNumber(to, unit),
      spacer === 0 ? 'none' : formatNumber(spacer, fine),
      gaps[i] === undefined ? '' : formatNumber(gaps[i], unit),
    ];
    return html`<tr><th scope="row">${i + 1}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`;
  });
  return html`<table>
    <caption>Pairs of fingers from the ${edge}, in ${unitWords(unit)}${fine === unit ? '' : `; spacers in ${unitWords(fine)}`}</caption>
    <thead>
      <tr><td></td>${['from', 'to', 'spacer', 'gap above'].map((name) => html`<th scope="col">${name}</th>`)}</tr>
    </thead>
    <tbody>${rows.toReversed()}</tbody>
  </table>`;
};
