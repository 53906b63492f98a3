import type { Drawing } from '../drawing/drawing.ts';
import type { Size } from '../paper/printable.ts';
import type { ShortName } from '../units/shortNames.ts';
import { type Block, paragraph } from './typeset/block.ts';
import { flow } from './typeset/flow.ts';
import { typeSizes } from './typeset/typeSizes.ts';

/** The names whose shorter wordings need a number, once each, by their numbers. */
export const numberedNames = (names: readonly ShortName[]): ReadonlyMap<string, ShortName> =>
  new Map(names.flatMap((name) => (name.number === undefined ? [] : [[name.number, name]])));

/** The numbers that stand for each drawer or single corner, alone or with others. */
export const numbersByName = (names: readonly ShortName[]): ReadonlyMap<string, readonly string[]> => {
  const numbers = new Map<string, string[]>();
  for (const [number, { names: named }] of numberedNames(names))
    for (const name of named) numbers.set(name, [...(numbers.get(name) ?? []), number]);
  return numbers;
};

/** The most names in a block of text, so that a page holds it. */
const IN_A_BLOCK = 5;

/** The pages that explain the numbers on templates; none where no name needs one. */
export const nameNumbers = (title: string, names: readonly ShortName[], area: Size): readonly Drawing[] => {
  const numbered = numberedNames(names);
  if (numbered.size === 0) return [];
  const { heading, text: size } = typeSizes(1);
  const row = ([number, { names: named }]: [string, ShortName]): Block[] =>
    Array.from({ length: Math.ceil(named.length / IN_A_BLOCK) }, (_, i) => {
      const text = named.slice(i * IN_A_BLOCK, (i + 1) * IN_A_BLOCK).join(', ');
      const last = (i + 1) * IN_A_BLOCK >= named.length;
      return paragraph(
        [
          ...(i === 0 ? [{ text: number.replace(' ', '\u00A0'), size, weight: 'bold' as const }] : []),
          { text: last ? text : `${text},`, size, weight: 'regular' },
        ],
        area.width,
      );
    });
  const head = paragraph(
    [{ text: `${title}: numbers in place of names`, size: heading, weight: 'bold' }],
    area.width,
  );
  return flow(
    { head: [head, head], wide: [...numbered].map(row), narrow: [], columns: 1, gap: 2 },
    area,
  ).draw();
};
