import { describe, expect, it } from 'vitest';
import { unit } from '../../../src/sheets/corners/space.ts';
import { type Segment, trueEdges } from '../../../src/sheets/corners/trueEdges.ts';
import { visibleParts } from '../../../src/sheets/corners/visibleParts.ts';
import { box, written } from './blocks.ts';

describe('what is seen of a line', () => {
  const cube = box([0, 0, 0], [1, 1, 1]);
  const eye = unit([1, 2, 3]);

  it('is all of it where nothing is before it', () => {
    const line: Segment = [
      [-1, 2, 0],
      [2, 2, 0],
    ];
    expect(written(visibleParts(line, [cube], eye))).toEqual(written([line]));
  });

  it('is nine edges of a cube that turns a corner to the eye, and not the three at the corner behind', () => {
    const seen = trueEdges([cube]).flatMap((edge) => visibleParts(edge, [cube], eye));
    expect(seen).toHaveLength(9);
    expect(seen.flat().some((place) => place.every((each) => each === 0))).toBe(false);
  });

  it('is what the block before it leaves, to the point', () => {
    // Seen along z, the cube covers x and y from 0 to 1.
    const line: Segment = [
      [-1, 0.5, -5],
      [3, 0.5, -5],
    ];
    const [left, right, ...more] = visibleParts(line, [cube], [0, 0, 1]);
    expect(more).toEqual([]);
    expect(left?.[1][0]).toBeCloseTo(0, 4);
    expect(right?.[0][0]).toBeCloseTo(1, 4);
  });

  it('is all of it before the block, and on its surface', () => {
    for (const z of [1, 5])
      expect(
        visibleParts(
          [
            [-1, 0.5, z],
            [3, 0.5, z],
          ],
          [cube],
          [0, 0, 1],
        ),
      ).toHaveLength(1);
  });

  it('is nothing through the joint of two blocks side by side', () => {
    const pair = [cube, box([1, 0, 0], [2, 1, 1])];
    expect(
      visibleParts(
        [
          [0.2, 0.5, -5],
          [1.8, 0.5, -5],
        ],
        pair,
        [0, 0, 1],
      ),
    ).toEqual([]);
  });
});
