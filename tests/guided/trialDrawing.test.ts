import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.ts';
import { correctDepth, correctTemplate } from '../../src/guided/trial.ts';
import { drawDepthMove, drawTemplateMove } from '../../src/guided/trialDrawing.ts';

const depthDrawing = (looseness: number): Drawing => {
  const setting = { angle: 14, depth: 9.5 };
  const move = correctDepth(setting, { looseness });
  if (!move.ok) throw new Error(JSON.stringify(move.complaints));
  return drawDepthMove(setting, move.value, 'mm');
};

const templateDrawing = (looseness: number): Drawing => {
  const setting = { slope: { run: 8 } };
  const move = correctTemplate(setting, { looseness });
  if (!move.ok) throw new Error(JSON.stringify(move.complaints));
  return drawTemplateMove(setting, move.value, 'mm');
};

/** The dashed shape of the trial and the solid one to come. */
const shapes = ({ marks }: Drawing) =>
  marks.flatMap((mark) => (mark.kind === 'stroke' && mark.role === 'slope' ? mark.paths : []));

const said = ({ marks }: Drawing): string[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

describe('the drawing of a trial', () => {
  it('shows a loose socket cut deeper, and so narrower at its mouth', () => {
    const [before, after] = shapes(depthDrawing(0.2));
    expect(after?.points[1]?.[1]).toBeLessThan(before?.points[1]?.[1] ?? 0);
    expect(after?.points[0]?.[0]).toBeGreaterThan(before?.points[0]?.[0] ?? 0);
    // The bottom is as wide as the cutter's end, wherever it stands.
    expect(after?.points[1]?.[0]).toBe(before?.points[1]?.[0]);
    expect(said(depthDrawing(0.2))).toContain('0.4 mm deeper');
    expect(said(depthDrawing(-0.2))).toContain('0.4 mm shallower');
    expect(said(depthDrawing(0))).toContain('stays');
  });

  it('shows the pins of a loose joint grown', () => {
    const [before, after] = shapes(templateDrawing(0.2));
    expect(after?.points[0]?.[0]).toBeLessThan(before?.points[0]?.[0] ?? 0);
    expect(said(templateDrawing(0.2))).toContain('0.8 mm towards the outside face');
    const [, tight] = shapes(templateDrawing(-0.2));
    expect(tight?.points[0]?.[0]).toBeGreaterThan(before?.points[0]?.[0] ?? 0);
  });

  it('points where it moves, and nowhere where it stays', () => {
    const arrows = (drawing: Drawing) =>
      drawing.marks.flatMap((mark) => (mark.kind === 'stroke' && mark.role === 'label' ? mark.paths : []));
    expect(arrows(depthDrawing(0.2))).toHaveLength(2);
    expect(arrows(depthDrawing(0))).toEqual([]);
  });
});
