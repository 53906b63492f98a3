import { execFileSync, spawnSync } from 'node:child_process';
import { Resvg } from '@resvg/resvg-js';

/** A painted page: x to the right and y downward in dots; 0 is paper, 255 black. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly ink: (x: number, y: number) => number;
}

export const installed = (program: string): boolean => spawnSync(program, ['-v']).error === undefined;

const output = (program: string, args: readonly string[]): Buffer =>
  execFileSync(program, args, { maxBuffer: 1 << 30, stdio: ['ignore', 'pipe', 'ignore'] });

/** Grey pictures in the PGM format, one after the other. */
const readPgm = (bytes: Buffer): Raster[] => {
  const rasters: Raster[] = [];
  for (let at = 0; at < bytes.length; ) {
    const [header = '', columns, rows] =
      /^P5\s+(?:#.*\s+)*(\d+)\s+(\d+)\s+255\s/.exec(bytes.toString('latin1', at, at + 200)) ?? [];
    const [width, height] = [Number(columns), Number(rows)];
    const start = at + header.length;
    rasters.push({ width, height, ink: (x, y) => 255 - (bytes[start + y * width + x] ?? 255) });
    at = start + width * height;
  }
  return rasters;
};

/** Every page of a PDF as poppler paints it. */
export const paintedByPoppler = (file: string, dotsPerInch: number): Raster[] =>
  readPgm(output('pdftoppm', ['-r', String(dotsPerInch), '-gray', file]));

/** Every page of a PDF as mupdf paints it. */
export const paintedByMupdf = (file: string, dotsPerInch: number): Raster[] =>
  readPgm(
    output('mutool', ['draw', '-q', '-r', String(dotsPerInch), '-c', 'gray', '-F', 'pgm', '-o', '-', file]),
  );

/** An SVG file in mm as resvg paints it. */
export const paintedByResvg = (svg: string, dotsPerInch: number): Raster => {
  // CSS: an inch is 96 pixels.
  const { width, height, pixels } = new Resvg(svg, {
    fitTo: { mode: 'zoom', value: dotsPerInch / 96 },
    background: 'white',
  }).render();
  return { width, height, ink: (x, y) => 255 - (pixels[(y * width + x) * 4] ?? 255) };
};
