// Makes dist/: the program and the library, each one bundled file with what is heavy in parts loaded on demand, and the page.
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';
import { BUNDLING } from './bundling.mjs';
import { writeDeclarations } from './declarations.mjs';
import { font } from './fonts.mjs';
import { thirdParty } from './licences.mjs';
import { buildPage } from './page.mjs';
import { buildSite } from './site.mjs';
import { startInOneFile } from './startup.mjs';

rmSync('dist', { recursive: true, force: true });
const { metafile } = await build({
  ...BUNDLING,
  entryPoints: { halfpin: 'src/cli/halfpin.ts', index: 'src/index.ts' },
  outdir: 'dist',
  plugins: [startInOneFile('src/cli/halfpin.ts')],
  metafile: true,
});
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
writeFileSync('dist/THIRD-PARTY.txt', thirdParty([...Object.keys(metafile.inputs), ...inputs]));
writeDeclarations();
