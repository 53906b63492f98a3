import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CHEST, folder, GUIDED_CHEST, halfpin } from '../program.ts';

/** An example chest, its fronts with a lip of 6 mm all round. */
const lipped = (chest = CHEST): string => {
  const path = join(folder(), 'lipped.yaml');
  writeFileSync(path, `${readFileSync(chest, 'utf8')}\nfront: {lip: 6}\n`);
  return path;
};

/** Fronts of 20 mm with a lap of 5; half a millimetre is left free at each side. */
const FIRST =
  "cut the front's rebate first, along its ends and both edges, 15 mm deep; gauge the front from the rebate's shoulder, 6.5 mm in from the front's own end; mark it from the rebate's lower edge, 6 mm above the front's own";

describe('lay, of fronts with a lip', () => {
  it('says with each front that it is measured from its rebate', () => {
    const { out } = halfpin(['lay', lipped()]);
    expect(out.match(/pin board, inside face, from the rebate's shoulder: 11 mm/gu)).toHaveLength(6);
    expect(out.match(/pin board, both faces, from its end: 11 mm/gu)).toHaveLength(6);
    expect(out.replaceAll(/\n +/gu, ' ').split(`advice: ${FIRST}`)).toHaveLength(1 + 6);
  });

  it('stops a cutter in its sockets from there too', () => {
    const out = halfpin(['lay', lipped(GUIDED_CHEST)]).out.replaceAll(/\n +/gu, ' ');
    // Half the cut at the surface, (12.7 - 2 × 15 tan 8°) / 2 = 4.24, short of the 11 mm that a side is thick.
    expect(out.split("stop the cutter's centre 6.76 mm from the rebate's shoulder.")).toHaveLength(1 + 6);
    expect(halfpin(['lay', GUIDED_CHEST]).out.replaceAll(/\n +/gu, ' ')).toContain(
      "stop the cutter's centre 6.76 mm from the pin board's end.",
    );
  });

  it('gives that as advice in JSON, to the front alone', () => {
    const { joints } = JSON.parse(halfpin(['lay', lipped(), '--json']).out);
    for (const { corner, advice } of joints)
      expect(advice.filter((each: string) => each === FIRST)).toHaveLength(corner === 'front' ? 1 : 0);
    expect(joints).toHaveLength(12);
  });

  it('says nothing of a rebate where fronts are inset', () => {
    expect(halfpin(['lay', CHEST]).out).not.toContain('rebate');
  });
});
