import { cornerLetter, type Hand } from '../../drawer/cornerLetters.ts';
import type { Hole } from '../../drawer/fittings/fittings.ts';
import type { Box, Mark } from '../../drawing/drawing.ts';
import { CLEAR_OF_SPLITS, type Splits } from '../../paper/piece.ts';
import { TAB } from '../../paper/split.ts';
import { formatLength } from '../../units/formatLength.ts';
import { type Label, type Lettering, setTagLettering, textLabel } from '../template/lettering.ts';
import { scaleBar } from '../template/scaleBar.ts';
import type { DrilledFront } from './drillingPiece.ts';

/** What is written on the flap of a drilling template. */
export const drillingLettering = (
  { itemName: { item, shorter }, count, units, zones, pulls, lock }: DrilledFront,
  hand: Hand,
): Lettering & { readonly title: string } => {
  const length = (value: number): string => formatLength(value, units);
  const letter = cornerLetter('front', hand);
  const hole = (what: string, { at: [x, y], diameter }: Hole): Label => {
    const from = length(hand === 'left' ? x : zones.length - x);
    const up = length(y);
    return textLabel(
      'regular',
      `${what}: drill ${length(diameter)}, ${from} from the end, ${up} up`,
      `${what}: ${length(diameter)}, ${from} in, ${up} up`,
      `${length(diameter)}: ${from}, ${up}`,
    );
  };
  return {
    title: `front, drilling template, ${hand} end, corner ${letter}`,
    name: [
      textLabel(
        'bold',
        `${item} · front, drilling`,
        ...shorter.map((wording) => `${wording} · drilling`),
        ...shorter.slice(-1),
      ),
      textLabel('bold', letter),
    ],
    about: [
      textLabel('bold', 'OUTSIDE FACE, drill from here', 'OUTSIDE FACE', 'OUTSIDE'),
      textLabel('regular', `${hand} end`),
      textLabel('regular', `quantity ${count}`, `qty ${count}`),
      ...pulls.flatMap(({ holes }) => holes.map((each) => hole('pull', each))),
      ...(lock ? [hole('key', lock.keyhole)] : []),
      scaleBar(units),
    ],
    place: [textLabel('regular', '↑ fold over the lower edge', '↑ lower edge')],
  };
};

/** The least and the most width of a flap, and its steps, mm. */
const LEAST_FLAP = 12;
const MOST_FLAP = 80;
const FLAP_STEP = 4;

/** How wide the flap is under `covered` mm of the lower edge, for everything that is written on it. */
export const flapWidth = (front: DrilledFront, hand: Hand, covered: number): number => {
  const lettering = drillingLettering(front, hand);
  for (let width = LEAST_FLAP; width < MOST_FLAP; width += FLAP_STEP)
    if (setTagLettering({ box: { x0: 0, y0: 0, x1: covered, y1: width }, turn: 0 }, lettering).length > 0)
      return width;
  return MOST_FLAP;
};

/** The flap's letters: all of them on the widest part between two splits, and the name on every other. */
export const flapMarks = (front: DrilledFront, hand: Hand, flap: Box, { x: splits }: Splits): Mark[] => {
  const lettering = drillingLettering(front, hand);
  const name: Lettering = { name: lettering.name, about: [], place: lettering.place };
  const edges = [flap.x0, ...splits, flap.x1];
  const rooms = edges.slice(1).map((to, i): Box => {
    const from = edges[i] ?? flap.x0;
    return {
      ...flap,
      // What is on a tab would be cut.
      x0: from === flap.x0 ? from : from + Math.max(CLEAR_OF_SPLITS, TAB.most),
      x1: to === flap.x1 ? to : to - CLEAR_OF_SPLITS,
    };
  });
  return rooms.flatMap((box) => {
    const all = setTagLettering({ box, turn: 0 }, lettering);
    return all.length > 0 ? all : setTagLettering({ box, turn: 0 }, name);
  });
};
