import fc from 'fast-check';

/** Values of a plan's sort: groups of keys, lists of groups, lists of numbers, numbers and words. */
type Value = number | string | readonly Value[] | { readonly [key: string]: Value };

const key = fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f', 'half pin', 'ö');
const leaf = fc.oneof(
  fc.integer({ min: 0, max: 99 }),
  fc.double({ min: 0, max: 99, noNaN: true }),
  fc.constantFrom('1:7', '3/4', 'Ash, white', 'x', "it's", 'true', '# no', 'a: b', '5 11/16in'),
);
const widths = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 4 });
const { group } = fc.letrec<{ group: Record<string, Value>; value: Value }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 2 },
    leaf,
    widths,
    tie('group'),
    fc.array(tie('group'), { minLength: 1, maxLength: 3 }),
  ),
  group: fc.dictionary(key, tie('value'), { minKeys: 1, maxKeys: 4, noNullPrototype: true }) as fc.Arbitrary<
    Record<string, Value>
  >,
}));

/** Lays values out as people do: blocks and braces, odd indents and blanks, comments, quotes, and parts that repeat others. */
const layOut = (root: Value, tape: readonly number[], lineBreak: string): string => {
  let next = 0;
  const choose = (count: number): number => (tape[next++ % tape.length] ?? 0) % count;
  const oneOf = <T>(first: T, ...others: readonly T[]): T =>
    [first, ...others][choose(others.length + 1)] ?? first;
  const names: string[] = [];
  const blanks = (least: number): string => ' '.repeat(least + oneOf(0, 0, 0, 1, 3));
  const beside = (): string => (choose(4) === 0 ? `${blanks(1)}# note ${next}` : blanks(0));
  const above = (indent: number): string =>
    choose(5) === 0
      ? `${' '.repeat(indent)}# - note: {${next}}${lineBreak}`
      : choose(9) === 0
        ? lineBreak
        : '';

  const word = (text: string): string => {
    const plain = /^[\p{L}][\p{L} ]*$|^\d+\/\d+$/u.test(text) && text !== 'true';
    return oneOf(
      plain ? text : JSON.stringify(text),
      JSON.stringify(text),
      `'${text.replaceAll("'", "''")}'`,
    );
  };
  const repeats = (): string | undefined =>
    choose(6) === 0 && names.length > 0 ? `*${names[choose(names.length)]}` : undefined;
  const named = (written: string): string => {
    if (choose(6) !== 0) return written;
    names.push(`n${names.length}`);
    return `&${names.at(-1)} ${written}`;
  };
  const inline = (value: Value, indent: number): string => {
    const again = repeats();
    if (again !== undefined) return again;
    if (typeof value === 'number')
      return named(Number.isInteger(value) && choose(4) === 0 ? `${value}.0` : `${value}`);
    if (typeof value === 'string') return named(word(value));
    const items = Array.isArray(value)
      ? value.map((item: Value) => () => inline(item, indent + 2))
      : Object.entries(value).map(
          ([name, item]) =>
            () =>
              `${word(name)}: ${inline(item, indent + 2)}`,
        );
    const [open, close] = Array.isArray(value) ? '[]' : '{}';
    if (choose(4) === 0) {
      const inside = lineBreak + ' '.repeat(indent + 2);
      const comma = choose(2) === 0 ? ',' : '';
      const lines = items.map(
        (item, i) => `${inside}${item()}${i < items.length - 1 ? ',' : comma}${beside()}`,
      );
      return `${open}${lines.join('')}${lineBreak}${' '.repeat(indent + choose(3))}${close}`;
    }
    const pad = blanks(0);
    return named(
      `${open}${pad}${items.map((item) => item()).join(`${blanks(0)},${blanks(1)}`)}${pad}${close}`,
    );
  };
  const entry = (name: string, value: Value, indent: number): string => {
    const start = `${word(name)}:`;
    if (typeof value !== 'object' || choose(3) === 0)
      return `${start}${blanks(1)}${inline(value, indent + 1)}${beside()}`;
    return `${start}${beside()}${lineBreak}${block(value, indent + (Array.isArray(value) ? choose(3) : 1 + choose(3)))}`;
  };
  const block = (value: Value, indent: number): string => {
    const margin = ' '.repeat(indent);
    if (Array.isArray(value))
      return value
        .map((item: Value) => {
          if (typeof item !== 'object' || choose(3) === 0)
            return `${above(indent)}${margin}-${blanks(1)}${inline(item, indent + 1)}${beside()}`;
          const dash = choose(3);
          const inner = block(item, indent + 2 + dash);
          // The first key stands beside the dash, unless a comment comes before it.
          return /^ *(?:#|\r?\n)/u.test(inner)
            ? `${margin}-${lineBreak}${inner}`
            : `${margin}-${' '.repeat(1 + dash)}${inner.trimStart()}`;
        })
        .join(lineBreak);
    return Object.entries(value)
      .map(([name, item]) => `${above(indent)}${margin}${entry(name, item, indent)}`)
      .join(lineBreak);
  };
  return block(root, 0) + (choose(3) === 0 ? '' : lineBreak);
};

/** A text of YAML as somebody may have written it. */
export const anyLayout: fc.Arbitrary<string> = fc
  .tuple(group, fc.array(fc.nat(1000), { minLength: 40, maxLength: 80 }), fc.constantFrom('\n', '\r\n'))
  .map(([root, tape, lineBreak]) => layOut(root, tape, lineBreak));

export const anyJson: fc.Arbitrary<string> = fc
  .tuple(group, fc.constantFrom(0, 2, 3, '\t'))
  .map(([root, indent]) => JSON.stringify(root, null, indent));
