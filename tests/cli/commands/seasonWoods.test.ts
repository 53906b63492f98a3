import { describe, expect, it } from 'vitest';
import { WOODS, type Wood } from '../../../src/wood/species.ts';
import { halfpin } from '../program.ts';

describe('season --woods', () => {
  it('lists every wood once, with its other names, those from memory apart', () => {
    const { out, status } = halfpin(['season', '--woods']);
    expect(status).toBe(0);
    const [handbook = '', memory = ''] = out.split('\n\n');
    expect(handbook).toMatch(/^Cherry, black +cherry; American cherry; American black cherry$/mu);
    expect(memory).toMatch(/check before you rely on\s+it/u);
    expect(memory).toMatch(/^Pine, eastern white +white pine$/mu);
    expect(handbook).not.toContain('Pine,');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    const { woods } = JSON.parse(halfpin(['season', '--woods', '--json']).out);
    expect(woods.map(({ name }: Wood) => name)).toEqual(WOODS.map(({ name }) => name));
  });

  it('is named where a wood is not known', () => {
    const { err } = halfpin(['season', '--species', 'sapele', '--size', '100', '--from', '8%', '--to', '9%']);
    expect(err).toContain('one that --woods lists');
  });
});
