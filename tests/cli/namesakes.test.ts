import { copyFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folder, halfpin } from './program.ts';

const planOf = (name: string, drawer: string): string =>
  [
    ...(name === '' ? [] : [`name: ${name}`]),
    'stock: {front: {thickness: 20}, side: {thickness: 11}, back: {thickness: 11}, bottom: {thickness: 5}}',
    'groove: {offset: 11, width: 5, depth: 5}',
    'drawers:',
    `  - {name: ${drawer}, opening: {width: 280, height: 76, depth: 420}}`,
    '',
  ].join('\n');

/** A folder with plans, drawn into `sheets` there. */
const workshop = (plans: Readonly<Record<string, string>>) => {
  const where = folder();
  for (const [file, text] of Object.entries(plans)) writeFileSync(join(where, file), text);
  return {
    where,
    sheets: (): string[] => readdirSync(join(where, 'sheets')).sort(),
    draw: (plan: string, ...options: string[]): string => {
      const { status, out, err } = halfpin(['draw', plan, '--out', 'sheets', ...options], where);
      expect({ status, err }).toEqual({ status: 0, err: '' });
      return out;
    },
  };
};

const PULLED = `pulls: {number: 1, holes: {diameter: 5}}\n`;

describe('plans of one name', () => {
  it('are named where one is drawn over the other, and --tidy leaves the sheets of both', () => {
    const { draw, sheets } = workshop({
      'chest.yaml': planOf('Chest', 'Thread') + PULLED,
      'second.yaml': planOf('chest', 'Cloth'),
      'third.yaml': planOf('Other chest', 'Cloth'),
      'notes.yaml': 'name: Chest\n',
    });
    expect(draw('chest.yaml')).not.toMatch(/written over|same name/u);
    const first = sheets();
    const drilling = 'sheets/chest-drilling.pdf';
    expect(first).toContain('chest-drilling.pdf');
    const told = draw('second.yaml', '--tidy');
    expect(told).toMatch(/^written over what \d files held before: sheets\/chest-templates\.pdf, /mu);
    expect(told).toContain(
      `${drilling}: kept, as it may be of chest.yaml; this plan does not make this file, or no longer\n`,
    );
    expect(told).toMatch(/^chest\.yaml: this plan has the same name, /mu);
    expect(told).not.toMatch(/third|notes/u);
    expect(sheets()).toEqual(first);
  });

  it('are plans without a name too', () => {
    const { draw } = workshop({ 'a.yaml': planOf('', 'Thread'), 'b.yaml': planOf('', 'Cloth') });
    draw('a.yaml');
    expect(draw('b.yaml')).toMatch(/^a\.yaml: this plan has the same name, /mu);
  });
});

describe('what a plan is drawn over', () => {
  it('is told where it was otherwise, and no word is lost where nothing changes or nothing was there', () => {
    const { draw, where } = workshop({ 'chest.yaml': planOf('Chest', 'Thread') });
    expect(draw('chest.yaml')).not.toContain('written over');
    // A copy of the plan takes nothing's place as long as it makes the same.
    copyFileSync(join(where, 'chest.yaml'), join(where, 'copy.yaml'));
    expect(draw('copy.yaml')).not.toMatch(/written over|same name/u);
    const piece = draw('chest.yaml', '--as', 'pdf,svg', '--sheets', 'templates', '--paper', 'A3');
    expect(piece).toMatch(/^written over what 1 file held before: sheets\/chest-templates\.pdf$/mu);
    writeFileSync(join(where, 'other.yaml'), planOf('Other', 'Thread').replace('width: 280', 'width: 290'));
    // Pieces are called by their drawers, whatever the plan.
    expect(draw('other.yaml', '--as', 'svg')).toMatch(/^written over what \d+ files held before/mu);
  });
});
