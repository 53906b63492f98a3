/** What was typed into a field and could not be taken, and why. */
interface Refusal {
  readonly typed: string;
  readonly reasons: readonly string[];
}

const refusals = new Map<string, Refusal>();
let taking: { readonly label: string; readonly typed: string } | undefined;

/**
 * Takes what was typed into a field.
 * @param act takes it; it says by `refuseTyped` why it cannot
 * @returns whether it was taken
 */
export const takeTyped = (label: string, typed: string, act: () => void): boolean => {
  refusals.delete(label);
  taking = { label, typed };
  act();
  taking = undefined;
  return !refusals.has(label);
};

/** Says why what is being taken is refused: it stays in its field, beside the reasons. */
export const refuseTyped = (reasons: readonly string[]): void => {
  if (taking !== undefined) refusals.set(taking.label, { typed: taking.typed, reasons });
};

/** What stays in a field as it was refused. */
export const refusalOf = (label: string): Refusal | undefined => refusals.get(label);

/** To be called where the plan changes otherwise than by a field: what was refused is not to the point any more. */
export const forgetRefused = (): void => {
  if (taking === undefined) refusals.clear();
};

let show = (): void => {};

/** @param again shows every field and message again, after what was refused in one field has been taken back */
export const onTakenBack = (again: () => void): void => {
  show = again;
};

/** Takes back what was refused in one field. */
export const takeBack = (label: string): void => {
  if (refusals.delete(label)) show();
};

/** Why any field has what could not be taken. */
export const refusedWords = (): string[] => [...refusals.values()].flatMap(({ reasons }) => reasons);
