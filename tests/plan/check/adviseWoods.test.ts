import { describe, expect, it } from 'vitest';
import { readProject } from '../../../src/project/readProject.ts';
import { speak } from '../../../src/units/phrase.ts';

const CLIMATE = 'climate: {making: 8%, driest: 6%, dampest: 12%}';

const advice = (front: string, side: string, ...more: string[]): string[] => {
  const laid = readProject(
    [
      `stock: {front: {thickness: 20, species: "${front}"}, side: {thickness: 11, species: "${side}"}}`,
      ...more,
      'drawers:',
      '  - {name: Buttons, opening: {width: 280, height: 76, depth: 420}, fit: {top: 1.5}}',
      '  - {name: Thread, opening: {width: 280, height: 76, depth: 420}, fit: {top: 1.5}}',
    ].join('\n'),
  );
  if (!laid.ok) throw new Error(JSON.stringify(laid.complaints));
  return laid.value.set.advice.flatMap(({ at, says }) => (at[0] === 'stock' ? [speak(says, 'mm')] : []));
};

/** The table's figures for these were not at hand: the list of woods itself says so. */
const memory = (name: string): string =>
  `the figures of ${name}, by which it moves, are from memory of the Wood Handbook, Table 13-5; check before you rely on it`;

describe("advice on a plan's woods", () => {
  it('says once a wood whose figures are from memory, where a climate moves it', () => {
    expect(advice('tulip poplar', 'white pine', CLIMATE)).toEqual([
      memory('Yellow-poplar'),
      memory('Pine, eastern white'),
    ]);
    expect(advice('Cherry, black', 'Teak', CLIMATE)).toEqual([memory('Teak')]);
    expect(advice('Cherry, black', 'Ash, white', CLIMATE)).toEqual([]);
  });

  it('says it of a gap above that is found by it', () => {
    expect(advice('Teak', 'Teak', CLIMATE, 'fit: {top: auto}')).toEqual([memory('Teak')]);
  });

  it("accepts a maker's own figures, and figures that nothing follows from, as they are", () => {
    expect(
      advice('Teak', 'Teak', CLIMATE, 'woods: {Teak: {shrinkage: {radial: 2.5, tangential: 5.8}}}'),
    ).toEqual([]);
    expect(advice('Teak', 'white pine')).toEqual([]);
  });

  it('names the closest to a wood that is not known, though no climate asks for it, once', () => {
    const [said, ...more] = advice('Chery', 'Ash, white');
    expect(said).toMatch(/^"Chery" is not a wood that is known here; the closest names are "Cherry, black"/u);
    expect(more).toEqual([]);
    const own = 'woods: {Chery: {shrinkage: {radial: 2.5, tangential: 5.8}}}';
    expect(advice('Chery', 'Ash, white', own)).toEqual([]);
  });

  it('lets a panel be of anything, and a solid bottom not', () => {
    const stock = (kind: string): string[] => [
      `bottom: {kind: ${kind}}`,
      'stock: {front: {thickness: 20}, side: {thickness: 11}, bottom: {thickness: 5, species: pasteboard}}',
      'drawers: [{name: Buttons, opening: {width: 280, height: 76, depth: 420}}]',
    ];
    const laid = (kind: string) => {
      const reading = readProject(stock(kind).join('\n'));
      return reading.ok ? reading.value.set.advice.length : Number.NaN;
    };
    expect(laid('panel')).toBe(0);
    expect(laid('solid')).toBe(1);
  });
});
