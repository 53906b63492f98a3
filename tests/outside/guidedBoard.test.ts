import dxfParser, { type ILwpolylineEntity, type ITextEntity } from 'dxf-parser';
import type { CrossSection as Section } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { loadProject } from '../../src/cli/loadProject.ts';
import { flatten, type Outline } from '../../src/drawing/outline.ts';
import { renderDxf } from '../../src/render/dxf.ts';
import { type GuideBoard, guideBoard } from '../../src/router/guide/guideBoard.ts';
import { type GuideTitles, guideLayers } from '../../src/sheets/guide/drawGuide.ts';
import { CUTTER, cutOf, LAPPED, THROUGH } from '../router/example.ts';
import { GUIDE_TITLES } from '../sheets/guide/guideTitles.ts';
import { value } from '../value.ts';
import { CrossSection } from './guidedSolids.ts';

/** In Node the package is the class itself, whatever its types say. */
const Parser = dxfParser as unknown as typeof dxfParser.DxfParser;

const CASES = [
  ['lapped tails', LAPPED, 'tail', 16],
  ['lapped sockets', LAPPED, 'pin', 16],
  ['through tails', THROUGH, 'tail', 16],
  ['through pins', THROUGH, 'pin', 11],
] as const;

const guideOf = (spec: (typeof CASES)[number][1], board: 'tail' | 'pin', bush: number): GuideBoard => {
  const { joint, guided } = cutOf(spec);
  return value(guideBoard(joint, CUTTER, guided, board, bush));
};

/** In a slot as wide as the bush its centre has only a line to run along; with this play, in mm, it has an area. */
const PLAY = 0.004;

/** Everything that a cutter takes whose bush runs along every wall of a guide: manifold-3d moves the walls by the radii. */
const reach = (guide: GuideBoard): Section => {
  const solid = new CrossSection([flatten(guide.outline).points.map(([x, y]) => [x, y])]);
  const { min, max } = solid.bounds();
  const free = CrossSection.square([max[0] - min[0] + 60, max[1] - min[1] + 120])
    .translate([min[0] - 60, min[1] - 60])
    .subtract(solid.offset(guide.bush / 2 - PLAY, 'Round', 2, 256));
  const mouth = max[0];
  // Only what lies in the slots: before their mouths, not round the guide.
  const slots = free.intersect(
    CrossSection.square([mouth - min[0] - 1, max[1] - min[1] - 20]).translate([min[0] + 1, min[1] + 10]),
  );
  return slots.offset(guide.cutter.diameter / 2, 'Round', 2, 256);
};

describe('a guide board', () => {
  it.each(CASES)(
    'lets the bush take the cutter exactly where the layout wants it: %s',
    (_, spec, board, bush) => {
      const { joint, guided } = cutOf(spec);
      const guide = guideOf(spec, board, bush);
      const [from, to] = guide.work;
      // The cut at the cutter's end, over the work; for sockets that end in a round, over the square part before it.
      const start = guided.pinCut.kind === 'round' && board === 'pin' ? -guided.pinCut.socket.stop : from;
      const strip = CrossSection.square([to - start, joint.width]).translate([start, 0]);
      const cut = reach(guide).intersect(strip);
      const spaces = board === 'tail' ? joint.pins.map(({ wide }) => [wide, wide] as const) : [];
      const sockets =
        board === 'pin'
          ? joint.tails.map(({ tip, base }) => [joint.kind === 'lapped' ? tip : base, tip] as const)
          : [];
      const wished = CrossSection.union(
        [...spaces, ...sockets].map(
          ([near, far]) =>
            new CrossSection([
              [
                [start, near[0]],
                [to, far[0]],
                [to, far[1]],
                [start, near[1]],
              ],
            ]),
        ),
      );
      expect(wished.area()).toBeGreaterThan(100);
      // No more than 0.01 mm off over any length of wall.
      expect(cut.subtract(wished.offset(0.01, 'Miter')).area()).toBeLessThan(1e-6);
      expect(wished.offset(-0.01, 'Miter').subtract(cut).area()).toBeLessThan(1e-6);
    },
  );
});

describe('the guides for the back ends of the example chest’s sides', async () => {
  const { set, cuts } = await loadProject('examples/haberdashery-chest-guided.yaml', {});
  const backs = set.drawers.map((drawer) => {
    const guides = cuts.get(drawer.back)?.guides ?? [];
    return { drawer, guide: guides.find(({ board }) => board === 'tail') };
  });

  it('are made where two tails or more have a space between them', () => {
    expect(backs.map(({ drawer: { spec, back }, guide }) => [spec.name, back.tails.length, !!guide])).toEqual(
      [
        // Sides of 75 mm leave 55 to the back: one tail, and outer spaces only.
        ['Buttons', 1, false],
        ['Thread', 1, false],
        ['Ribbon', 2, true],
        ['Patches', 2, true],
        ['Notions', 3, true],
        ['Cloth', 4, true],
      ],
    );
  });

  it.each(backs.flatMap(({ drawer, guide }) => (guide ? [[drawer.spec.name, drawer, guide] as const] : [])))(
    'clear the spaces between its tails and touch nothing of the side beyond the back: %s',
    (_, { sizes, back, boards }, guide) => {
      const [from, to] = guide.work;
      /** Over the side's whole width, measured from the back's lower edge. */
      const [bottom, top] = [-sizes.backFrom, boards.side.width - sizes.backFrom];
      const over = (low: number, high: number) =>
        CrossSection.square([to - from, high - low]).translate([from, low]);
      const cut = reach(guide).intersect(over(bottom, top));
      expect(cut.decompose()).toHaveLength(back.tails.length - 1);
      for (const beyond of [over(bottom, 0), over(back.width, top)]) {
        expect(beyond.area()).toBeGreaterThan(11 * 3.9);
        expect(cut.intersect(beyond).area()).toBe(0);
      }
      const spaces = back.tails.slice(1).map(({ base }, i) => over(back.tails[i]?.base[1] ?? 0, base[0]));
      expect(cut.subtract(CrossSection.union(spaces).offset(0.01, 'Miter')).area()).toBeLessThan(1e-6);
      expect(CrossSection.union(spaces).offset(-0.01, 'Miter').subtract(cut).area()).toBeLessThan(1e-6);
    },
  );
});

