import { resolve } from 'node:path';
import { ON_DEMAND } from './startup.mjs';

/** To read so many bytes more takes no longer than to find and read a file of their own. */
const SMALL = 3000;

const holdsAll = (set, others) => [...others].every((each) => set.has(each));

/**
 * What the program and its parts must import in addition for small files to be in larger ones: each goes into the one that
 * fewest load, of those that are loaded wherever it is, and with which it loads nothing more.
 * @param outputs those of a first build, from esbuild's metafile
 * @returns the modules of small files, by the path of the program or part that is to import them
 */
export const smallPartsAlong = (outputs) => {
  /** Other files, and modules of Node but for the one with which Node itself reads files. */
  const importsOf = (name) =>
    outputs[name]?.imports.flatMap(({ kind, path }) =>
      kind === 'import-statement' && path !== 'node:fs/promises' ? [path] : [],
    ) ?? [];

  /** The program or parts that load each of them. */
  const loaders = new Map();
  const load = (name, part) => {
    const known = loaders.get(name) ?? new Set();
    if (known.has(part)) return;
    loaders.set(name, known.add(part));
    for (const each of importsOf(name)) load(each, part);
  };
  for (const [name, { entryPoint }] of Object.entries(outputs))
    if (entryPoint !== undefined) load(name, resolve(entryPoint.replace(`${ON_DEMAND}:`, '')));

  const fewestFirst = [...loaders.keys()]
    .filter((name) => name in outputs)
    .sort((one, other) => loaders.get(one).size - loaders.get(other).size);
  const isSmall = (name) => outputs[name].entryPoint === undefined && outputs[name].bytes < SMALL;
  const along = new Map();
  // A file's own imports are loaded by as many parts or more, and so have their places before it.
  for (const name of fewestFirst.filter(isSmall).reverse()) {
    const host = fewestFirst.find(
      (each) =>
        !isSmall(each) &&
        holdsAll(loaders.get(each), loaders.get(name)) &&
        importsOf(name).every((needed) => holdsAll(loaders.get(needed), loaders.get(each))),
    );
    if (host === undefined) continue;
    loaders.set(name, loaders.get(host));
    const modules = Object.keys(outputs[name].inputs).map((path) => resolve(path));
    for (const part of loaders.get(host)) along.set(part, [...(along.get(part) ?? []), ...modules]);
  }
  return along;
};
