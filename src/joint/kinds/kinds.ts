import { doubleLapped } from './doubleLapped.ts';
import type { OwnGiven, OwnLength, Wish } from './kind.ts';
import { lapped } from './lapped.ts';
import { secretMitred } from './secretMitred.ts';
import { through } from './through.ts';

/** Every kind of corner, the plainest first. */
export const KINDS = {
  through,
  lapped,
  'double-lapped': doubleLapped,
  'secret-mitred': secretMitred,
} as const;

export type JointKind = keyof typeof KINDS;

type OwnKey<Name extends JointKind> = (typeof KINDS)[Name]['lengths'][number]['key'];

/** The keys of all lengths that only some kinds have. */
export type OwnLengthKey = OwnKey<JointKind>;

/** Which kind of corner, and its own lengths; no kind has another's. */
export type KindWish = {
  [Name in JointKind]: Wish<Name, OwnKey<Name>> & {
    readonly [Key in Exclude<OwnLengthKey, OwnKey<Name>>]?: never;
  };
}[JointKind];

/** The kinds' names in the order of the table. */
export const KIND_NAMES = Object.keys(KINDS).filter((name) => isKind(name));

export function isKind(name: string): name is JointKind {
  return Object.hasOwn(KINDS, name);
}

/** The kind of a joint or of a wish. */
export const kindOf = ({ kind }: { readonly kind: JointKind }): (typeof KINDS)[JointKind] => KINDS[kind];

/** Every length that only some kinds have, once. */
export const OWN_LENGTHS: readonly OwnLength<OwnLengthKey>[] = [
  ...new Map(
    KIND_NAMES.flatMap((name): readonly OwnLength<OwnLengthKey>[] => KINDS[name].lengths).map((length) => [
      length.key,
      length,
    ]),
  ).values(),
];

export const OWN_LENGTH_KEYS: readonly OwnLengthKey[] = OWN_LENGTHS.map(({ key }) => key);

/** Whether corners of a kind have one of those lengths. */
export const hasLength = (kind: JointKind, key: OwnLengthKey): boolean =>
  KINDS[kind].lengths.some((length) => length.key === key);

/** The kinds that have all of these lengths, in the order of the table. */
export const kindsWith = (keys: readonly OwnLengthKey[]): JointKind[] =>
  KIND_NAMES.filter((name) => keys.every((key) => hasLength(name, key)));

/** The kind that is meant where none is named: the usual one, or the first that has all of these lengths where that has not. */
export const kindFor = (keys: readonly OwnLengthKey[], usual: JointKind = 'through'): JointKind => {
  const kinds = kindsWith(keys);
  return kinds.includes(usual) ? usual : (kinds[0] ?? usual);
};

/** The lengths that are given of those that only some kinds have, and that this kind has not. */
export const foreignLengths = (
  kind: JointKind,
  given: OwnGiven<OwnLengthKey>,
): readonly OwnLength<OwnLengthKey>[] =>
  OWN_LENGTHS.filter(({ key }) => given[key] !== undefined && !hasLength(kind, key));

/** What every kind of corner may be given, of what one corner was given. */
export const withoutKind = <
  T extends { readonly kind?: unknown } & { readonly [Key in OwnLengthKey]?: unknown },
>({
  kind,
  lap,
  tailLap,
  ...common
}: T): Omit<T, 'kind' | OwnLengthKey> => common;
