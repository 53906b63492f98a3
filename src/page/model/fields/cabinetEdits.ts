import { nameKey } from '../../../units/name.ts';
import { unitOf } from '../../../units/notation.ts';
import type { Edit } from '../../text/edit.ts';
import { namesInRows } from '../../text/listDrawers.ts';
import { planNumber } from '../planNumber.ts';
import type { Snapshot } from '../snapshot.ts';
import { isWritten, writtenPlan } from '../writtenPlan.ts';

/**
 * What else changes where a cabinet's rows do: a drawer that gets a place there has no opening of its own any more, one
 * that loses its place keeps its size as its own, and one that is new is listed.
 * @param cabinet as it will be written; undefined where it goes
 */
export const cabinetEdits = ({ text, project }: Snapshot, cabinet: unknown): Edit[] => {
  const plan = writtenPlan(text);
  const names = namesInRows({ cabinet }).map(({ name }) => name);
  const named = new Set(names.map(nameKey));
  const { drawers } = project.set;
  const isListed = isWritten(plan, ['drawers']);
  const unit = unitOf(project.units);
  const known = new Set(drawers.map(({ spec }) => nameKey(spec.name)));
  const isLost = drawers.some(({ spec }) => !named.has(nameKey(spec.name)));
  // Drawers that only rows name need no list while the rows name them all.
  if (!isListed && !isLost) return [];
  const edits = drawers.flatMap(({ spec }, i): Edit[] => {
    const at = ['drawers', i];
    const has = (key: string): boolean => isWritten(plan, [...at, key]);
    if (named.has(nameKey(spec.name))) {
      const isMeasured = spec.space.kind === 'opening' && spec.space.shape !== undefined;
      const goes = ['count', 'size', ...(isMeasured ? [] : ['opening'])].filter(has);
      return goes.map((key) => ({ at: [...at, key], value: undefined }));
    }
    if (has('opening') || has('size') || spec.space.kind !== 'opening') return [];
    const { opening } = spec.space;
    return [
      ...(spec.count > 1 ? [{ at: [...at, 'count'], value: spec.count }] : []),
      ...(['width', 'height', 'depth'] as const).map((key) => ({
        at: [...at, 'opening', key],
        value: planNumber(opening[key], unit),
      })),
    ];
  });
  const added = [...new Map(names.map((name) => [nameKey(name), name]))].filter(([key]) => !known.has(key));
  return [...edits, ...added.map(([, value], i) => ({ at: ['drawers', drawers.length + i, 'name'], value }))];
};
