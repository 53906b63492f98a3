import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { Failure, WRONG_INPUT } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import { writeWhole } from '../../files/writeWhole.ts';
import type { PageOptions } from '../commands/page.ts';

/** As the build lays it beside the program. */
const PAGE = 'halfpin.html';
/** There too: the files of a site, and the head that its page has instead of its own policy. */
const SITE = 'site/';
const SITE_HEAD = 'head.html';

const POLICY = /<meta http-equiv="Content-Security-Policy"[^>]*>/u;

/** Writes the page, or a site of it, and opens it with --open. Throws a Failure where it cannot be written so. */
export const writePage = async ({ out, site, open, force }: PageOptions): Promise<void> => {
  if (site !== undefined) return writeSite(site, force === true);
  if (await isFolder(out))
    throw new Failure([`--out: ${out} is a folder; try ${join(out, PAGE)}`], WRONG_INPUT);
  await guardOverwrite([out], force === true);
  const page = await readFile(beside(PAGE));
  await writeWhole(out, (write) => write(page));
  process.stdout.write(`${out}: the page; it works without a network and keeps your plan in your browser\n`);
  if (open) await (await import('../../files/openInBrowser.ts')).openInBrowser(out, process.platform);
};

const beside = (name: string): URL => new URL(name, import.meta.url);

const writeSite = async (folder: string, force: boolean): Promise<void> => {
  const found = await stat(folder).catch(() => undefined);
  if (folder === '' || (found !== undefined && !found.isDirectory()))
    throw new Failure([`--site: ${folder || '""'} is no folder; give a folder, new or not`], WRONG_INPUT);
  const names = (await readdir(beside(SITE))).filter((name) => name !== SITE_HEAD);
  await guardOverwrite(
    ['index.html', ...names].map((name) => join(folder, name)),
    force,
  );
  const [page, head] = await Promise.all([
    readFile(beside(PAGE), 'utf8'),
    readFile(beside(SITE + SITE_HEAD), 'utf8'),
  ]);
  const write = (name: string, data: Uint8Array | string) =>
    writeWhole(join(folder, name), (part) => part(data));
  await write(
    'index.html',
    page.replace(POLICY, () => head),
  );
  // Browsers take a site anew when its worker has changed, so that is written last.
  for (const name of names.sort()) await write(name, await readFile(beside(SITE + name)));
  process.stdout.write(
    `${folder}: the page as a site; a phone that opened it once over https opens it without a network\n`,
  );
};

const isFolder = async (path: string): Promise<boolean> => {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    return false;
  }
};
