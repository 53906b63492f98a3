import { type BoxSpec, type DrawerSpec, lidName, USUAL_BOX } from '../../drawer/drawerSpec.ts';
import type { Cutting } from '../../router/limits/cutting.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../../units/complaint.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { mm, say } from '../../units/phrase.ts';
import { MM_PER_INCH } from '../../units/unit.ts';
import type { WrittenBox, WrittenPlan } from '../schema/planSchema.ts';
import { fillDrawer } from './fillDrawer.ts';
import { withoutSpacing } from './fillJoint.ts';

/** The keys that a plan gives for its drawers and boxes. */
type BoxDefaults = Pick<WrittenPlan, 'stock' | 'joint' | 'groove' | 'bottom'>;

/** What saw and plane take between a box and its lid, in mm, unless given; common practice, without a source. */
const USUAL_KERF = { mm: 1.5, in: MM_PER_INCH / 16 } as const;

/** A box, and its lid where that is made apart. */
export interface FilledBox {
  readonly box: DrawerSpec;
  readonly lid?: DrawerSpec;
}

/**
 * A box, and its lid where that is made apart: that is a box of its own as high as is given, whose tails are spaced by themselves.
 * A lid that is sawn off is a part of its box.
 */
export const fillBox = (
  plan: BoxDefaults,
  written: WrittenBox,
  at: Place,
  notation: Notation,
  cutting: Pick<Cutting, 'cutter' | 'fingers'> | undefined,
): Result<FilledBox> => {
  const { lid, ...box } = written;
  const fill = (of: Omit<WrittenBox, 'lid'>, kind: BoxSpec): Result<DrawerSpec> =>
    fillOne(plan, of, kind, at, notation, cutting);
  if (lid?.made !== 'apart') {
    const { height, kerf = USUAL_KERF[unitOf(notation)] } = lid ?? {};
    const filled = fill(box, height === undefined ? {} : { lid: { height, kerf } });
    return filled.ok ? accept({ box: filled.value }) : filled;
  }
  const wrong = wrongApart(lid, box.size.height, at);
  if (wrong.length > 0) return refuse(...wrong);
  const { size, name, joint, ...rest } = box;
  const [body, top] = [
    fill({ ...box, size: { ...size, height: size.height - lid.height } }, {}),
    fill(
      {
        ...rest,
        name: lidName(name),
        size: { ...size, height: lid.height },
        ...(joint && { joint: withoutSpacing(joint) }),
      },
      { isLid: true },
    ),
  ];
  // What is wrong with both is their entry's, and told once.
  if (!body.ok) return body;
  if (!top.ok) return top;
  return accept({ box: body.value, lid: top.value });
};

const wrongApart = (
  { height, kerf }: NonNullable<WrittenBox['lid']>,
  whole: number,
  at: Place,
): Complaint[] => [
  ...(kerf === undefined
    ? []
    : [
        {
          at: [...at, 'lid', 'kerf'],
          says: say`a lid that is made apart is not sawn off, so no saw takes anything`,
          remedy: say`remove it, or let the lid be sawn off (made: sawn)`,
        },
      ]),
  ...(height < whole
    ? []
    : [
        {
          at: [...at, 'lid', 'height'],
          says: say`a lid of ${mm(height)} leaves nothing of a box ${mm(whole)} high, lid and all`,
        },
      ]),
];

/**
 * A box's spec, from its own keys, else what the plan gives for drawers: its boards, its bottom and its groove, unless that
 * is stopped; and of the plan's `joint` what a single corner takes. No climate moves it, as it has no opening to fit.
 */
const fillOne = (
  { stock = {}, joint = {}, groove: { stopped: _, ...groove } = {}, bottom = {} }: BoxDefaults,
  { kind = USUAL_BOX, stock: own = {}, joint: ownJoint = {}, ...box }: Omit<WrittenBox, 'lid'>,
  kindOfBox: BoxSpec,
  at: Place,
  notation: Notation,
  cutting: Pick<Cutting, 'cutter' | 'fingers'> | undefined,
): Result<DrawerSpec> => {
  const front = { ...stock.front, ...own.front };
  if (front.thickness === undefined)
    return refuse({
      at: [...at, 'stock', 'front', 'thickness'],
      says: say`the thickness of the front is missing; without it no box can be sized`,
      hint: say`stock: {front: {thickness: 9mm}}`,
    });
  const { hold = 'groove', ...ownBottom } = box.bottom ?? {};
  const isRebated = hold === 'rebate';
  const lies = (['offset', 'width'] as const).filter((key) => box.groove?.[key] !== undefined);
  if (isRebated && lies.length > 0)
    return refuse(
      ...lies.map((key) => ({
        at: [...at, 'groove', key],
        says: say`a rebate lies along the lower edge, and is as high as the bottom is thick`,
        remedy: say`remove it, or let a groove hold the bottom (bottom.hold)`,
      })),
    );
  const { slips: __, ...bottomOfAll } = bottom;
  return fillDrawer(
    {
      stock: {
        ...(stock.bottom && { bottom: stock.bottom }),
        front,
        side: stock.side?.thickness === undefined ? { ...front, ...stock.side } : stock.side,
      },
      joint: withoutSpacing(joint),
      groove,
      bottom: bottomOfAll,
    },
    { ...box, bottom: ownBottom, isRebated, stock: own, joint: { kind, ...ownJoint }, box: kindOfBox },
    at,
    notation,
    cutting,
  );
};
