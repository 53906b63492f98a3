import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { makeSheets } from '../../../src/page/sheets/makeSheets.ts';
import type { JobEnd, JobNews, SheetChoice, SheetTask } from '../../../src/page/sheets/sheetJob.ts';
import { halfpin } from '../../cli/program.ts';
import { BOARDS, SMALL_SET } from '../../drawer/blanks/boardsPlan.ts';
import { FONTS } from '../../render/fonts.ts';
import { BOX, CHEST } from '../chest.ts';

const CHOICE: SheetChoice = { paper: 'A4', margin: '6', boards: 'both', flat: false, rods: false };

const made = async (
  task: SheetTask,
  choice: Partial<SheetChoice> = {},
  plan = BOX,
): Promise<{ end: JobEnd; news: JobNews[] }> => {
  const news: JobNews[] = [];
  const end = await makeSheets({ plan, choice: { ...CHOICE, ...choice }, task }, FONTS, (each) =>
    news.push(each),
  );
  return { end, news };
};

const fileOf = (end: JobEnd) => {
  if (end.is !== 'made' || end.file === undefined) throw new Error(JSON.stringify(end));
  return end.file;
};

describe('makeSheets', () => {
  it('tells each sheet before it is drawn, and names the file for the plan', async () => {
    const { end, news } = await made({ make: 'pdf', kind: 'templates' }, {}, CHEST);
    const { name, ending, blob } = fileOf(end);
    expect([name, ending, blob.type]).toEqual(['Haberdashery chest', '-templates.pdf', 'application/pdf']);
    expect(news.length).toBeGreaterThan(1);
    expect(news).toEqual(news.map((_, i) => ({ is: 'progress', number: i + 1, of: news.length })));
    const sheets = (await blob.text()).match(/\/Type \/Page\n/gu);
    expect(sheets).toHaveLength(news.length);
    expect(end).toMatchObject({ says: expect.stringMatching(`^${news.length} sheets of A4`) });
  });

  it('tells each piece that goes into the zip', async () => {
    const { end, news } = await made({ make: 'pieces' }, { boards: 'tail' });
    const files = unzipSync(new Uint8Array(await fileOf(end).blob.arrayBuffer()));
    expect(Object.keys(files).sort()).toEqual(['corner-tail-board-a.svg', 'corner-tail-board-b.svg']);
    expect(news.at(-1)).toEqual({ is: 'progress', number: 2, of: 2 });
  });

  it('lists the parts with their boards and letters, as the program does', async () => {
    const plan = BOARDS + SMALL_SET;
    const { end } = await made({ make: 'parts' }, { paper: 'A99' }, plan);
    const { ending, blob } = fileOf(end);
    expect([ending, blob.type]).toEqual(['-parts.csv', 'text/csv']);
    const at = mkdtempSync(join(tmpdir(), 'halfpin-'));
    writeFileSync(join(at, 'plan.yaml'), plan);
    const table = await blob.text();
    expect(table).toBe(halfpin(['parts', 'plan.yaml', '--csv'], at).out);
    rmSync(at, { recursive: true });
    expect(table).toMatch(/^Cloth,front,1,.*,Cherry,N\r$/mu);
  });

  it('says of paper and margin all that is wrong, in the plan’s unit', async () => {
    const task: SheetTask = { make: 'pdf', kind: 'templates' };
    const { end } = await made(task, { paper: 'A99', margin: 'wide' });
    expect(end).toMatchObject({
      is: 'refused',
      says: [expect.stringMatching('A99'), expect.stringMatching('wide')],
    });
    const inches = 'units: in\njoints: [{name: A, kind: through, width: 3, tailBoard: 1/2, pinBoard: 1/2}]';
    const wide = await made(task, { margin: '9' }, inches);
    expect(wide.end).toMatchObject({
      is: 'refused',
      says: [expect.stringMatching(/^the margin is 9"; it must be/u)],
    });
  });
});