describe('its DXF file, read again by dxf-parser', () => {
  const TITLES: GuideTitles = {
    ...GUIDE_TITLES,
    names: ['Knöpfe,\n100 %%d Wolle front'],
    item: 'Knöpfe,\n100 %%d Wolle front',
  };

  const parse = (guide: GuideBoard) => {
    const dxf = new Parser().parseSync(renderDxf(guideLayers(guide, TITLES), 'test'));
    if (dxf === null) throw new Error('not a DXF file');
    return dxf;
  };

  it.each(CASES)('is in mm, of R12 or later: %s', (_, spec, board, bush) => {
    const { header } = parse(guideOf(spec, board, bush));
    // Autodesk's DXF reference: $INSUNITS 4 is millimetres; versions AC1009 (R12) and up.
    expect(header.$INSUNITS).toBe(4);
    expect(String(header.$ACADVER) >= 'AC1009').toBe(true);
  });

  it.each(CASES)(
    'holds one closed outline whose every corner and arc is that of the guide: %s',
    (_, spec, board, bush) => {
      const guide = guideOf(spec, board, bush);
      const onOutline = parse(guide).entities.filter(({ layer }) => layer === 'OUTLINE');
      expect(onOutline.length).toBe(1);
      const entity = onOutline[0] as ILwpolylineEntity;
      expect(entity.shape).toBe(true);
      const read: Outline = entity.vertices.map(({ x, y, bulge }) => ({
        at: [x, y],
        ...(bulge !== undefined && { bulge }),
      }));
      expect(read.length).toBe(guide.outline.length);
      guide.outline.forEach(({ at, bulge }, i) => {
        expect(read[i]?.at[0]).toBeCloseTo(at[0], 5);
        expect(read[i]?.at[1]).toBeCloseTo(at[1], 5);
        expect(read[i]?.bulge ?? 0).toBeCloseTo(bulge ?? 0, 5);
      });
    },
  );

  it('keeps centre lines, fence and work on layers of their own, with their line types', () => {
    const dxf = parse(guideOf(LAPPED, 'tail', 16));
    expect(new Set(dxf.entities.map(({ layer }) => layer))).toEqual(
      new Set(['OUTLINE', 'CENTRE', 'FENCE', 'REFERENCE', 'WORK', 'TEXT']),
    );
    expect(Object.keys(dxf.tables.lineType.lineTypes)).toEqual(expect.arrayContaining(['CENTER', 'HIDDEN']));
    expect(dxf.entities.filter(({ layer }) => layer === 'CENTRE').length).toBe(4);
  });

  it.each(CASES)('marks the reference edge at y = 0, and carries its name: %s', (_, spec, board, bush) => {
    const guide = guideOf(spec, board, bush);
    const { entities } = parse(guide);
    const on = (name: string) => entities.filter(({ layer }) => layer === name);
    const levels = (name: string) =>
      on(name).map((entity) => (entity as ILwpolylineEntity).vertices.map(({ y }) => y));
    expect(levels('REFERENCE')).toEqual([[0, 0]]);
    expect(levels('WORK')).toEqual([[guide.width, guide.width]]);
    const [name, edge, ...more] = on('TEXT') as ITextEntity[];
    expect(more).toEqual([]);
    // On one line, and its two per cent signs are no code for a degree.
    expect(name?.text).toBe(`Knöpfe, 100 %d Wolle front, guide for the ${board}s`);
    expect(name?.rotation).toBe(90);
    expect(edge?.text).toBe('reference edge');
    // Just below its line, and it begins over it.
    expect(edge?.startPoint.y).toBeGreaterThan(-5);
    expect((edge?.startPoint.y ?? 0) + (edge?.textHeight ?? 9)).toBeLessThan(0);
    const [line] = on('REFERENCE') as ILwpolylineEntity[];
    const xs = line?.vertices.map(({ x }) => x) ?? [];
    expect(edge?.startPoint.x).toBeGreaterThan(Math.min(...xs));
    expect(edge?.startPoint.x).toBeLessThan(Math.max(...xs));
  });

  it('is the same bytes every time', () => {
    const guide = guideOf(THROUGH, 'pin', 11);
    const text = () => renderDxf(guideLayers(guide, TITLES), 'test');
    expect(text()).toBe(text());
  });
});
