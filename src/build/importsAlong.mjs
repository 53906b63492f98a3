import { resolve } from 'node:path';
import { ON_DEMAND } from './startup.mjs';

/** To read so many bytes more takes no longer than to find and read a file of their own. */
const SMALL = 3000;

const holdsAll = (set, others) => [...others].every((each) => set.has(each));

/** A module's path, whether it is loaded on demand or not. */
const pathOf = (name) => resolve(name.replace(`${ON_DEMAND}:`, ''));

/** The modules that ask for each part, by the path of the part. */
const askersOf = (inputs) => {
  const askers = new Map();
  for (const [name, { imports }] of Object.entries(inputs))
    for (const { kind, path } of imports)
      if (kind === 'dynamic-import') askers.set(pathOf(path), [...(askers.get(pathOf(path)) ?? []), name]);
  return askers;
};

/**
 * What the program and its parts must import in addition for few files to be loaded. A part that one module alone asks for
 * imports that, which is loaded by then. The modules of each small file go into the larger one that fewest load, of those
 * that are loaded wherever it is, and with which it loads nothing more.
 * @param metafile that of a first build
 * @returns paths of modules, by the path of the program or part that is to import them
 */
export const importsAlong = ({ inputs, outputs }) => {
  const along = new Map();
  const add = (part, modules) => along.set(part, [...(along.get(part) ?? []), ...modules.map(pathOf)]);
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
  const askers = askersOf(inputs);
  for (const [name, { entryPoint }] of Object.entries(outputs)) {
    if (entryPoint === undefined) continue;
    const part = pathOf(entryPoint);
    load(name, part);
    const [asker, ...others] = askers.get(part) ?? [];
    if (asker === undefined || others.length > 0) continue;
    add(part, [asker]);
    for (const [each, { inputs }] of Object.entries(outputs)) if (asker in inputs) load(each, part);
  }

  const fewestFirst = [...loaders.keys()]
    .filter((name) => name in outputs)
    .sort((one, other) => loaders.get(one).size - loaders.get(other).size);
  const isSmall = (name) => outputs[name].entryPoint === undefined && outputs[name].bytes < SMALL;
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
    for (const part of loaders.get(host)) add(part, Object.keys(outputs[name].inputs));
  }
  return along;
};
