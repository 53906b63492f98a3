import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { rename, setCount } from '../../../../src/page/model/drawers.ts';
import type { CornerRef } from '../../../../src/page/model/editedCorner.ts';
import { toggleLock } from '../../../../src/page/model/edits.ts';
import { readText } from '../../../../src/page/model/fields/fieldText.ts';
import {
  isElsewhere,
  isOfEntry,
  KEY_GROUPS,
  keysOfGroup,
  type Owner,
} from '../../../../src/page/model/fields/keyGroups.ts';
import { planKeys, valuesIn } from '../../../../src/page/model/fields/planKeys.ts';
import {
  keyOf,
  type Setting,
  setKeys,
  unsetMeasure,
  writtenFor,
} from '../../../../src/page/model/fields/setKeys.ts';
import { setFingers } from '../../../../src/page/model/fingers/fingerEdits.ts';
import { measuredPlaces, quantitiesOf } from '../../../../src/page/model/quantities.ts';
import { FIRST_SCOPE, type Scope } from '../../../../src/page/model/scope.ts';
import type { Snapshot } from '../../../../src/page/model/snapshot.ts';
import { typeMeasure } from '../../../../src/page/model/typeMeasure.ts';
import { valueAt } from '../../../../src/page/model/writtenPlan.ts';
import { readAsBuilt } from '../../../../src/page/text/planReader.ts';
import { readProject } from '../../../../src/project/readProject.ts';
import type { Place, Result } from '../../../../src/units/complaint.ts';
import { BACK, CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../../chest.ts';

// As the page does once it is shown.
await readAsBuilt();

/** Few drawers, as each try lays them all out. */
const FEW = CHEST.replace(/^ {2}- \{name: (?:Ribbon|Patches|Notions),.*\n/gmu, '');
const NO_SPACING = FEW.replace('pin: 5, halfPin: 6, lap: 5', 'pin: 5, lap: 5');
const PLAN = `${NO_SPACING.trimEnd()}
boxes:
  - {name: Stamps, size: {width: 280, height: 90, depth: 200}, stock: {front: {thickness: 14}}}
joints:
  - {name: Carcase, kind: through, width: 430, tailBoard: 19, pinBoard: 19} # of the case
`;

/** Without what a cutter sets. */
const UNCUT = FEW.replace(/^joint:.*\n/mu, '').replace(', joint: {tails: 6}', '');

/** Texts that are typed into fields and set together, by their keys. */
type Typed = Readonly<Record<string, string>>;

/** Texts that are typed one after the other into the field of a key, and what is set before, together. */
interface Sample {
  readonly of: Owner;
  readonly typed: readonly [string, string];
  readonly before?: readonly Typed[];
  readonly scope?: Scope;
}

const plan = (first: string, second: string, before?: Sample['before']): Sample => ({
  of: 'plan',
  typed: [first, second],
  ...(before && { before }),
});
const all = (first: string, second: string, before?: Sample['before']): Sample => ({
  ...plan(first, second, before),
  of: 'drawers',
});
const mine = (first: string, second: string, before?: Sample['before']): Sample => ({
  ...all(first, second, before),
  scope: { ...FIRST_SCOPE, drawers: 'this' },
});
const own = (first: string, second: string, before?: Sample['before']): Sample => ({
  ...plan(first, second, before),
  of: 'drawer',
});
const lone = (first: string, second: string, before?: Sample['before']): Sample => ({
  ...plan(first, second, before),
  of: 'joint',
});

const box = (first: string, second: string, before?: Sample['before']): Sample => ({
  ...plan(first, second, before),
  of: 'box',
});

const CLIMATE = { 'climate.making': '21C/45%', 'climate.driest': '21C/30%', 'climate.dampest': '21C/70%' };
const CUTTER = { 'cutter.diameter': '12.7', 'cutter.angle': '8', 'cutter.length': '20' };
const FINGERS = [CUTTER, { 'fingers.together': '14', 'fingers.bush': '16' }];
const RAIL = [{ kind: 'lapped' }, { 'rail.between': '500', 'rail.sideWidth': '440' }];
const CABINET = {
  'cabinet.width': '574',
  'cabinet.height': '370',
  'cabinet.depth': '420',
  'cabinet.rail': '14',
  'cabinet.rows': 'Buttons, Buttons\nThread, Thread\nCloth',
};
const ARITHMETIC = [CABINET, { 'cabinet.heights.progression': 'arithmetic' }];
const GEOMETRIC = [CABINET, { 'cabinet.heights.progression': 'geometric', 'cabinet.heights.ratio': '1.15' }];
const SHRINKAGE = { 'woods.Plum.shrinkage.radial': '3.7', 'woods.Plum.shrinkage.tangential': '7.1' };
const COEFFICIENT = {
  'woods.Plum.coefficient.radial': '0.00126',
  'woods.Plum.coefficient.tangential': '0.00248',
};
const DIAGONALS = { 'opening.diagonals.rising': '290.2', 'opening.diagonals.falling': '290.1' };
const SLIPS = { 'bottom.slips.width': '10', 'bottom.slips.height': '18' };

const PULL = { 'pulls.size.width': '28', 'pulls.size.height': '28' };
const BODY = { 'locks.body.width': '50', 'locks.body.height': '32', 'locks.body.depth': '10' };

/** Keys whose fields are in groups. */
const SAMPLES: Readonly<Record<string, Sample>> = {
  font: plan('own.ttf', 'fonts/other.otf'),
  units: plan('in', 'mm'),
  fractions: plan('32', 'decimal', [{ units: 'in' }]),
  asBuilt: own(
    'part: side, index: 1, hand: left, thickness: 10.6',
    'part: side, index: 2, hand: right, thickness: 11.2mm\npart: back, index: 1, length: 278.5',
  ),
  'stock.front.species': all('Plum, my own', 'Oak'),
  'stock.front.grain': all('quartersawn', 'flatsawn'),
  'stock.side.species': all('Oak', 'Beech'),
  'stock.side.grain': all('flatsawn', 'quartersawn'),
  'stock.back.species': all('Oak', '12'),
  'stock.back.grain': all('flatsawn', 'quartersawn'),
  'stock.bottom.thickness': all('4', '5mm'),
  'stock.bottom.species': all('Oak', 'Beech'),
  'stock.bottom.grain': all('flatsawn', 'quartersawn'),
  'joint.kind': all('double-lapped', 'lapped'),
  'joint.halfPin': all('6', '6, 7.5'),
  'joint.tails': all('3', '2'),
  'joint.pins': mine('5', '5mm', [{ 'joint.tails': '30, 30' }]),
  'joint.graded.ratio': all('0.95', '0.9'),
  'joint.graded.from': all('middle', 'edge', [{ 'joint.graded.ratio': '0.95' }]),
  'joint.proud': all('0.5', '0.25mm'),
  'joint.chisel': all('4', '3.5'),
  'joint.mitre': all('corner', 'corner'),
  'joint.shoulder': all('lower', 'upper', [{ 'joint.mitre': 'corner' }]),
  'joint.spacing': all('even', 'grouped', [{ 'joint.groups': '1, 1' }]),
  'joint.groups': all('1, 2', '2, 1', [{ 'joint.groups': '1, 1' }, { 'joint.spacing': 'grouped' }]),
  'joint.groupPin': all('12', '13mm', [{ 'joint.groups': '1, 1' }, { 'joint.spacing': 'grouped' }]),
  'joint.smallPin': all('3', '3.5mm'),
  'joint.closer': all('0.8', '0.75'),
  'joint.closerTails': all('1', '2'),
  'groove.stopped': all('auto', '6'),
  'fit.side': all('0.6', '0.75mm'),
  'fit.top': all('1.5', 'auto', [CLIMATE]),
  'fit.behind': all('10', '11'),
  'back.drop': all('5', '3'),
  'back.joint.slope': all('1:8', '1 in 6'),
  'back.joint.pin': all('6', '5.5'),
  'back.joint.halfPin': all('6', '7, 6'),
  'back.joint.tails': all('2', '3'),
  'back.joint.pins': mine('5', '5mm', [{ 'back.joint.tails': '20, 20' }]),
  'back.joint.graded.ratio': all('0.95', '0.9'),
  'back.joint.graded.from': all('middle', 'edge', [{ 'back.joint.graded.ratio': '0.95' }]),
  'back.joint.proud': all('0.5', '0.5mm', [{ 'joint.proud': '0.5' }]),
  'back.joint.chisel': all('4', '3.5'),
  'back.joint.mitre': all('corner', 'corner'),
  'back.joint.shoulder': all('lower', 'upper'),
  'back.joint.spacing': all('hounds-tooth', 'even', [{ 'back.joint.tails': '2' }]),
  'back.joint.groups': all('1, 2', '2, 1', [
    { 'back.joint.groups': '1, 1' },
    { 'back.joint.spacing': 'grouped' },
  ]),
  'back.joint.groupPin': all('9', '8mm', [
    { 'back.joint.groups': '1, 1' },
    { 'back.joint.spacing': 'grouped' },
  ]),
  'back.joint.smallPin': all('3', '3.5mm', [{ 'back.joint.spacing': 'hounds-tooth' }]),
  'back.joint.closer': all('0.8', '0.75', [{ 'back.joint.spacing': 'closer-edges' }]),
  'back.joint.closerTails': all('1', '2', [{ 'back.joint.spacing': 'closer-edges' }]),
  'bottom.kind': all('solid', 'panel'),
  'bottom.slack': all('0.6', '1mm'),
  'bottom.slips': all('none', 'none'),
  'bottom.slips.width': all('11', '12', [SLIPS]),
  'bottom.slips.height': all('19', '20', [SLIPS]),
  'front.lip': all('6', '5'),
  'front.lip.sides': all('6', '5'),
  'front.lip.top': all('6', '5'),
  'front.lip.bottom': all('6', '5'),
  'pulls.number': all('2', '1'),
  'pulls.above': all('4%', '3'),
  'pulls.fromEnds': all('30%', '70', [{ 'pulls.number': '2' }]),
  'pulls.lineUpWith': all('Buttons', 'Cloth'),
  'pulls.holes.diameter': all('4', '3/16in'),
  'pulls.holes.spacing': all('64', '32'),
  'pulls.size.width': all('30', '80', [PULL]),
  'pulls.size.height': all('30', '12', [PULL]),
  'locks.number': all('1', '0'),
  'locks.pin': all('18', '15'),
  'locks.keyhole': all('5', '7'),
  'locks.body.width': all('40', '60', [BODY]),
  'locks.body.height': all('30', '28', [BODY]),
  'locks.body.depth': all('9', '12', [BODY]),
  'stops.number': all('1', '2'),
  'stops.fromSides': all('25%', '60'),
  'stops.width': all('50', '30'),
  'stops.thickness': all('5', '8'),
  'stops.depth': all('20', '30'),
  'stops.behind': all('20', '19'),
  'climate.making': plan('8%', '20C/50%', [CLIMATE]),
  'climate.driest': plan('20C/35%', '7%', [CLIMATE]),
  'climate.dampest': plan('20C/60%', '12%', [CLIMATE]),
  'woods.Plum.shrinkage.radial': plan('4', '3.5', [SHRINKAGE]),
  'woods.Plum.shrinkage.tangential': plan('8', '7.5', [SHRINKAGE]),
  'woods.Plum.coefficient.radial': plan('0.002', '0.0011', [COEFFICIENT]),
  'woods.Plum.coefficient.tangential': plan('0.003', '0.0025', [COEFFICIENT]),
  'family.target': plan('18', '17.5'),
  'family.spacers': plan('4', '5', FINGERS),
  'family.within': plan('0.2', '0.15', FINGERS),
  'family.halfPins': plan('4, 9', '5, 8', FINGERS),
  'cutter.diameter': plan('12', '11mm', [CUTTER]),
  'cutter.angle': plan('7', '8.5', [CUTTER]),
  'cutter.length': plan('21', '22', [CUTTER]),
  'cutter.neck': plan('7', '6', [CUTTER]),
  'cutter.straight': plan('4', '5', [CUTTER]),
  'cutter.bush': plan('16', '14', [CUTTER]),
  'cutter.pinBush': plan('16', '11', [CUTTER, { 'cutter.bush': '16' }]),
  'fingers.lapped.channel': plan('25', '26', FINGERS),
  'fingers.through.channel': plan('26', '25', FINGERS),
  'fingers.through.taper': plan('8', '8', [...FINGERS, { 'fingers.through.channel': '26' }]),
  'cabinet.width': plan('580', '575', [CABINET]),
  'cabinet.height': plan('380', '390', [CABINET]),
  'cabinet.depth': plan('400', '430', [CABINET]),
  'cabinet.rail': plan('15', '16', [CABINET]),
  'cabinet.divider': plan('10', '12', [CABINET]),
  'cabinet.rails.width': plan('50', '55', [CABINET]),
  'cabinet.rails.top': plan('18', '20', [CABINET]),
  'cabinet.rails.bottom': plan('18', '20', [CABINET]),
  'cabinet.rails.tenon': plan('6', '7', [CABINET]),
  'cabinet.rails.species': plan('Cherry, black', 'Ash, white', [CABINET]),
  'cabinet.dividers': plan('full', 'short', [CABINET]),
  'cabinet.runners.width': plan('25', '35', [CABINET]),
  'cabinet.runners.species': plan('Ash, white', 'Oak', [CABINET]),
  'cabinet.guides.height': plan('15', '25', [CABINET]),
  'cabinet.guides.sides': plan('10', '12', [CABINET]),
  'cabinet.vent': plan('6', '15', [CABINET]),
  'cabinet.heights': plan('76, auto, 190', 'equal', [CABINET]),
  'cabinet.heights.progression': plan('arithmetic', 'geometric', [
    CABINET,
    { 'cabinet.heights.progression': 'arithmetic', 'cabinet.heights.first': '80' },
  ]),
  'cabinet.heights.first': plan('80', '85', ARITHMETIC),
  'cabinet.heights.overall': plan('1.5', '2', ARITHMETIC),
  'cabinet.heights.step': plan('10', '12', ARITHMETIC),
  'cabinet.heights.ratio': plan('1.1', '1.2', GEOMETRIC),
  'cabinet.rows': plan('Buttons, {name: Thread, width: 200}\nCloth', 'Buttons\nThread\nCloth', [CABINET]),
  'saw.kerf': plan('2.5', '1/8in'),
  'saw.edge': plan('2', '4'),
  'saw.ends': plan('20', '30'),
  'saw.face': plan('1.5', '2'),
  'saw.keep': plan('250, 40', '200, 50'),
  'opening.width.front': own('280', '279.8', [{ 'opening.width.back': '279.5' }]),
  'opening.width.back': own('279.5', '279'),
  'opening.height.left': own('76', '75.8', [{ 'opening.height.right': '75.5' }]),
  'opening.height.right': own('75.5', '75'),
  'opening.height.back': own('75', '75.5'),
  'opening.diagonals.rising': own('290.3', '290.1', [DIAGONALS]),
  'opening.diagonals.falling': own('290.3', '290.2', [DIAGONALS]),
  'boxes.stock.front.species': box('Oak', 'Plum'),
  'boxes.stock.side.species': box('Oak', 'Plum'),
  'boxes.stock.back.species': box('Oak', 'Plum'),
  'boxes.stock.bottom.thickness': box('4', '5mm'),
  'boxes.stock.bottom.species': box('Oak', 'Plum'),
  'boxes.kind': box('lapped', 'secret-mitred', [{ 'joint.mitre': 'corner' }]),
  'boxes.joint.halfPin': box('6', '6, 7.5'),
  'boxes.joint.tails': box('3', '2'),
  'boxes.joint.pins': box('5', '5mm', [{ 'joint.halfPin': '6' }, { 'joint.tails': '36.5, 36.5' }]),
  'boxes.joint.graded.ratio': box('0.95', '0.9'),
  'boxes.joint.graded.from': box('middle', 'edge', [{ 'joint.graded.ratio': '0.95' }]),
  'boxes.joint.spacing': box('even', 'hounds-tooth', [{ 'joint.tails': '2' }]),
  'boxes.joint.groups': box('1, 2', '2, 1', [{ 'joint.groups': '1, 1' }, { 'joint.spacing': 'grouped' }]),
  'boxes.joint.groupPin': box('12', '13mm', [{ 'joint.groups': '1, 1' }, { 'joint.spacing': 'grouped' }]),
  'boxes.joint.smallPin': box('3', '3.5mm'),
  'boxes.joint.closer': box('0.8', '0.75'),
  'boxes.joint.closerTails': box('1', '2'),
  'boxes.joint.shoulder': box('lower', 'upper', [{ 'joint.mitre': 'corner' }]),
  'boxes.joint.mitre': box('corner', 'corner'),
  'boxes.joint.proud': box('0.5', '0.25mm'),
  'boxes.joint.chisel': box('4', '3.5'),
  'boxes.groove.stopped': box('auto', '6'),
  'boxes.bottom.kind': box('solid', 'panel'),
  'boxes.bottom.slack': box('0.6', '1mm'),
  'boxes.bottom.hold': box('rebate', 'groove', [{ 'stock.bottom.thickness': '4' }]),
  'boxes.lid.height': box('30', '28.5'),
  'boxes.lid.kerf': box('2', '1mm', [{ 'lid.height': '30' }]),
  'boxes.lid.made': box('apart', 'sawn', [{ 'lid.height': '30' }]),
  'joints.kind': lone('lapped', 'double-lapped'),
  'joints.halfPin': lone('8', '8, 9'),
  'joints.tails': lone('9', '8'),
  'joints.pins': lone('5', '5mm', [{ tails: '205, 210' }]),
  'joints.graded.ratio': lone('0.95', '0.9'),
  'joints.graded.from': lone('middle', 'edge', [{ 'graded.ratio': '0.95' }]),
  'joints.proud': lone('0.5', '0.25'),
  'joints.chisel': lone('4', '3.5'),
  'joints.mitre': lone('corner', 'corner'),
  'joints.shoulder': lone('lower', 'both'),
  'joints.spacing': lone('hounds-tooth', 'even'),
  'joints.groups': lone('2, 3, 2', '[4, 4]', [{ groups: '3, 3' }, { spacing: 'grouped' }]),
  'joints.groupPin': lone('25', '26mm', [{ groups: '3, 3' }, { spacing: 'grouped' }]),
  'joints.smallPin': lone('5', '5.5', [{ spacing: 'hounds-tooth' }]),
  'joints.closer': lone('0.8', '0.75', [{ spacing: 'closer-edges' }]),
  'joints.rail.between': lone('574', '600mm', RAIL),
  'joints.rail.sideWidth': lone('430', '450', RAIL),
  'joints.rail.setBack': lone('1', '0', RAIL),
  'joints.closerTails': lone('1', '3', [{ spacing: 'closer-edges' }]),
};

/** What the boards view has. */
const OF_BOARDS = ['boards', 'breakout'];

/** Keys whose controls stand elsewhere: what each does to the plan's text is tried below. */
const BY_HAND = {
  name: 'the name of the plan',
  'drawers.*.name': 'its own field',
  'drawers.*.count': 'its own field',
  'boxes.*.name': 'its own field',
  'boxes.*.count': 'its own field',
  'joints.*.name': 'its own field',
  'joint.locked': 'a button beside each width',
  'back.joint.locked': 'a button beside each width',
  'boxes.*.joint.locked': 'a button beside each width',
  'joints.*.locked': 'a button beside each width',
  'fingers.together': 'the section of fingers',
  'fingers.bush': 'the section of fingers',
  'fingers.pairs': 'the section of fingers',
  'fingers.bar': 'the section of fingers',
};

const BOX: CornerRef = { of: 'box', index: 0, end: 'front' };

const refOf = (of: Owner): CornerRef => (of === 'joint' ? LONE : of === 'box' ? BOX : FRONT);

/** Types into fields of one owner, and sets them together. */
const typeInto = (now: Snapshot, of: Owner, typed: Typed, scope = FIRST_SCOPE): Snapshot => {
  const settings = Object.entries(typed).map(([place, text]): Setting => {
    const at = place.split('.');
    const form = keyOf({ of, at })?.value;
    if (form === undefined) throw new Error(`no key ${place}`);
    return [{ of, at }, readText(text, form)];
  });
  return taken(setKeys(now, cornerIn(now, refOf(of)), settings, scope));
};

const taken = (made: Result<Snapshot>): Snapshot => {
  if (!made.ok) throw new Error(JSON.stringify(made.complaints));
  return made.value;
};

/** What a plan's text holds, read by a parser that is not the page's. */
const heldIn = ({ text }: Snapshot, of: Owner, at: Place): unknown =>
  writtenFor(load(text), refOf(of), { of, at });

/** The keys of a plan that the page is to have, with a star for any entry of a list and any name of the user's own. */
const KEYS = valuesIn(planKeys())
  .filter(({ at: [first = ''] }) => !OF_BOARDS.includes(String(first)))
  .map(({ at }) => at.join('.'));

/** What one drawer may have of its own is reached by the scope, in the fields of what all have. */
const ownOfDrawer = (key: string): string =>
  KEYS.includes(key.replace('drawers.*.', '')) ? key.replace('drawers.*.', '') : key;

const inGroups = KEY_GROUPS.flatMap((group) =>
  keysOfGroup(group)
    .flatMap(valuesIn)
    .filter(({ at }) => !isElsewhere(group, isOfEntry(group.of) ? at.slice(2) : at))
    .map(({ at }) => at.join('.')),
);
const measured = [
  ...[...measuredPlaces('drawer')].map((place) =>
    /^(?:opening|size)\./u.test(place) ? `drawers.*.${place}` : place,
  ),
  ...[...measuredPlaces('box')].map((place) => `boxes.*.${place}`),
  ...[...measuredPlaces('joint')].map((place) => `joints.*.${place}`),
];
/** `woods.Plum.…` and `opening.…` as the schema has them. */
const schemaName = (name: string): string =>
  name
    .replace('.Plum.', '.*.')
    .replace(/^(joints|boxes)\./u, '$1.*.')
    .replace(/^(?=(?:opening\.|asBuilt$))/u, 'drawers.*.');

describe('every key of a plan', () => {
  it('has a control on the page, and one place where it is shown', () => {
    const controls = [...inGroups, ...measured, ...Object.keys(BY_HAND)];
    expect(KEYS.map(ownOfDrawer).filter((key) => !controls.includes(key))).toEqual([]);
    expect(inGroups.filter((key, i) => inGroups.indexOf(key) !== i)).toEqual([]);
    expect(controls.filter((key) => !KEYS.includes(key))).toEqual([]);
  });

  it('that has a field in a group is tried here', () => {
    expect(inGroups.filter((key) => !Object.keys(SAMPLES).map(schemaName).includes(key))).toEqual([]);
  });

  it.each(Object.entries(SAMPLES))('%s is set, changed and cleared by hand', (name, sample) => {
    const { of, typed, before = [], scope } = sample;
    const place = name.replace(/^(?:joints|boxes)\./u, '');
    const at = place.split('.');
    let now = snapshotOf(/^(?:cutter|fingers|family)/u.test(place) ? UNCUT : PLAN);
    for (const each of before)
      now = typeInto(
        now,
        Object.keys(each).some((key) => key.startsWith('climate')) ? 'plan' : of,
        each,
        scope,
      );
    for (const text of typed) {
      now = typeInto(now, of, { [place]: text }, scope);
      const form = keyOf({ of, at })?.value;
      expect(heldIn(now, of, at)).toEqual(form && readText(text, form));
      // What is saved is what the program reads, comments and all.
      const read = readProject(new TextEncoder().encode(now.text));
      expect(read.ok && read.value).toEqual(now.project);
      expect(now.text).toContain('# bolder, as it is the deepest');
    }
    const group = groupToClear(of, at);
    if (group[0] === 'opening' && group.length === 2 && group[1] !== 'diagonals') {
      // One that was measured is planned again.
      now = typeInto(now, of, { [group.join('.')]: typed[1] });
      expect(heldIn(now, of, group)).toBe(Number(typed[1]));
      return;
    }
    const cleared = setKeys(
      now,
      cornerIn(now, refOf(of)),
      [[{ of, at: group }, undefined]],
      scope ?? FIRST_SCOPE,
    );
    const isNeeded = (of === 'joint' && place === 'kind') || at.at(-1) === 'groups';
    if (isNeeded) expect(cleared.ok).toBe(false);
    else expect(heldIn(taken(cleared), of, group)).toBe(undefined);
  });

  it.each(['front', 'back'] as const)('that is a measure at the %s is set and cleared', (end) => {
    const now = snapshotOf(CHEST);
    const corner = cornerIn(now, { of: 'drawer', index: 0, end });
    for (const quantity of quantitiesOf(corner)) {
      const { get, key, kind, shared, at } = quantity;
      const to = (get(corner) ?? 0) + (kind === 'slope' || key.startsWith('g') ? -0.5 : 0.5);
      const set = typeMeasure(now, corner, quantity, to, FIRST_SCOPE);
      if (!set.ok) throw new Error(`${key}: ${JSON.stringify(set.complaints)}`);
      expect(get(cornerIn(set.value, corner.ref))).toBeCloseTo(to, 4);
      const there = cornerIn(set.value, corner.ref);
      const isBackOwn = end === 'back' && at[0] === 'joint';
      const clear = unsetMeasure(set.value, there, quantity, FIRST_SCOPE);
      if (['width', 'height', 'depth', 'front', 'side'].includes(key)) expect(clear.ok).toBe(false);
      else
        expect(heldIn(taken(clear), shared ? 'drawers' : 'drawer', isBackOwn ? ['back', ...at] : at)).toBe(
          undefined,
        );
    }
  });

  it('with a control elsewhere is set and cleared there', () => {
    const now = snapshotOf(PLAN);
    const front = cornerIn(now, FRONT);
    expect(taken(rename(now, front, 'Bobbins')).text).toContain('{name: Bobbins, count: 2,');
    expect(taken(rename(now, cornerIn(now, LONE), 'Case')).text).toContain('{name: Case, kind');
    expect(taken(rename(now, cornerIn(now, BOX), 'Seals')).text).toContain('{name: Seals, size');
    expect(taken(setCount(now, cornerIn(now, BOX), 3)).text).toContain('thickness: 14}}, count: 3}');
    expect(taken(setCount(now, front, 3)).text).toContain('{name: Buttons, count: 3,');
    expect(taken(setCount(now, front, undefined)).text).toContain('{name: Buttons, opening');
    for (const ref of [FRONT, BACK, BOX, LONE]) {
      const corner = cornerIn(now, ref);
      const locked = taken(toggleLock(now, corner, 1));
      expect(valueAt(load(locked.text), [...corner.at, 'locked'])).toEqual(['tail 1']);
      const free = taken(toggleLock(locked, cornerIn(locked, ref), 1));
      expect(valueAt(load(free.text), [...corner.at, 'locked'])).toBe(undefined);
    }
    const guided = typeInto(snapshotOf(UNCUT), 'plan', CUTTER);
    const given = taken(setFingers(guided, { together: 14, bush: 16, pairs: 8, bar: 600 }));
    expect(load(given.text)).toMatchObject({ fingers: { together: 14, bush: 16, pairs: 8, bar: 600 } });
    const without = taken(setFingers(given, { pairs: undefined, bar: undefined }));
    expect(valueAt(load(without.text), ['fingers'])).toEqual({ together: 14, bush: 16 });
  });
});

/** What is cleared with a key that its group cannot be without: the group. */
const groupToClear = (of: Owner, at: Place): Place => {
  const group = at.slice(0, -1);
  const key = group.length === 0 ? undefined : keyOf({ of, at: group });
  // One of several that fix a progression is to stay.
  if (at.join('.') === 'cabinet.heights.ratio') return group;
  if (key === undefined || !key.required.includes(String(at.at(-1)))) return at;
  return group;
};
