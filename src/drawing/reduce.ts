import { type Affine, apply } from './affine.ts';
import type { Drawing, PenName, Role, StrokeMark } from './drawing.ts';

/** A small picture of a drawing: its strokes of some roles, mapped, all with one pen. */
export const reduce = (drawing: Drawing, map: Affine, roles: ReadonlySet<Role>, pen: PenName): StrokeMark[] =>
  drawing.marks.flatMap((mark) =>
    mark.kind === 'stroke' && roles.has(mark.role)
      ? [
          {
            ...mark,
            pen,
            paths: mark.paths.map((path) => ({
              ...path,
              points: path.points.map((point) => apply(map, point)),
            })),
          },
        ]
      : [],
  );
