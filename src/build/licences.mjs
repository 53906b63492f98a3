import { existsSync, readdirSync, readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';

/** Written beside the program, and packed into the page. */
const FONTS = 'node_modules/dejavu-fonts-ttf/ttf/';

/** What a file of a package holds of another author whose licence is not beside it, and the words there that tell. */
const HELD = [
  {
    name: 'core-js-pure 3.49.0',
    tells: 'https://github.com/zloirock/core-js/blob/v3.49.0/LICENSE',
    holder: '2013–2025 Denis Pushkarev (zloirock.ru), 2025–2026 CoreJS Company (core-js.io)',
  },
  {
    name: 'fromcodepoint 0.1.0',
    tells: 'http://mths.be/fromcodepoint v0.1.0 by @mathias',
    holder: 'Mathias Bynens',
  },
];

/** The folder of the package that a bundled file comes from. */
const packageOf = (path) => /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//u.exec(path)?.[1];

const FILE = /^(?:licen[cs]e|copying)(?:[.-](?:md|txt|mit))?$/iu;

/** The text of the MIT licence, without the line of the copyright holder. */
const MIT = readFileSync('LICENSE', 'utf8').replace(/^[\s\S]*?(?=Permission is hereby)/u, '');

const mit = (holder) => `Copyright (c) ${holder}\n\n${MIT.trim()}\n`;

const textOf = (folder, { name, license, author }) => {
  const file = readdirSync(folder).find((entry) => FILE.test(entry));
  if (file !== undefined) return readFileSync(join(folder, file), 'utf8');
  // Some packages name their licence without its text.
  if (license === 'MIT') return mit(author);
  throw new Error(`${name} has no licence to be shown`);
};

/** Comments that are to be kept: those marked so, and those that name a holder of copyright. */
const notices = (code) =>
  [...code.matchAll(/\/\*[\s\S]*?\*\//gu)]
    .map(([comment]) => comment.replaceAll('\r', ''))
    .filter((comment) => comment.startsWith('/*!') || /copyright|@licen[cs]e/iu.test(comment));

/** The packages that a bundled file was itself bundled from, as its source map names them. */
const bundledIn = (path) =>
  existsSync(`${path}.map`)
    ? JSON.parse(readFileSync(`${path}.map`, 'utf8')).sources.flatMap(
        (source) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//u.exec(source)?.[1] ?? [],
      )
    : [];

const section = (title, text) => `${'-'.repeat(78)}\n${title}\n\n${text.trim()}\n`;

/**
 * The licences of everything that is bundled, and of what was bundled in that before.
 * @param inputs the files that went into it, as esbuild's metafiles name them
 */
export const thirdParty = (inputs) => {
  const files = [...inputs].filter((path) => packageOf(path) !== undefined && /\.[cm]?js$/u.test(path));
  const code = files.map((path) => ({ path, text: readFileSync(path, 'utf8') }));
  const held = HELD.filter(({ tells }) => code.some(({ text }) => text.includes(tells)));
  const inside = new Set(files.flatMap(bundledIn));
  for (const name of inside)
    if (!existsSync(`node_modules/${name}`) && !held.some((each) => each.name.startsWith(`${name} `)))
      throw new Error(`${name} is bundled in a package, and its licence is not known`);
  const folders = new Set(
    [...inputs, FONTS, ...[...inside].map((name) => `node_modules/${name}/`)]
      .flatMap((path) => packageOf(path) ?? [])
      .filter((folder) => existsSync(folder))
      .map((folder) => realpathSync(folder)),
  );
  const parts = [...folders].map((folder) => {
    const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const kept = code
      .filter(({ path }) => realpathSync(packageOf(path)) === folder)
      .flatMap(({ text }) => notices(text));
    return section(
      `${about.name} ${about.version} (${about.license})`,
      [textOf(folder, about).trim(), ...new Set(kept)].join('\n\n'),
    );
  });
  const others = held.map(({ name, holder }) =>
    section(`${name}, inside another package (MIT)`, mit(holder)),
  );
  return [
    'Halfpin holds parts of these packages, under their licences.\n',
    ...[...parts, ...others].sort(),
  ].join('\n');
};
