import { schemasAt } from '../../../plan/check/schemaPaths.ts';
import { type JsonSchema, planJsonSchema } from '../../../plan/planJsonSchema.ts';
import type { Place } from '../../../units/complaint.ts';
import { unitOf } from '../../../units/notation.ts';
import { parseLength } from '../../../units/parseLength.ts';
import type { Unit } from '../../../units/unit.ts';
import type { Edit } from '../../text/edit.ts';
import type { Written } from '../../text/writeValue.ts';
import type { Snapshot } from '../snapshot.ts';
import { writtenPlan } from '../writtenPlan.ts';

/**
 * The edits that give a plan another unit: each length that is written without one keeps what it means, so that nothing
 * that is written changes its size.
 */
export const unitEdits = ({ text, project }: Snapshot, wanted: Written | undefined): Edit[] => {
  const before = unitOf(project.units);
  const after: Unit = wanted === 'in' ? 'in' : 'mm';
  const edits: Edit[] = [
    { at: ['units'], value: typeof wanted === 'string' ? wanted : undefined },
    ...(after === 'mm' ? [{ at: ['fractions'], value: undefined }] : []),
  ];
  return before === after ? edits : [...edits, ...told(planJsonSchema(), [], writtenPlan(text), before)];
};

const told = (schema: JsonSchema, at: Place, value: unknown, unit: Unit): Edit[] => {
  if (Array.isArray(value)) return value.flatMap((item, i) => told(schema, [...at, i], item, unit));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, inner]) => told(schema, [...at, key], inner, unit));
  if (typeof value !== 'number' && typeof value !== 'string') return [];
  const text = String(value);
  if (at[0] === 'boards' && at.at(-1) === 'size') {
    const [long = '', wide = '', ...count] = text.split(/\s*[x×*]\s*/iu);
    return [{ at, value: [withUnit(long, unit), withUnit(wide, unit), ...count].join(' x ') }];
  }
  const isLength = schemasAt(schema, at).some(
    ({ type }) => Array.isArray(type) && type.includes('number') && type.includes('string'),
  );
  const named = isLength ? withUnit(text, unit) : text;
  return named === text ? [] : [{ at, value: named }];
};

/** A length with its unit, where it has none yet; words such as `auto` as they are. */
const withUnit = (text: string, unit: Unit): string => {
  const [inMm, inInches] = [parseLength(text, 'mm'), parseLength(text, 'in')];
  const isBare = inMm.ok && inInches.ok && (inMm.value !== inInches.value || inMm.value === 0);
  return isBare ? `${text}${unit}` : text;
};
