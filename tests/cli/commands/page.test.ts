import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folder, halfpin } from '../program.ts';

const PAGE = readFileSync('dist/halfpin.html', 'utf8');

/** A folder with an opener that notes what it is asked for and ends with a status. */
const desktop = (status: number): { readonly PATH: string; readonly asked: () => string } => {
  const bin = folder();
  for (const name of ['xdg-open', 'open']) {
    writeFileSync(join(bin, name), `#!/bin/sh\nprintf %s "$*" > ${bin}/asked\nexit ${status}\n`);
    chmodSync(join(bin, name), 0o755);
  }
  return { PATH: bin, asked: () => readFileSync(join(bin, 'asked'), 'utf8') };
};

describe('page', () => {
  it('writes the page of the build where --out says, with the folders on the way', () => {
    const where = folder();
    const out = join(where, 'for', 'the bench.html');
    expect(halfpin(['page', '--out', out])).toEqual({
      status: 0,
      out: `${out}: the page; it works without a network and keeps your plan in your browser\n`,
      err: '',
    });
    expect(readFileSync(out, 'utf8')).toBe(PAGE);
    expect(readdirSync(join(where, 'for'))).toEqual(['the bench.html']);
  });

  it('writes halfpin.html where no --out is given, and again over its own', () => {
    const where = folder();
    expect(halfpin(['page'], where).status).toBe(0);
    expect(halfpin(['page'], where).status).toBe(0);
    expect(readdirSync(where)).toEqual(['halfpin.html']);
  });

  it('leaves a file that is not its own, unless it is forced', () => {
    const where = folder();
    const mine = join(where, 'mine.html');
    writeFileSync(mine, '<title>My own</title>');
    expect(halfpin(['page', '--out', mine])).toEqual({
      status: 2,
      out: '',
      err: `${mine}: this file was not made by halfpin, so it is unchanged; choose another --out, or add --force\n`,
    });
    expect(readFileSync(mine, 'utf8')).toBe('<title>My own</title>');
    expect(halfpin(['page', '--out', mine, '--force']).status).toBe(0);
    expect(readFileSync(mine, 'utf8')).toBe(PAGE);
  });

  it('asks for a file where it is given a folder', () => {
    const where = folder();
    mkdirSync(join(where, 'pages'));
    expect(halfpin(['page', '--out', 'pages'], where)).toEqual({
      status: 2,
      out: '',
      err: '--out: pages is a folder; try pages/halfpin.html\n',
    });
  });

  it('opens what it has written, by its whole path, in the browser of the desktop', () => {
    const where = folder();
    const { PATH, asked } = desktop(0);
    expect(halfpin(['page', '--open', '--out', '-page.html'], where, { PATH })).toMatchObject({
      status: 0,
      err: '',
    });
    expect(asked()).toBe(resolve(where, '-page.html'));
  });

  it.each([
    ['no opener', () => '/nowhere', /^--open: there is no (?:xdg-)?open here to find a browser; /u],
    ['no browser', () => desktop(3).PATH, /^--open: (?:xdg-)?open found no browser; /u],
  ])('has written the page and says so where there is %s', (_, path, words) => {
    const where = folder();
    const { status, err } = halfpin(['page', '--open'], where, { PATH: path() });
    expect(status).toBe(1);
    expect(err).toMatch(words);
    expect(err).toMatch(/; the page is in halfpin\.html, open it in a browser yourself\n$/u);
    expect(existsSync(join(where, 'halfpin.html'))).toBe(true);
  });
});
