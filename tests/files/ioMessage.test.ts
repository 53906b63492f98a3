import { expect, it } from 'vitest';
import { suggestOutFolder } from '../../src/files/ioMessage.ts';

const fault = (code: string, path?: string): NodeJS.ErrnoException =>
  Object.assign(new Error(code), { code, ...(path !== undefined && { path }) });

it('a place that cannot be written to asks for another, below the folder that was named or above it', () => {
  for (const path of ['a/b', 'a/b/c.pdf', 'a', `${process.cwd()}/a/b`])
    for (const code of ['EACCES', 'EROFS', 'ENOTDIR', 'EEXIST'])
      expect(suggestOutFolder(fault(code, path), 'a/b')).toBe('; choose another --out');
});

it('a full disk, another file, or a run that names no folder asks for nothing', () => {
  expect(suggestOutFolder(fault('ENOSPC', 'a/b'), 'a/b')).toBe('');
  expect(suggestOutFolder(fault('EACCES', 'a/bc'), 'a/b')).toBe('');
  expect(suggestOutFolder(fault('EACCES', 'plan.yaml'), 'a/b')).toBe('');
  expect(suggestOutFolder(fault('EACCES'), 'a/b')).toBe('');
  expect(suggestOutFolder(fault('EACCES', 'a/b'), undefined)).toBe('');
});
