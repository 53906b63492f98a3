// Names in scripts that run from right to left, and in a font that is chosen, on the page's sheets.

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { folder, halfpin } from '../cli/program.ts';
import { CHEST } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { download, give } from '../page/steering.ts';
import { fontWith } from '../render/letters/fontWith.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
afterAll(() => there.close());

it('prints names from right to left as the program does, and other letters once a font is chosen for them', async () => {
  const page = await there.open();
  const where = folder();
  const plan = CHEST.replace('name: Buttons', 'name: أزرار').replace('name: Cloth', 'name: 布袋');
  writeFileSync(join(where, 'plan.yaml'), plan);
  writeFileSync(join(where, 'han.ttf'), fontWith('布袋'));
  await give(page, 'plan.yaml', Buffer.from(plan));
  await page.click('#save-sheets');
  const preview = page.locator('#preview');
  await preview.locator('.stop').waitFor();
  expect(await preview.textContent()).toContain(
    'the fonts of the sheets lack the letter "布" (Chinese characters, U+5E03) of "布袋"; choose a font file that has it, under Paper',
  );
  await page.setInputFiles('#font', { name: 'no.ttf', mimeType: '', buffer: Buffer.from('none') });
  await preview.filter({ hasText: 'this is no font' }).waitFor();
  await page.setInputFiles('#font', join(where, 'han.ttf'));
  await page.locator('#preview[data-state="ready"]').waitFor();
  const { bytes } = await download(page, '#take-bench');
  const args = ['draw', 'plan.yaml', '--font', 'han.ttf', '--sheets', 'bench', '--out', 'out'];
  expect(halfpin(args, where)).toMatchObject({ status: 0, err: '' });
  expect(bytes.equals(readFileSync(join(where, 'out', 'haberdashery-chest-bench.pdf')))).toBe(true);
  await page.context().close();
});
