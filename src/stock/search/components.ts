import type { Bin } from './bin.ts';

/** Bins and types that have nothing to do with the other bins and types. */
export interface Component {
  readonly bins: readonly Bin[];
  readonly types: ReadonlySet<number>;
}

/** Parts of the task that can be solved apart: no type may come out of bins of two of them. */
export const componentsOf = (bins: readonly Bin[]): Component[] => {
  let found: Component[] = [];
  for (const bin of bins) {
    const own = new Set(bin.ways.flatMap(({ view }) => view.shapes.map(({ type }) => type)));
    const joined = found.filter(({ types }) => [...own].some((type) => types.has(type)));
    found = found.filter((component) => !joined.includes(component));
    found.push({
      bins: [...joined.flatMap(({ bins }) => bins), bin],
      types: new Set([...joined.flatMap(({ types }) => [...types]), ...own]),
    });
  }
  return found;
};
