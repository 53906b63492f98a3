import fc from 'fast-check';
import { chooseOnly } from '../../src/project/only.ts';
import { projectOfCorner } from '../../src/project/project.ts';
import { nameKey, parseName } from '../../src/units/name.ts';
import { value } from '../value.ts';
import { abuse, must, refused } from './abuse.ts';
import { anyText } from './texts.ts';

const corner = value(
  projectOfCorner({
    name: 'Box',
    units: 'mm',
    spec: { kind: 'through', width: 60, tailBoard: 10, pinBoard: 10, spacing: { kind: 'even' } },
  }),
);

/** Names that a plan may have, no two of them alike. */
const names = fc.uniqueArray(anyText, { minLength: 1, maxLength: 6, selector: nameKey }).map((texts) =>
  texts.flatMap((text) => {
    const name = parseName(text);
    return name.ok ? [name.value] : [];
  }),
);

/** What is to be drawn: any text, or names of the plan in a row. */
export const choices = abuse(
  'a choice of drawers in any text',
  0.5,
  fc.record({ names, typed: fc.option(anyText) }),
  ({ names, typed }) => {
    const joints = corner.joints.flatMap((joint) => names.map((name) => ({ ...joint, name })));
    const chosen = chooseOnly({ ...corner, joints }, typed ?? names.join(','));
    if (!chosen.ok) return refused(chosen.complaints);
    for (const name of chosen.value.only?.keys() ?? [])
      must(names.includes(name), `${name} is not in the plan`);
    if (typed === null)
      must((chosen.value.only?.size ?? 0) > 0 || names.length === 0, 'nothing chosen by all names');
    return 'valid';
  },
);
