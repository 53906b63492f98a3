import { apply, compose, PENS, POINTS_PER_MM, textMatrix } from './dist/engine.js';

const rounded = (value) => Math.round(value * 1e3) / 1e3;

/** A page as plain marks in points, y downward, for those that draw it without our renderers. */
export const flatten = ({ width, height, placed }) => ({
  size: [width * POINTS_PER_MM, height * POINTS_PER_MM],
  marks: placed.flatMap(({ drawing, at }) => {
    const map = compose(at, [POINTS_PER_MM, 0, 0, -POINTS_PER_MM, 0, height * POINTS_PER_MM]);
    return drawing.marks
      .filter((mark) => mark.kind === 'text' || mark.paths.length > 0)
      .map((mark) => flatMark(mark, map));
  }),
});

const flatMark = (mark, map) => {
  if (mark.kind === 'text') {
    const [a, b, , , x, y] = compose(textMatrix(mark), map);
    const turn = Math.round((Math.atan2(b, a) * 180) / Math.PI);
    const size = rounded(Math.hypot(a, b));
    return { kind: 'text', text: mark.text, x: rounded(x), y: rounded(y), size, turn, weight: mark.weight };
  }
  const paths = mark.paths.map(({ points, closed = false }) => ({
    points: points.map((point) => apply(map, point).map(rounded)),
    closed,
  }));
  if (mark.kind === 'fill') {
    const grey = Math.round(mark.tone * 255);
    return { kind: 'fill', grey: [grey, grey, grey], paths };
  }
  const { width, dash } = PENS[mark.pen];
  return {
    kind: 'stroke',
    width: width * POINTS_PER_MM,
    ...(dash && { dash: dash.map((part) => part * POINTS_PER_MM) }),
    paths,
  };
};
