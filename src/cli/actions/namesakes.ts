import { readdir, realpath } from 'node:fs/promises';
import { dirname, extname, join } from 'node:path';
import { readRegular } from '../../files/readInput.ts';
import { fileStem } from '../../sheets/fileStem.ts';

/** The most of a plan beside another that is read for its name, in bytes. */
const MOST = 1 << 20;

/**
 * The other plans in a plan's folder whose files would have the same names, as they have the same name: a copy, or another
 * piece of furniture. What cannot be read as a plan is none.
 * @param plan the path of its file; undefined for a corner of options
 * @returns their paths
 */
export const namesakesOf = async (plan: string | undefined, name: string): Promise<string[]> => {
  if (plan === undefined) return [];
  const own: string | undefined = await realpath(plan).catch(() => undefined);
  if (own === undefined) return [];
  const folder = dirname(plan);
  const { readPlan } = await import('../../plan/readPlan.ts');
  const found: string[] = [];
  for (const file of (await readdir(folder).catch(() => [])).sort()) {
    const path = join(folder, file);
    if (!['.yaml', '.yml', '.json'].includes(extname(file).toLowerCase())) continue;
    const real = await realpath(path).catch(() => undefined);
    if (real === undefined || real === own) continue;
    const bytes = await readRegular(path, 'a plan', MOST).catch(() => undefined);
    const reading = bytes && readPlan(bytes);
    if (reading?.ok === true && fileStem(reading.plan.name) === fileStem(name)) found.push(path);
  }
  return found;
};
