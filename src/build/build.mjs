// Makes dist/: the program and the library, each one bundled file with what is heavy in parts loaded on demand, and the page.
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';
import { BUNDLING, fromRoot } from './bundling.mjs';
import { writeDeclarations } from './declarations.mjs';
import { font } from './fonts.mjs';
import { importsAlong } from './importsAlong.mjs';
import { thirdParty } from './licences.mjs';
import { buildPage } from './page.mjs';
import { buildSite } from './site.mjs';
import { startInOneFile } from './startup.mjs';

rmSync('dist', { recursive: true, force: true });
const PROGRAM = 'src/cli/halfpin.ts';
const buildProgram = (options) =>
  build({ ...BUNDLING, entryPoints: { halfpin: PROGRAM }, outdir: 'dist', metafile: true, ...options });
const first = await buildProgram({ plugins: [startInOneFile(PROGRAM)], write: false });
const along = importsAlong(first.metafile);
const program = await buildProgram({ plugins: [startInOneFile(PROGRAM, along)] });
const library = await build({
  ...BUNDLING,
  entryPoints: { index: 'src/index.ts' },
  outdir: 'dist',
  metafile: true,
});
const { planJsonSchema } = await import(fromRoot('dist/index.js'));
writeFileSync('dist/plan.schema.json', `${JSON.stringify(planJsonSchema(), null, 2)}\n`);
mkdirSync('dist/fonts', { recursive: true });
for (const name of ['DejaVuSansCondensed', 'DejaVuSansCondensed-Bold'])
  writeFileSync(`dist/fonts/${name}.ttf`, font(name));
cpSync('node_modules/dejavu-fonts-ttf/LICENSE', 'dist/fonts/LICENSE');
const { html, policy, inputs } = await buildPage();
writeFileSync('dist/halfpin.html', html);
const { files, head } = await buildSite(html, policy);
mkdirSync('dist/site');
writeFileSync('dist/site/head.html', head);
for (const [name, data] of files) writeFileSync(`dist/site/${name}`, data);
const bundled = [program, library].flatMap(({ metafile }) => Object.keys(metafile.inputs));
writeFileSync('dist/THIRD-PARTY.txt', thirdParty([...bundled, ...inputs]));
writeDeclarations();
