import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BOARDS, SMALL_SET } from '../../drawer/blanks/boardsPlan.ts';
import { CHEST, folder, halfpin } from '../program.ts';

const python = spawnSync('python3', ['-c', 'import csv']).status === 0;

type CsvRow = Record<
  | 'drawer'
  | 'part'
  | 'count'
  | 'species'
  | 'worked'
  | `${'length' | 'width' | 'thickness' | 'rough length'} mm`,
  string
>;

describe('parts --csv', () => {
  it.skipIf(!python)('is read by another parser as the parts that --json gives, odd names and all', () => {
    const where = folder();
    const names = ['=1+1', 'Thread, "fine"', 'Écharpes'];
    writeFileSync(
      join(where, 'plan.yaml'),
      [
        'stock: {front: {thickness: 20, species: "Cherry, black"}, side: {thickness: 11}, back: {thickness: 11}, bottom: {thickness: 5}}',
        'drawers:',
        ...names.map(
          (name) => `  - {name: ${JSON.stringify(name)}, opening: {width: 280, height: 90, depth: 420}}`,
        ),
        '',
      ].join('\n'),
    );
    const written = halfpin(['parts', 'plan.yaml', '--csv'], where);
    expect(written.err).toBe('');
    // The csv module of Python's standard library.
    const read = spawnSync(
      'python3',
      [
        '-c',
        'import csv, io, json, sys; print(json.dumps(list(csv.DictReader(io.TextIOWrapper(sys.stdin.buffer, "utf-8", newline="")))))',
      ],
      { input: written.out, encoding: 'utf8' },
    );
    const rows = JSON.parse(read.stdout);
    const { parts } = JSON.parse(halfpin(['parts', 'plan.yaml', '--json'], where).out);
    expect(rows).toHaveLength(parts.length);
    rows.forEach((row: CsvRow, i: number) => {
      const part = parts[i];
      // What a spreadsheet would take for a formula is kept as text.
      expect(row.drawer).toBe(part.drawer === '=1+1' ? "'=1+1" : part.drawer);
      expect(row.part).toBe(part.part);
      expect(Number(row.count)).toBe(part.count);
      expect(Number(row['length mm'])).toBe(part.length);
      expect(Number(row['width mm'])).toBe(part.width);
      expect(Number(row['thickness mm'])).toBe(part.thickness);
      expect(Number(row['rough length mm'])).toBe(part.roughLength);
      expect(row.species).toBe(part.species ?? '');
      expect(row.worked).toBe(part.worked.join('; '));
    });
  });

  it('names the unit of its lengths, and gives inches as decimals', () => {
    const [heading = '', first = ''] = halfpin(['parts', CHEST, '--csv', '--units', 'in']).out.split('\r\n');
    expect(heading).toBe(
      'drawer,part,count,length in,width in,thickness in,rough length in,species,grain,worked',
    );
    // 279 / 25.4, 75 / 25.4, 20 / 25.4; 315 / 25.4 is 12.4016, and the next 1/16 in 12 7/16.
    expect(first).toMatch(/^Buttons,front,2,10\.9843,2\.9528,0\.7874,12\.4375,"Cherry, black",/);
  });
});

describe('a plan whose gaps are found by figures from memory', () => {
  const NOTE =
    'the figures of Pine, eastern white, by which it moves, are from memory of the Wood Handbook, Table 13-5; check before you rely on it';

  it.each(['parts', 'lay', 'draw'])(
    'says so in %s, in words and, where there is JSON, there too',
    (command) => {
      const where = folder();
      writeFileSync(
        join(where, 'plan.yaml'),
        [
          'climate: {making: 8%, driest: 6%, dampest: 12%}',
          'fit: {top: auto}',
          'stock: {front: {thickness: 20, species: white pine}, side: {thickness: 11, species: white pine}}',
          'drawers: [{name: Buttons, opening: {width: 280, height: 90, depth: 420}}]',
          '',
        ].join('\n'),
      );
      const { out } = halfpin([command, 'plan.yaml'], where);
      expect(out.replace(/\s+/gu, ' ')).toContain(`advice: ${NOTE}`);
      if (command !== 'draw')
        expect(JSON.parse(halfpin([command, 'plan.yaml', '--json'], where).out).advice).toContain(NOTE);
    },
  );
});

describe('parts --cutting-list', () => {
  const { parts, cuttingList } = JSON.parse(halfpin(['parts', CHEST, '--json']).out);

  it('prints the rows that --json has, each part with its rough width and thickness there', () => {
    const text = halfpin(['parts', CHEST, '--cutting-list']);
    expect(text.err).toBe('');
    expect(parts[0]).toMatchObject({ width: 75, roughWidth: 81, thickness: 20, roughThickness: 22 });
    for (const { count, roughLength, roughWidth } of cuttingList)
      expect(text.out).toMatch(new RegExp(`^ *${count} +${roughLength} +${roughWidth} `, 'mu'));
    expect(text.out).toMatch(/^fronts of Cherry, black, 20 mm when finished.*\d m³$/msu);
  });

  it('is a table for spreadsheets too, in the unit asked for', () => {
    const { out } = halfpin(['parts', CHEST, '--cutting-list', '--csv', '--units', 'in']);
    const [heading = '', first = '', ...more] = out.trimEnd().split('\r\n');
    expect(heading).toBe(
      'stock,species,count,rough length in,rough width in,rough thickness in,thickness in,parts',
    );
    // 189 mm and 3.175 on each edge: in mm the plan leaves 3.
    expect(first).toMatch(/^front,"Cherry, black",1,24\.0000|^front,"Cherry, black",1,24,7\.6772,/u);
    expect(more).toHaveLength(cuttingList.length - 1);
  });

  it('is in board feet in inches', () => {
    expect(halfpin(['parts', CHEST, '--cutting-list', '--units', 'in']).out).toMatch(
      /\d\.\d\d board\s+feet/u,
    );
  });

  it('is refused beside --json, which holds it', () => {
    const { status, err } = halfpin(['parts', CHEST, '--cutting-list', '--json']);
    expect([status, err]).toEqual([
      2,
      '--cutting-list: --json holds the cutting list in any case; remove the option\n',
    ]);
  });
});

