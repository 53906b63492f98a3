import type { Joint } from '../../joint/joint.ts';
import type { Overhang } from '../../router/passes/routerCut.ts';
import { type CornerEnd, type CornerLetter, cornerLetter, HANDS, type Hand } from '../cornerLetters.ts';
import type { Drawer } from '../drawer.ts';
import { sidePastBack, sidePastFront } from '../drawerSizes.ts';

/** Corners of a drawer that are mirror images of each other: two, or one where its boards came out other than those opposite. */
export interface DrawerCorner {
  /** `Buttons front`, or `Buttons front A` for one alone. */
  readonly name: string;
  readonly end: CornerEnd;
  readonly letters: readonly CornerLetter[];
  readonly hands: readonly Hand[];
  readonly joint: Joint;
  /** Where the side extends beyond the board at its end; absent where it does not. */
  readonly overhang?: Overhang;
}

/** All corners of a drawer by their letters: those of the front and then those of the back. */
export const drawerCorners = (drawer: Drawer): DrawerCorner[] => {
  const { spec, sizes, right } = drawer;
  const of = (end: CornerEnd, hands: readonly Hand[]): DrawerCorner => {
    const [hand = 'left'] = hands;
    const letters = hands.map((each) => cornerLetter(end, each));
    const name = `${spec.name} ${end}`;
    const past =
      end === 'back' ? sidePastBack(sizes, hand) : { lower: false, upper: sidePastFront(sizes, hand) > 0 };
    return {
      name: letters.length > 1 ? name : `${name} ${letters.join('')}`,
      end,
      letters,
      hands,
      joint: (hand === 'right' ? right : undefined)?.[end] ?? drawer[end],
      ...((past.lower || past.upper) && { overhang: past }),
    };
  };
  const back = HANDS.toReversed();
  return right === undefined
    ? [of('front', HANDS), of('back', back)]
    : [...HANDS.map((hand) => of('front', [hand])), ...back.map((hand) => of('back', [hand]))];
};

/** `front corners A and B`, `front corner A`. */
export const cornerWords = ({ end, letters }: DrawerCorner): string =>
  `${end} ${letters.length > 1 ? 'corners' : 'corner'} ${letters.join(' and ')}`;

/** A drawer both of whose sides have the corners of one of them: the left one's A and D, or the right one's B and C. */
export const ofHand = (drawer: Drawer, hand: Hand): Drawer => {
  const { right, ...alike } = drawer;
  return hand === 'left' || right === undefined ? alike : { ...alike, ...right };
};
