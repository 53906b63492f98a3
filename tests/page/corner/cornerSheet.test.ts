import { describe, expect, it } from 'vitest';
import { cornerSheet } from '../../../src/page/corner/cornerSheet.ts';
import { handlesOf } from '../../../src/page/model/handles.ts';
import { CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../chest.ts';

const corner = cornerIn(snapshotOf(CHEST), FRONT);
const margins = { left: 80, right: 20, top: 60, bottom: 40, gap: 100, letters: 1 };
/** With room for boards of a width in mm at 4 px to the mm. */
const frameFor = (width: number) => ({ ...margins, width: 900, height: 100 + width * 4 });
const frame = frameFor(75);
const sheet = cornerSheet(corner, frame);

describe('cornerSheet', () => {
  it('lays out both boards to one scale, their ends facing each other', () => {
    const { tailFace, tailEnd, pinEnd, pinFace } = sheet;
    expect(tailEnd.x0).toBe(tailFace.x1);
    expect(tailEnd.x1 - tailEnd.x0).toBe(11 * 4);
    expect(pinEnd.x0 - tailEnd.x1).toBe(100);
    expect(pinEnd.x1 - pinEnd.x0).toBe(20 * 4);
    expect(pinFace.x0).toBe(pinEnd.x1);
    expect(sheet.y(75)).toBe(sheet.top);
    expect(sheet.y(0) - sheet.y(75)).toBe(75 * 4);
  });

  it('draws the uprights at their distance: tails 15, lap 5, side 11', () => {
    expect(sheet.tailFace.x1 - sheet.tailBaseline).toBe(15 * 4);
    expect(sheet.lapLine - sheet.pinEnd.x0).toBe(5 * 4);
    expect(sheet.pinBaseline - sheet.pinFace.x0).toBe(11 * 4);
  });

  it('runs every line level across the ends and the gap, and sloped where the tails slope', () => {
    // Tail 1 begins at 6 at its tip; 1:7 along 15 takes 15/7.
    const [first] = sheet.lines;
    expect(first?.map(([, u]) => u)).toEqual([6 + 15 / 7, 6, 6, 6, 6 + 15 / 7, 6 + 15 / 7]);
  });

  it('begins a groove that stops short of the end at its distance from there', () => {
    expect(sheet.groove).toMatchObject({ from: 11, to: 16, depth: 5 * 4, stop: undefined });
    const stopped = cornerIn(
      snapshotOf(CHEST.replace('width: 5, depth: 5}', 'width: 5, depth: 5, stopped: 6}')),
      FRONT,
    );
    const { groove, tailFace } = cornerSheet(stopped, frame);
    expect(tailFace.x1 - (groove?.stop ?? 0)).toBeCloseTo(6 * 4, 9);
  });

  it('is as large as its frame lets it be', () => {
    expect(cornerSheet(corner, { ...frame, height: 500 }).scale).toBeCloseTo((500 - 100) / 75, 9);
    const narrow = cornerSheet(corner, { ...frame, width: 400, left: 40, gap: 50, letters: 1 });
    expect(narrow.pinFace.x1).toBeLessThanOrEqual(380 + 1e-9);
  });

  it.each(
    handlesOf(corner).flatMap((handle) => (handle.on.kind === 'upright' ? [{ handle, on: handle.on }] : [])),
  )('lets $handle.id follow the hand, while the gap and the far ends stay', ({ handle, on }) => {
    const scope = { drawers: 'all', ends: 'both' } as const;
    const moved = handle.move(snapshotOf(CHEST), corner, handle.value + 1.5, scope);
    expect(moved.stop).toEqual([]);
    const after = cornerSheet(cornerIn(moved.snapshot, FRONT), frame, sheet);
    expect(after[on.x] - sheet[on.x]).toBeCloseTo(handle.sense * 1.5 * 4, 9);
    const stays = ({ tailFace, tailEnd, pinEnd, pinFace }: typeof sheet) =>
      [tailFace.x0, tailEnd.x1, pinEnd.x0, pinFace.x1] as const;
    expect(stays(after)).toEqual(stays(sheet));
  });

  it('shows some of either board beyond the joint, however far a baseline is moved', () => {
    const moved = cornerSheet(corner, frame, { ...sheet, tailFace: sheet.tailEnd, pinFace: sheet.pinEnd });
    expect(moved.tailBaseline - moved.tailFace.x0).toBeCloseTo(4 * 4, 9);
    expect(moved.pinFace.x1 - moved.pinBaseline).toBeCloseTo(4 * 4, 9);
  });
});

describe('cornerSheet of a corner that laps close on both boards', () => {
  const single = (keys: string) =>
    cornerIn(
      snapshotOf(`joints: [{name: Case, width: 96, tailBoard: 18, pinBoard: 18, lap: 4, ${keys}}]`),
      LONE,
    );
  const at = (keys: string) => cornerSheet(single(keys), frameFor(96));

  it('shows the inside face of the tail board, and its lap’s line as far from the end’s outer arris', () => {
    const drawn = at('kind: double-lapped, tailLap: 5');
    expect(drawn.tailFaceIs).toBe('inside');
    expect(sheet.tailFaceIs).toBe('outside');
    expect(drawn.tailEnd.x1 - drawn.tailLapLine).toBeCloseTo(5 * 4, 9);
    expect(drawn.pinBaseline - drawn.pinFace.x0).toBeCloseTo(13 * 4, 9);
    expect(drawn.shoulders).toEqual([]);
  });

  it('draws shoulders, and what they take, where the edges are mitred', () => {
    const drawn = at('kind: secret-mitred, shoulderWidth: 6');
    expect(drawn.shoulders).toEqual([6, 90]);
    // Both ends of either board.
    expect(drawn.mitred).toHaveLength(4);
  });

  it('cuts a lapped corner’s tails back between its shoulders, and runs no line outside beyond them', () => {
    const drawn = at('kind: lapped, shoulder: both, shoulderWidth: 6');
    expect(drawn.shoulders).toEqual([6, 90]);
    expect(drawn.between).toEqual([6, 90]);
    // 18 thick; the tails end 4 from the end, and none of its end grain is left.
    expect(drawn.tailFace.x1 - drawn.tailBaseline).toBeCloseTo(18 * 4, 9);
    expect(drawn.tailFace.x1 - drawn.tailTip).toBeCloseTo(4 * 4, 9);
    expect(drawn.tips).toEqual([]);
    // Of the tail board's end and of the pin board's end and inside face, at either edge.
    expect(drawn.mitred.map((area) => [area[0], area[2]])).toEqual(
      [
        [0, 6],
        [90, 96],
      ].flatMap(([from, to]) => [
        [
          [drawn.tailFace.x1, from],
          [drawn.tailEnd.x1, to],
        ],
        [
          [drawn.pinEnd.x0, from],
          [drawn.pinBaseline, to],
        ],
      ]),
    );
  });

  it('has a handle for each shoulder, which grows away from its edge, and moves both', () => {
    const keys = 'kind: lapped, shoulder: both, shoulderWidth: 6';
    const corner = single(keys);
    const handles = handlesOf(corner).filter(({ on }) => on.kind === 'shoulder');
    expect(handles.map(({ id, value, sense, on }) => [id, value, sense, 'at' in on && on.at])).toEqual([
      ['lower shoulder', 6, 1, 6],
      ['upper shoulder', 6, -1, 90],
    ]);
    const now = snapshotOf(`joints: [{name: Case, width: 96, tailBoard: 18, pinBoard: 18, lap: 4, ${keys}}]`);
    const moved = handles[0]?.move(now, corner, 8.5, { drawers: 'this', ends: 'shown' });
    expect(moved?.stop).toEqual([]);
    expect(moved?.snapshot.text).toContain('shoulderWidth: 8.5');
    const uprights = handlesOf(corner).flatMap(({ id, value, sense, on }) =>
      on.kind === 'upright' ? [[id, on.x, value, sense]] : [],
    );
    expect(uprights).toEqual([
      ['tail tips', 'tailTip', 4, -1],
      ['lap', 'lapLine', 4, 1],
      ['tail baseline', 'tailBaseline', 18, -1],
      ['pin baseline', 'pinBaseline', 18, 1],
    ]);
    expect(handlesOf(single('kind: lapped')).filter(({ on }) => on.kind === 'shoulder')).toEqual([]);
  });

  it('has a handle for either lap, which grows away from the other board', () => {
    const handles = handlesOf(single('kind: secret-mitred'));
    const uprights = handles.flatMap(({ id, value, sense, on }) =>
      on.kind === 'upright' ? [[id, on.x, value, sense]] : [],
    );
    expect(uprights).toEqual([
      ['tail baseline', 'tailBaseline', 4, 1],
      ['lap', 'lapLine', 4, 1],
      ['tailLap', 'tailLapLine', 4, -1],
      ['pin baseline', 'pinBaseline', 18, 1],
    ]);
  });

  it('moves the tail lap by its handle', () => {
    const corner = single('kind: double-lapped, tailLap: 5');
    const handle = handlesOf(corner).find(({ id }) => id === 'tailLap');
    const now = snapshotOf(
      'joints: [{name: Case, width: 96, tailBoard: 18, pinBoard: 18, lap: 4, kind: double-lapped, tailLap: 5}]',
    );
    const moved = handle?.move(now, corner, 6.5, { drawers: 'this', ends: 'shown' });
    expect(moved?.stop).toEqual([]);
    expect(moved?.snapshot.text).toContain('tailLap: 6.5');
  });
});

describe("cornerSheet of a hound's tooth", () => {
  // 56 = 8 + 40 + 8; a small pin from 26 to 30, from 24 to 32 half way along 20.
  const drawn = cornerSheet(
    cornerIn(
      snapshotOf(
        'joints: [{name: Box, kind: through, width: 56, tailBoard: 14, pinBoard: 20, slope: "1:5", pin: 8, tails: 1, spacing: hounds-tooth}]',
      ),
      LONE,
    ),
    frameFor(56),
  );
  const { tailFace, tailEnd, pinEnd } = drawn;

  it('draws the small pin’s socket over the tail’s face and end, and takes it from both', () => {
    const [socket] = drawn.smallLines;
    expect(socket).toEqual([
      [tailEnd.x1, 26],
      [tailFace.x1, 26],
      [tailFace.x1 - 40, 24],
      [tailFace.x1 - 40, 32],
      [tailFace.x1, 30],
      [tailEnd.x1, 30],
    ]);
    expect(drawn.tails[0]).toContainEqual([tailFace.x1 - 40, 32]);
    expect(drawn.tips.map((tip) => [...new Set(tip.map(([, u]) => u))])).toEqual([
      [8, 26],
      [30, 48],
    ]);
  });

  it('draws the small pin in its socket on the pin board’s end, from the outside arris', () => {
    expect(drawn.smallLines[1]).toEqual([
      [pinEnd.x0, 26],
      [pinEnd.x0 + 40, 24],
      [pinEnd.x0 + 40, 32],
      [pinEnd.x0, 30],
    ]);
    expect(drawn.sockets[0]).toContainEqual([pinEnd.x0 + 40, 24]);
  });

  it('has no such lines in a plain corner', () => {
    expect(sheet.smallLines).toEqual([]);
  });
});