describe('parts of a plan with boards', () => {
  it('name the boards that they come out of, the same as breakout', () => {
    const at = folder();
    writeFileSync(join(at, 'plan.yaml'), BOARDS + SMALL_SET);
    const { parts } = JSON.parse(halfpin(['parts', 'plan.yaml', '--json'], at).out);
    const { boards } = JSON.parse(halfpin(['breakout', 'plan.yaml', '--json'], at).out);
    const named = parts.map(
      ({ drawer, part, boards }: { drawer: string; part: string; boards: string[] }) => [
        drawer,
        part,
        boards.length,
      ],
    );
    expect(named).toContainEqual(['Buttons', 'bottom', 0]);
    expect(parts[0].boards).toEqual(['Cherry']);
    expect(halfpin(['parts', 'plan.yaml'], at).out).toMatch(/^Cloth +front +Cherry N$/mu);
    const [heading, first] = halfpin(['parts', 'plan.yaml', '--csv'], at).out.split('\r\n');
    expect(heading).toMatch(/,worked,boards,letters$/u);
    expect(first).toMatch(/,Cherry,"E, F"$/u);
    // Each letter is that of such a part on that board.
    const onBoards = boards.flatMap(
      ({
        name,
        copy,
        blanks,
      }: {
        name: string;
        copy: number;
        blanks: { drawer: string; part: string; letter: string }[];
      }) =>
        blanks.map(
          (blank) =>
            `${blank.drawer} ${blank.part} ${name === 'Ash' ? `Ash no. ${copy}` : name} ${blank.letter}`,
        ),
    );
    const inList = parts.flatMap(
      (row: { drawer: string; part: string; boards: string[]; letters: string[][] }) =>
        row.boards.flatMap((board, i) =>
          (row.letters[i] ?? []).map((letter) => `${row.drawer} ${row.part} ${board} ${letter}`),
        ),
    );
    expect(inList.toSorted()).toEqual(onBoards.toSorted());
    const fronts = boards.flatMap(({ name, blanks }: { name: string; blanks: { part: string }[] }) =>
      blanks.filter(({ part }) => part === 'front').map(() => name),
    );
    expect(new Set(fronts)).toEqual(new Set(['Cherry']));
  });
});

describe('parts of a plan with a cabinet', () => {
  const PLAN = `stock: {front: {thickness: 20}, side: {thickness: 11}}
cabinet: {width: 600, height: 418, depth: 420, rail: 18, rows: [[Buttons, Thread], Cloth], rails: {species: Cherry}}
`;
  const run = (...options: string[]) => {
    const at = folder();
    writeFileSync(join(at, 'plan.yaml'), PLAN);
    return halfpin(['parts', 'plan.yaml', ...options], at).out;
  };

  it('are followed by those of its frame, in JSON in a list of their own', () => {
    const { parts, frame, cuttingList } = JSON.parse(run('--json'));
    expect(new Set(parts.map(({ part }: { part: string }) => part))).toEqual(
      new Set(['front', 'side', 'back', 'bottom']),
    );
    expect(cuttingList.at(-1)).toMatchObject({
      stock: 'frame',
      parts: [{ drawer: '', part: 'guide', count: 1 }],
    });
    // A rail of 600, with 5 more at each end, 3 on each long edge and 1 on each face.
    expect(frame[0]).toEqual({
      part: 'rail',
      drawers: ['Buttons', 'Thread'],
      count: 1,
      length: 600,
      shoulders: 600,
      width: 60,
      thickness: 18,
      roughLength: 610,
      roughWidth: 66,
      roughThickness: 20,
      species: 'Cherry',
    });
    expect(frame.map(({ part, count }: { part: string; count: number }) => `${count} ${part}`)).toEqual([
      '1 rail',
      '1 divider',
      '2 runner',
      '1 runner',
      '1 guide',
    ]);
  });

  it('are listed with it in tables and in the cutting list', () => {
    expect(run()).toMatch(/^rail +1 +600 +600 +60 +18 +610 +Cherry$/mu);
    expect(run()).toContain('\nguide of 360 mm x 20 mm x 18 mm: Buttons, Thread\n');
    // Runners of one length are 30 wide, and 78 where one is for two drawers.
    const named = run().match(/^\w+ of .*(?=: )/gmu) ?? [];
    expect([named.length, new Set(named).size]).toEqual([5, 5]);
    expect(run('--csv')).toContain('\r\n,rail,1,600,600'.replace('600,600', '600,60,18,610'));
    expect(run('--cutting-list')).toContain('runners and guides, 18 mm when finished');
    expect(run('--cutting-list', '--csv')).toMatch(/^frame,Cherry,1,610,66,20,18,1 rail\r$/mu);
  });
});
