import { cornerLetter, type Hand } from '../../drawer/cornerLetters.ts';
import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerCut } from '../../drawer/drawerCut.ts';
import { hasEqualEnds } from '../../drawer/drawerSizes.ts';
import type { DrawerSpec } from '../../drawer/drawerSpec.ts';
import { ofHand } from '../../drawer/made/drawerCorners.ts';
import type { Part } from '../../drawer/partsList.ts';
import { rebatedEdges } from '../../drawer/rebateFirst.ts';
import type { Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { CAUTIONS, FINGER_CAUTIONS } from '../../router/limits/cautions.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { routerSteps } from './benchRouter.ts';
import { insideDiagonal } from './insideMarks.ts';

/** Something to do or to heed, in few words; `figure` is a length to work to, set in bold. */
export interface Instruction {
  readonly text: string;
  readonly figure?: string;
}

export interface Section {
  readonly heading: string;
  readonly numbered: boolean;
  readonly lines: readonly Instruction[];
}

/** Example of the swelling of damp paper, as a share. */
const SWELLING = 0.005;

/**
 * The text of a drawer's or a box's bench sheet, by section.
 * @param parts the drawer's own
 */
export const benchInstructions = (
  drawer: Drawer,
  parts: readonly Part[],
  cut: DrawerCut | undefined,
  unit: Notation,
): Section[] => {
  const { spec, sizes, front, back } = drawer;
  const { hold } = spec.bottom;
  const bottomWork = parts.find(({ part }) => part === 'bottom')?.worked ?? [];
  const worksBottom = bottomWork.length > 0 ? ['Work the bottom as its row above says.'] : [];
  const isBox = spec.box !== undefined;
  const isRebated = spec.groove.rebate === true;
  const length = (value: number) => formatLength(value, unit).replaceAll(' ', '\u00A0');
  return [
    {
      heading: 'Order of work',
      numbered: true,
      lines: [
        ...(spec.box?.isLid
          ? ['Make the lid upside down: its reference edge is its upper edge, and its bottom is its top.']
          : []),
        'Mark outside faces and reference edges; letter corners.',
        ...(hasEqualEnds(spec) ? ['All four corners are alike: front and back are their pin boards.'] : []),
        ...(spec.lip === undefined ? [] : [`Cut the front’s rebate along ${rebatedEdges(sizes.rebate)}.`]),
        ...(cut === undefined
          ? byHand(drawer, unit)
          : [gaugeStep(drawer), ...routerSteps(drawer, cut, unit)]),
        'Scrape off the paper. Fit dry, and check.',
        `${isRebated ? 'Rebate the lower inside edges of' : 'Groove'} ${grooved(spec)}.${
          spec.groove.stopped === undefined
            ? ''
            : ` Stop ${isRebated ? 'the rebates of front and back' : 'the sides’ groove'} ${length(spec.groove.stopped)} from ${isBox ? 'both' : 'their front'} ends.`
        }`,
        'Put finish on the inside faces.',
        ...(isBox ? worksBottom : []),
        isBox && !isRebated
          ? 'Glue, with the bottom dry in its grooves on all four sides; clamp, check again.'
          : 'Glue, clamp, check again.',
        ...(hold.kind === 'slips'
          ? [
              'Trim the drawer slips to fit between front and back. Glue them inside the sides, lower edges flush.',
            ]
          : []),
        ...(isBox ? [] : [...worksBottom, bottomStep(drawer)]),
        ...(isRebated ? ['Lay the bottom into its rebate from below, and fix it there.'] : []),
        `Plane ${front.proud > 0 || back.proud > 0 ? 'the sides flush with the pins' : 'the joints flush'}${isBox ? '' : ', and fit the drawer to its opening'}.`,
        ...sawStep(front, length),
      ].map((text) => ({ text })),
    },
    {
      heading: 'Before glue',
      numbered: false,
      lines: [
        { text: 'Both diagonals inside:', figure: length(insideDiagonal(drawer)) },
        { text: 'No twist: lay winding sticks on front and back, and sight across them.' },
        {
          text: 'Finish first: inside faces, and both faces of the bottom. Put no finish on joints or in grooves.',
        },
        ...(hold.kind === 'slips'
          ? [{ text: 'No finish where the slips are glued, up each side:', figure: length(hold.height) }]
          : []),
      ],
    },
    {
      heading: 'Templates',
      numbered: false,
      lines: [
        {
          text: 'Put glue stick or thin spray on the wood. Lay the paper down from the edge; never pull it.',
        },
        {
          text: `Wet glue swells paper: 0.5 % of ${length(sizes.height)} is`,
          figure: length(SWELLING * sizes.height),
        },
        { text: 'Saw on the waste side; leave half the line.' },
      ],
    },
    ...(cut === undefined
      ? []
      : [
          {
            heading: 'At the router',
            numbered: false,
            lines: [...(spec.fingers === undefined ? [] : FINGER_CAUTIONS), ...CAUTIONS].map((phrase) => ({
              text: speak(phrase, unit),
            })),
          },
        ]),
    TAKE_CARE,
  ];
};

/** A lid is sawn off when the box is closed. */
const sawStep = ({ sawCut }: Joint, length: (value: number) => string): string[] =>
  sawCut === undefined
    ? []
    : [
        'Glue the top on, which is not among these parts.',
        `When the glue is dry, gauge two lines all round, ${sawCut.map(length).join(' and ')} up. Saw the lid off between them, the ends first. Plane both edges to their lines.`,
      ];

/** The boards with a groove for the bottom. */
const grooved = ({ bottom, box }: DrawerSpec): string => {
  if (box !== undefined) return 'front, back and sides';
  return bottom.hold.kind === 'slips' ? 'front and slips' : 'front and sides';
};

/** The cautions of every bench sheet. */
export const TAKE_CARE: Section = {
  heading: 'Take care',
  numbered: false,
  lines: [
    { text: 'Clamp the work. Keep both hands behind the cutting edge.' },
    { text: 'Wear eye and ear protection and a dust mask.' },
    { text: 'Dry oily rags spread out, outdoors: in a heap they can catch fire by themselves.' },
    { text: 'Tool makers’ manuals, local rules and a qualified teacher come before this sheet.' },
  ],
};

/** Where either corner has an order of work of its own, the front corners come first. */
const byHand = (drawer: Drawer, unit: Notation): string[] => {
  const isAlike = hasEqualEnds(drawer.spec);
  const workAt = (hand: Hand, end: 'front' | 'back'): string[] => {
    const joint = ofHand(drawer, hand)[end];
    return kindOf(joint)
      .work(joint, { tail: 'side', pin: isAlike ? 'pin board' : end })
      .map((phrase) => speak(phrase, unit));
  };
  const workOf = (end: 'front' | 'back'): string[] => {
    const right = workAt('right', end);
    return workAt('left', end).flatMap((left, i) =>
      right[i] === undefined || right[i] === left
        ? [left]
        : [
            `Corner ${cornerLetter(end, 'left')}: ${left}`,
            `Corner ${cornerLetter(end, 'right')}: ${right[i]}`,
          ],
    );
  };
  const [atFront, atBack] = [workOf('front'), workOf('back')];
  const [trial = '', ...tailsFirst] = BY_HAND;
  if (atFront.length === 0 && atBack.length === 0) return [gaugeStep(drawer), ...BY_HAND];
  if (isAlike) return [trial, ...atFront];
  return [
    trial,
    ...(atFront.length > 0 ? atFront : [gaugeStep(drawer), ...tailsFirst]),
    ...(atBack.length > 0
      ? ['Then the back corners.', ...atBack]
      : ['Then the back corners: gauge every end.', ...tailsFirst]),
  ];
};

const BY_HAND = [
  'Cut a trial joint in the spare length; then cut every part to its finished length.',
  'Glue the tail templates on the sides’ ends.',
  'Saw and chop the tails.',
  'Scribe the pins from the tails, each corner from its own tails. Or use the pin templates.',
  'Saw the pins, chop the sockets.',
];

/** A lip projects beyond the shoulder that a front with a lip is gauged from. */
const gaugeStep = ({ sizes: { rebate } }: Drawer): string => {
  if (rebate.sides === 0) return 'Gauge every end.';
  return `Gauge every end; the front from its rebate’s shoulder${rebate.bottom > 0 ? ' and the rebate’s lower edge' : ''}.`;
};

const bottomStep = ({ spec: { bottom } }: Drawer): string =>
  bottom.kind === 'solid'
    ? 'Slide the bottom in from behind; glue its front edge only. Drive a screw through its slot, up into the back’s lower edge.'
    : 'Slide the bottom in from behind. Drive a screw up through it into the back’s lower edge.';
