import type { Mark, Point } from './drawing.ts';

/** The same marks elsewhere: so many mm to the right and upward. */
export const translateMarks = (marks: readonly Mark[], right: number, up: number): Mark[] => {
  const moved = ([x, y]: Point): Point => [x + right, y + up];
  return marks.map((mark) =>
    mark.kind === 'text'
      ? { ...mark, at: moved(mark.at) }
      : { ...mark, paths: mark.paths.map((path) => ({ ...path, points: path.points.map(moved) })) },
  );
};
