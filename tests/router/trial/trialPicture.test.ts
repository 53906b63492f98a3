import { describe, expect, it } from 'vitest';
import { correctDepth } from '../../../src/router/trial/depthCorrection.ts';
import { correctGuide } from '../../../src/router/trial/guideCorrection.ts';
import { depthPicture, guidePicture } from '../../../src/router/trial/trialPicture.ts';

const depth = (looseness: number): string[] => {
  const move = correctDepth({ angle: 14, depth: 9.5 }, { looseness });
  return move.ok ? depthPicture(move.value, 'mm') : [];
};
const template = (looseness: number): string[] => {
  const move = correctGuide({ slope: { run: 8 } }, { looseness });
  return move.ok ? guidePicture(move.value, 'mm') : [];
};

describe('the picture of a trial in letters', () => {
  it('shows the next depth under the trial where it is deeper, over it where it is not', () => {
    expect(depth(0.2)).toEqual([
      '  inside face    ──────────────┐        ┌──────────────',
      '                              /          \\',
      '  trial, 9.5 mm              /............\\',
      '  next, 9.9 mm              /______________\\',
    ]);
    expect(depth(-0.2).slice(2)).toEqual([
      '  next, 9.1 mm               /____________\\',
      '  trial, 9.5 mm             /..............\\',
    ]);
    expect(depth(0).slice(2)).toEqual(['  right at 9.5 mm              /____________\\']);
  });

  it('points where a template moves, and nowhere where it stays', () => {
    expect(template(0.2)).toEqual([
      '  outside face  ─────────/──────\\─────────  ↑',
      '                        /  pin   \\          ↑ 0.8 mm, for wider pins',
      '  inside face   ───────/──────────\\───────  ↑',
    ]);
    expect(template(-0.2)[1]).toContain('↓ 0.8 mm, for narrower pins');
    expect(template(0)).toEqual([
      '  outside face  ─────────/──────\\─────────',
      '                        /  pin   \\',
      '  inside face   ───────/──────────\\───────',
    ]);
  });
});
