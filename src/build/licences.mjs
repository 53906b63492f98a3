import { readdirSync, readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';

/** Written beside the program, and packed into the page. */
const FONTS = 'node_modules/dejavu-fonts-ttf/ttf/';

/** The folder of the package that a bundled file comes from. */
const packageOf = (path) => /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//u.exec(path)?.[1];

const FILE = /^(?:licen[cs]e|copying)(?:[.-](?:md|txt|mit))?$/iu;

/** The text of the MIT licence, without the line of the copyright holder. */
const MIT = readFileSync('LICENSE', 'utf8').replace(/^[\s\S]*?(?=Permission is hereby)/u, '');

const textOf = (folder, { name, license, author }) => {
  const file = readdirSync(folder).find((entry) => FILE.test(entry));
  if (file !== undefined) return readFileSync(join(folder, file), 'utf8');
  // Some packages name their licence without its text.
  if (license === 'MIT') return `Copyright (c) ${author}\n\n${MIT}`;
  throw new Error(`${name} has no licence to be shown`);
};

/**
 * The licences of everything that is bundled.
 * @param inputs the files that went into it, as esbuild's metafiles name them
 */
export const thirdParty = (inputs) => {
  const folders = new Set(
    [...inputs, FONTS].flatMap((path) => packageOf(path) ?? []).map((folder) => realpathSync(folder)),
  );
  const parts = [...folders].map((folder) => {
    const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const { name, version, license } = about;
    return `${'-'.repeat(78)}\n${name} ${version} (${license})\n\n${textOf(folder, about).trim()}\n`;
  });
  return ['Halfpin holds parts of these packages, under their licences.\n', ...parts.sort()].join('\n');
};
