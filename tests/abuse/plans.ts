import fc from 'fast-check';
import { brokenOut } from '../../src/drawer/blanks/brokenOut.ts';
import type { Drawer, DrawerSet } from '../../src/drawer/drawer.ts';
import { drawerSeason } from '../../src/drawer/drawerSeason.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { parts, stockTotals } from '../../src/drawer/partsList.ts';
import { formatPlanComplaint, type PlanComplaint } from '../../src/plan/read/planComplaint.ts';
import { guidePieces } from '../../src/project/guidesOf.ts';
import { piecesOf } from '../../src/project/piecesOf.ts';
import { type Project, withCuts } from '../../src/project/project.ts';
import { layOutPlan } from '../../src/project/readProject.ts';
import { BOTH_BOARDS } from '../../src/sheets/template/cornerPieces.ts';
import { replay } from '../../src/stock/replay.ts';
import { SMALL_SET } from '../drawer/blanks/boardsPlan.ts';
import { drawer } from '../drawer/chest.ts';
import { mostly, wild } from '../joint/anySpec.ts';
import { abuse, must, mustBeClear, mustBeFinite, refused } from './abuse.ts';
import { mustCut } from './cutters.ts';
import { mustBeSafeFileName } from './fileNames.ts';
import { mustBeSound } from './joints.ts';
import { guidedPlan, ordinaryPlan, planOfAnything, planWithSlips } from './planTexts.ts';

/** Complaints at places that the text has. */
const refusedPlan = (given: string | Uint8Array, complaints: readonly PlanComplaint[]): 'refused' => {
  must(complaints.length > 0, 'refused without a reason');
  const text = typeof given === 'string' ? given : new TextDecoder().decode(given);
  const lines = text.split(/\r\n|\n|\r/u);
  for (const { line, column, complaint } of complaints) {
    must(line >= 1 && line <= lines.length, `there is no line ${line}`);
    must(column >= 1 && column <= (lines[line - 1] ?? '').length + 1, `line ${line} has no column ${column}`);
    mustBeClear(formatPlanComplaint('plan.yaml', { line, column, complaint }, 'mm'));
    mustBeClear(formatPlanComplaint('plan.yaml', { line, column, complaint }, 'in'));
  }
  return 'refused';
};

/** The groove rule, at the sides that carry the groove: 1 mm inside the lowest tail's base. */
const mustHideGroove = ({ spec: { groove }, front }: Drawer): void => {
  const base = front.tails[0]?.base ?? [0, 0];
  must(
    groove.offset >= base[0] + 1 - 1e-6 && groove.offset + groove.width <= base[1] - 1 + 1e-6,
    'the groove shows at the front',
  );
};

const mustFitOpening = ({ spec: { space, lip }, boards }: Drawer): void => {
  if (space.kind !== 'opening' || lip !== undefined) return;
  const { opening, fit } = space;
  const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  must(near(boards.front.length, opening.width - 2 * fit.side), 'the front does not fit its opening');
  must(near(boards.front.width, opening.height - fit.top), 'the front is not as high as its opening allows');
};

const mustBeSoundSet = (set: DrawerSet): void => {
  for (const each of set.drawers) {
    mustBeSound(each.front);
    mustBeSound(each.back);
    mustHideGroove(each);
    mustFitOpening(each);
    mustBeFinite(each.boards);
    const { parts: moved, bottom, corners, gaps } = drawerSeason(each) ?? {};
    mustBeFinite({ moved, bottom, corners, leave: gaps?.leave });
    for (const gap of [gaps?.front, gaps?.side, gaps?.beside]) mustBeFinite(gap?.gap);
  }
  const rows = parts(set);
  for (const row of rows) {
    mustBeFinite(row);
    must(row.length > 0 && row.width > 0 && row.thickness > 0, `a ${row.part} without a size`);
    // What floats leave behind is not sawn off.
    must(row.roughLength > row.length - 1e-5, `a ${row.part} shorter in the rough`);
  }
  mustBeFinite(stockTotals(rows));
  if (set.advice.length > 0) refused(set.advice);
};

/** What a plan's text leads to: a project that is sound, or a reason at a place that the text has. */
export const projectOf = (given: string | Uint8Array): Project | 'refused' => {
  const reading = layOutPlan(given);
  if (!reading.ok) return refusedPlan(given, reading.complaints);
  const { set, joints } = reading.value;
  must(set.drawers.length + joints.length > 0, 'a plan of nothing is read');
  mustBeSoundSet(set);
  for (const { joint } of joints) mustBeSound(joint);
  const project = withCuts(reading.value);
  if (!project.ok) return refusedPlan(given, project.complaints.map(reading.locate));
  for (const [joint, cut] of project.value.cuts) mustCut(joint, cut);
  return project.value;
};

