import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
// @ts-expect-error The build has no types.
import { importsAlong } from '../../src/build/importsAlong.mjs';

type Import = { readonly kind: string; readonly path: string };
const given = (...paths: string[]): Import[] => paths.map((path) => ({ kind: 'import-statement', path }));

/** A file of a bundle that holds the module of its name, in bytes, and what it imports. */
const file = (name: string, bytes: number, imports: readonly Import[], entryPoint?: string) =>
  [
    `dist/${name}.js`,
    { bytes, imports, inputs: { [`src/${name}.ts`]: {} }, ...(entryPoint && { entryPoint }) },
  ] as const;

/** A program, and parts `a`, `b` and `c` of it that are loaded on demand by some modules. */
const along = (
  files: readonly (readonly [string, object])[],
  asks: Readonly<Record<string, readonly string[]>> = {},
): Map<string, string[]> =>
  importsAlong({
    outputs: Object.fromEntries(files),
    inputs: Object.fromEntries(
      Object.entries(asks).map(([module, parts]) => [
        module,
        { imports: parts.map((part) => ({ kind: 'dynamic-import', path: `on-demand:${resolve(part)}` })) },
      ]),
    ),
  });

const part = (name: string, ...imports: string[]) =>
  file(name, 100, given('dist/program.js', ...imports), `on-demand:${resolve(`${name}.ts`)}`);
const program = [
  file('halfpin', 100, given('dist/program.js'), 'src/halfpin.ts'),
  file('program', 9000, given('node:fs')),
] as const;
const of = (name: string) => resolve(`src/${name}.ts`);

describe('importsAlong', () => {
  it('has the parts that share a large file bring a small one along that some of them share', () => {
    const found = along([
      ...program,
      part('a', 'dist/large.js', 'dist/small.js'),
      part('b', 'dist/large.js', 'dist/small.js'),
      part('c', 'dist/large.js'),
      file('large', 9000, []),
      file('small', 200, []),
    ]);
    expect(found).toEqual(new Map(['a', 'b', 'c'].map((name) => [resolve(`${name}.ts`), [of('small')]])));
  });

  it('leaves a small file by itself that would load a module of Node with parts that need none', () => {
    const found = along([
      ...program,
      part('a', 'dist/large.js', 'dist/small.js'),
      part('b', 'dist/large.js', 'dist/small.js'),
      part('c', 'dist/large.js'),
      file('large', 9000, []),
      file('small', 200, given('node:crypto')),
    ]);
    expect(found).toEqual(new Map());
  });

  it('leaves large files as they are', () => {
    const found = along([
      ...program,
      part('a', 'dist/large.js', 'dist/other.js'),
      part('b', 'dist/large.js', 'dist/other.js'),
      part('c', 'dist/large.js'),
      file('large', 9000, []),
      file('other', 9000, []),
    ]);
    expect(found).toEqual(new Map());
  });

  it('has a part import the one module that asks for it, and none of several', () => {
    const found = along([...program, part('a'), part('b')], {
      'src/asks.ts': ['a.ts', 'b.ts'],
      'src/asksToo.ts': ['b.ts'],
    });
    expect(found).toEqual(new Map([[resolve('a.ts'), [of('asks')]]]));
  });
});
