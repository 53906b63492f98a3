import { html, render, type TemplateResult } from 'lit-html';
import { rebateFirst } from '../drawer/rebateFirst.ts';
import type { JointCut } from '../guided/cutJoint.ts';
import { type Guided, tailsByHand } from '../guided/guided.ts';
import { dividers, gauges } from '../joint/settings.ts';
import type { LaidOut } from '../plan/layOutPlan.ts';
import { formatLength, formatNumber } from '../units/formatLength.ts';
import { speak } from '../units/phrase.ts';
import { formatSlope } from '../units/slope.ts';
import type { Unit } from '../units/unit.ts';
import { find, setText } from './dom.ts';
import { type CornerRef, cornerOf, type EditedCorner, startOnSides } from './editedCorner.ts';
import type { AppContext } from './viewState.ts';

/** Every corner of a plan, in the order of work. */
const cornersOf = ({ set, joints }: LaidOut): CornerRef[] => [
  ...set.drawers.flatMap((_, index): CornerRef[] => [
    { of: 'drawer', index, end: 'front' },
    { of: 'drawer', index, end: 'back' },
  ]),
  ...joints.map((_, index): CornerRef => ({ of: 'joint', index })),
];

const sameCorner = (a: CornerRef, b: CornerRef): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The numbers of one corner, big enough to be read from the bench; the screen stays on where the browser can do that. */
export const benchDialog = ({ now, unit }: AppContext): ((ref: CornerRef) => void) => {
  const dialog = find('bench-dialog', HTMLDialogElement);
  const title = find('bench-title', HTMLElement);
  const body = find('bench-body', HTMLElement);
  const awake = find('bench-awake', HTMLElement);
  let at = 0;
  let lock: WakeLockSentinel | undefined;

  const show = (): void => {
    const { laid, cuts } = now();
    const refs = cornersOf(laid);
    at = (at + refs.length) % refs.length;
    const ref = refs[at];
    const corner = ref && cornerOf(laid, ref);
    if (corner === undefined) return;
    const ends = corner.ref.of === 'joint' ? '' : `, ${corner.ref.end} corners`;
    setText(title, `${corner.name}${ends}`);
    render(
      html`${first(corner, unit())}${settings(corner, cuts.get(corner.joint), unit())}${marks(corner, unit())}`,
      body,
    );
    body.scrollTop = 0;
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
    // The browser lets go of the screen when the page is hidden.
    if (dialog.open && document.visibilityState === 'visible') void stayAwake();
  });
  dialog.addEventListener('close', () => {
    void lock?.release();
    lock = undefined;
  });
  const turn = (by: number) => (): void => {
    at += by;
    show();
  };
  find('bench-back', HTMLButtonElement).addEventListener('click', turn(-1));
  find('bench-on', HTMLButtonElement).addEventListener('click', turn(1));
  find('bench-close', HTMLButtonElement).addEventListener('click', () => dialog.close());

  return (ref) => {
    at = Math.max(
      0,
      cornersOf(now().laid).findIndex((other) => sameCorner(other, ref)),
    );
    show();
    dialog.showModal();
    void stayAwake();
  };
};

/** What comes before gauging: at the front of a drawer with a lip its rebate, at the back from where its sides are measured. */
const first = (corner: EditedCorner, unit: Unit): TemplateResult[] => {
  const { ref, drawer } = corner;
  const start = startOnSides(corner);
  if (start !== undefined)
    return [
      html`<p>On the sides all is measured from the groove's top edge, ${formatLength(start, unit)} above the reference edge.</p>`,
    ];
  return drawer !== undefined && ref.of === 'drawer'
    ? rebateFirst(drawer).map((says) => html`<p>Before gauging: ${speak(says, unit)}.</p>`)
    : [];
};

/** What gauges, bevel and dividers are set to, or a router in their place. */
const settings = ({ joint, drawer }: EditedCorner, cut: JointCut | undefined, unit: Unit): TemplateResult => {
  const { tailBoard, pinBoardFace, pinBoardEnd } = gauges(joint);
  const steps = dividers(joint);
  const rows: [string, string][] = [
    ['Tails', String(joint.tails.length)],
    ['Slope', formatSlope(joint.slope)],
    ['Gauge, tail board', formatLength(tailBoard, unit)],
    ['Gauge, pin board, inside', formatLength(pinBoardFace, unit)],
    ...(joint.kind === 'lapped'
      ? ([['Gauge, pin board, end', formatLength(pinBoardEnd, unit)]] satisfies [string, string][])
      : []),
    ...(cut === undefined
      ? []
      : routerRows(cut.guided, (drawer?.sizes.rebate.sides ?? 0) > 0 ? 'shoulder' : 'end', unit)),
    ...(steps === undefined || cut !== undefined
      ? []
      : ([
          ['Dividers', formatLength(steps.step, unit)],
          ['Dividers start at', formatLength(steps.from, unit)],
        ] satisfies [string, string][])),
  ];
  return html`<dl>${rows.map(([name, value]) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}</dl>`;
};

const routerRows = (guided: Guided, end: 'end' | 'shoulder', unit: Unit): [string, string][] => {
  const { depth, pinCut } = guided;
  return [
    ...(tailsByHand(guided)
      ? []
      : [['Tails, cutter set deep', formatLength(depth, unit)] satisfies [string, string]]),
    ...(pinCut.kind === 'round'
      ? ([
          ['Pins, cutter set deep', formatLength(depth, unit)],
          [`Pins, centre stops from ${end}`, formatLength(pinCut.socket.stop, unit)],
        ] satisfies [string, string][])
      : ([
          ['Pins, straight cutter', formatLength(pinCut.diameter, unit)],
          ['Pins, cutter set deep', formatLength(pinCut.depth, unit)],
        ] satisfies [string, string][])),
  ];
};

/** Where every tail begins and ends, the highest first as on the board. */
const marks = (corner: EditedCorner, unit: Unit): TemplateResult => {
  const edge = startOnSides(corner) === undefined ? 'reference edge' : "groove's top edge";
  const rows = corner.joint.tails.map(
    ({ tip, base }, i) =>
      html`<tr><th scope="row">${i + 1}</th>${[...tip, ...base].map((value) => html`<td>${formatNumber(value, unit)}</td>`)}</tr>`,
  );
  return html`<table>
    <caption>Tails from the ${edge}, in ${unit}</caption>
    <thead>
      <tr><td></td><th scope="colgroup" colspan="2">at the end</th><th scope="colgroup" colspan="2">at the baseline</th></tr>
    </thead>
    <tbody>${rows.toReversed()}</tbody>
  </table>`;
};