const judge = (given: string | Uint8Array) => {
  const project = projectOf(given);
  if (project === 'refused') return project;
  const pieces = [...piecesOf(project, { ...BOTH_BOARDS, rods: true }), ...guidePieces(project)];
  const names = pieces.map(({ name }) => name);
  for (const name of names) mustBeSafeFileName(`${name}.svg`);
  must(
    new Set(names.map((name) => name.normalize('NFKD').toUpperCase())).size === names.length,
    'two files of one name',
  );
  for (const { width, height, splittable } of pieces) mustBeFinite({ width, height, splittable });
  return 'valid';
};

export const ordinaryPlans = abuse('plans of ordinary keys and hostile names', 0.5, ordinaryPlan, judge);
export const guidedPlans = abuse('plans with a cutter and hostile names', 0.3, guidedPlan, judge);
export const plansWithSlips = abuse('plans with slips of the pen', 0.5, planWithSlips, judge);
export const plansOfAnything = abuse('plans with values of any kind', 0.5, planOfAnything, judge);
export const plansOfBytes = abuse(
  'plans of any letters and bytes',
  1,
  fc.oneof(fc.string({ unit: 'binary', maxLength: 60 }), fc.uint8Array({ maxLength: 60 })),
  judge,
);

/** A small set beside boards of any shapes, with defects anywhere. */
const boardsPlan = fc
  .array(
    fc.record({
      stock: fc.constantFrom('front', 'side', 'back', 'bottom'),
      thickness: mostly(12, 30),
      length: mostly(200, 2400),
      width: mostly(60, 260),
      count: fc.integer({ min: 1, max: 3 }),
      defects: fc.array(
        fc.record({
          kind: fc.constantFrom('knot', 'check', 'shake', 'stain'),
          at: fc.tuple(mostly(0, 2000), mostly(0, 200)),
          size: fc.tuple(mostly(5, 200), mostly(5, 80)),
        }),
        { maxLength: 4 },
      ),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((boards) => {
    const named = boards.map((board, i) => ({ name: `Board ${i}`, ...board }));
    return `boards: ${JSON.stringify(named, (_, each) => (Number.isFinite(each) || typeof each !== 'number' ? each : String(each)))}\n${SMALL_SET}`;
  });

/** Boards are refused, or every blank is what the cuts leave under its number. */
export const boardsOfAnySize = abuse('boards of any size', 0.1, boardsPlan, (text) => {
  const reading = layOutPlan(text);
  if (!reading.ok) return refusedPlan(text, reading.complaints);
  const { work, sawing } = reading.value;
  if (work === undefined) throw new Error('the boards are lost');
  const { planks, breakout } = brokenOut(work, sawing, { effort: 0.1 });
  for (const { plank, cuts, blanks } of breakout.boards) {
    const board = planks[plank];
    const left = board && replay(board.outline, cuts, sawing.kerf);
    if (!left?.ok) throw new Error('a cut cannot be made');
    for (const { piece, x, y, length, width } of blanks) {
      const box = left.left.get(piece);
      must(box !== undefined, 'a blank is not sawn');
      mustBeFinite({ x, y, length, width });
      const off = [
        x - (box?.x0 ?? 0),
        y - (box?.y0 ?? 0),
        x + length - (box?.x1 ?? 0),
        y + width - (box?.y1 ?? 0),
      ];
      must(
        off.every((each) => Math.abs(each) < 0.001),
        'a blank is not what is sawn',
      );
    }
  }
  return 'valid';
});

/** A drawer of the chest with some of its measures replaced, by any numbers now and then. */
const anyDrawer = fc
  .record(
    {
      count: fc.oneof({ weight: 12, arbitrary: fc.integer({ min: 1, max: 20 }) }, wild),
      groove: fc.record({ offset: mostly(9, 13), width: mostly(3, 6), depth: mostly(3, 6) }),
      backDrop: mostly(0, 10),
      lip: fc.record({ sides: mostly(0, 8), top: mostly(0, 8), bottom: mostly(0, 8) }),
      space: fc.record({
        kind: fc.constant('size' as const),
        size: fc.record({ width: mostly(150, 600), height: mostly(60, 250), depth: mostly(200, 500) }),
      }),
      bottom: fc.record({
        kind: fc.constantFrom('panel' as const, 'solid' as const),
        slack: mostly(0, 1),
        hold: fc.record({
          kind: fc.constant('slips' as const),
          width: mostly(8, 14),
          height: mostly(16, 24),
        }),
      }),
    },
    { requiredKeys: [] },
  )
  .map((change) => drawer(change));

export const drawerSets = abuse(
  'drawers of any measures, in process',
  0.5,
  fc.tuple(anyDrawer, fc.option(mostly(10, 30), { nil: undefined })),
  ([spec, target]) => {
    const set = layOutSet([spec], target);
    if (!set.ok) return refused(set.complaints, 'numbers');
    mustBeSoundSet(set.value);
    return 'valid';
  },
);
