import { THICKNESS_RANGE } from '../../joint/jointLimits.ts';
import type { Complaint, Place } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { checkRange, type Range } from '../../units/range.ts';
import {
  BOTTOM_THICKNESS_RANGE,
  CLEARANCE_RANGE,
  COUNT_RANGE,
  GROOVE_RANGE,
  LIP_RANGE,
  SPACE_RANGE,
} from '../drawerLimits.ts';
import type { DrawerSpec } from '../drawerSpec.ts';

type Measure = readonly [at: Place, what: string, value: number, range: Range];

const measuresOf = ({ space, lip, stock, groove, backDrop, bottom, box }: DrawerSpec): Measure[] => {
  const outer = space.kind === 'opening' ? space.opening : space.size;
  const whose = space.kind === 'opening' ? "the opening's" : box === undefined ? "the drawer's" : "the box's";
  const measures: Measure[] = [
    [[space.kind, 'width'], `${whose} width`, outer.width, SPACE_RANGE],
    [[space.kind, 'height'], `${whose} height`, outer.height, SPACE_RANGE],
    [[space.kind, 'depth'], `${whose} depth`, outer.depth, SPACE_RANGE],
    [['stock', 'front', 'thickness'], "the front's thickness", stock.front.thickness, THICKNESS_RANGE],
    [['stock', 'side', 'thickness'], "the sides' thickness", stock.side.thickness, THICKNESS_RANGE],
    [['stock', 'back', 'thickness'], "the back's thickness", stock.back.thickness, THICKNESS_RANGE],
    [
      ['stock', 'bottom', 'thickness'],
      "the bottom's thickness",
      stock.bottom.thickness,
      BOTTOM_THICKNESS_RANGE,
    ],
    [['groove', 'offset'], "the groove's offset", groove.offset, CLEARANCE_RANGE],
    [['groove', 'width'], "the groove's width", groove.width, GROOVE_RANGE],
    [['groove', 'depth'], "the groove's depth", groove.depth, GROOVE_RANGE],
    [['back', 'drop'], "the back's drop", backDrop, CLEARANCE_RANGE],
    [['bottom', 'slack'], "the bottom's slack", bottom.slack, CLEARANCE_RANGE],
  ];
  if (space.kind === 'opening')
    measures.push(
      [['fit', 'side'], 'the clearance at each side', space.fit.side, CLEARANCE_RANGE],
      [['fit', 'top'], 'the clearance above', space.fit.top, CLEARANCE_RANGE],
      [['fit', 'behind'], 'the clearance behind', space.fit.behind, CLEARANCE_RANGE],
    );
  if (lip !== undefined)
    measures.push(
      [['front', 'lip', 'sides'], 'the lip at each side', lip.sides, LIP_RANGE],
      [['front', 'lip', 'top'], 'the lip above', lip.top, LIP_RANGE],
      [['front', 'lip', 'bottom'], 'the lip below', lip.bottom, LIP_RANGE],
    );
  if (bottom.hold.kind === 'slips')
    measures.push(
      [['bottom', 'slips', 'width'], "the slips' width", bottom.hold.width, THICKNESS_RANGE],
      [['bottom', 'slips', 'height'], "the slips' height", bottom.hold.height, THICKNESS_RANGE],
    );
  return measures;
};

/** Everything that is wrong with a wish's single measures, each taken by itself. */
export const checkMeasures = (spec: DrawerSpec): Complaint[] => [
  ...(Number.isInteger(spec.count) && spec.count >= COUNT_RANGE.least && spec.count <= COUNT_RANGE.most
    ? []
    : [
        {
          at: ['count'],
          says: say`${spec.count} is no number of ${spec.box === undefined ? 'drawers' : 'boxes'}; it must be a whole number, ${COUNT_RANGE.least} to ${COUNT_RANGE.most}`,
        },
      ]),
  ...measuresOf(spec).flatMap(([at, what, value, range]) => checkRange(at, what, value, range)),
];
