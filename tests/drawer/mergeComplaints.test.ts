import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { mergeComplaints } from '../../src/drawer/mergeComplaints.ts';
import { refuse } from '../../src/units/complaint.ts';
import { mm, say } from '../../src/units/phrase.ts';
import { complaintsOf, value } from '../value.ts';
import { drawer, inOpening } from './chest.ts';

const shallow = { at: ['groove', 'depth'], says: say`too deep by ${mm(2)}`, hint: say`${mm(5)}` };
const thin = { at: ['stock', 'side', 'thickness'], says: say`too thin` };

describe('a complaint that several drawers share', () => {
  it('is made once, at the first, naming all, with the places of the others', () => {
    const said = mergeComplaints([
      { name: 'Buttons', entry: ['drawers', 0], complaint: shallow },
      { name: 'Buttons', entry: ['drawers', 0], complaint: thin },
      { name: 'Thread', entry: ['drawers', 1], complaint: shallow },
      { name: 'Cloth', entry: ['drawers', 4], complaint: shallow },
      { name: 'Cloth', entry: ['drawers', 4], complaint: { ...shallow, says: say`too deep by ${mm(3)}` } },
    ]);
    expect(complaintsOf(refuse(...said))).toEqual([
      'drawers.0.groove.depth: "Buttons", "Thread" and "Cloth": too deep by 2 mm; try 5mm',
      'drawers.0.stock.side.thickness: "Buttons": too thin',
      'drawers.4.groove.depth: "Cloth": too deep by 3 mm; try 5mm',
    ]);
    expect(said.map(({ also }) => also)).toEqual([
      [
        ['drawers', 1, 'groove', 'depth'],
        ['drawers', 4, 'groove', 'depth'],
      ],
      undefined,
      undefined,
    ]);
  });

  it('is so in the advice on a set, and in the complaints of a groove that all share', () => {
    const wished = { joint: { ...drawer().joint, halfPin: { lower: 9, upper: 6 } } };
    const twins = [drawer(wished), drawer({ ...wished, name: 'Thread' })];
    expect(complaintsOf(refuse(...value(layOutSet(twins)).advice))).toEqual([
      'drawers.0.joint.halfPin: "Buttons" and "Thread": the lower half pin is 7.86 mm instead of 9 mm, so that the lowest tail hides the groove',
    ]);
    const groove = { offset: 11, width: 5, depth: 30 };
    const refused = complaintsOf(
      layOutSet([drawer({ groove }), inOpening(280, 110, 420, { groove, name: 'Ribbon' })]),
    );
    const onGroove = refused.filter((line) => line.startsWith('drawers.0.groove'));
    expect(onGroove.length).toBeGreaterThan(0);
    for (const line of onGroove) expect(line).toMatch(/^[\w.]+: "Buttons" and "Ribbon": /u);
    expect(refused.filter((line) => line.startsWith('drawers.1.groove'))).toEqual([]);
  });
});
