import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerCut } from '../../drawer/drawerCut.ts';
import { rebatedEdges } from '../../drawer/rebateFirst.ts';
import { CAUTIONS } from '../../router/limits/cautions.ts';
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

/** The text of a drawer's bench sheet, by section. */
export const benchInstructions = (drawer: Drawer, cut: DrawerCut | undefined, unit: Notation): Section[] => {
  const { spec, sizes, front } = drawer;
  const length = (value: number) => formatLength(value, unit).replaceAll(' ', '\u00A0');
  const grooved = spec.bottom.hold.kind === 'slips' ? 'front and slips' : 'front and sides';
  return [
    {
      heading: 'Order of work',
      numbered: true,
      lines: [
        { text: 'Letter the corners; mark faces and edges.' },
        ...(spec.lip === undefined
          ? []
          : [
              {
                text: `Cut the front’s rebate along ${rebatedEdges(sizes.rebate)}.`,
              },
            ]),
        { text: gaugeStep(drawer) },
        ...(cut === undefined ? BY_HAND : routerSteps(drawer, cut)).map((text) => ({ text })),
        { text: 'Fit dry, and check.' },
        { text: `Groove ${grooved}.` },
        { text: 'Finish the inside faces.' },
        { text: 'Glue, clamp, check again.' },
        { text: bottomStep(drawer) },
        ...(front.proud > 0 || drawer.back.proud > 0
          ? [{ text: 'Plane the sides flush with the pins.' }]
          : []),
      ],
    },
    {
      heading: 'Before glue',
      numbered: false,
      lines: [
        { text: 'Both diagonals inside:', figure: length(insideDiagonal(drawer)) },
        { text: 'No wind: sight over straight strips on front and back.' },
        {
          text: 'Finish first: inside faces of front, sides and back; the bottom all over. Joints and grooves stay bare.',
        },
      ],
    },
    {
      heading: 'Templates',
      numbered: false,
      lines: [
        { text: 'Measure the check bars first.' },
        {
          text: 'Glue stick or thin spray, on the wood; lay the paper down from the edge and never pull it.',
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
            lines: CAUTIONS.map((phrase) => ({ text: speak(phrase, unit) })),
          },
        ]),
    {
      heading: 'Take care',
      numbered: false,
      lines: [
        { text: 'Sharp tools, the work held fast, hands behind the edge. Guard eyes, ears and lungs.' },
        { text: 'Dry oily rags spread out, outdoors: heaped, they can catch fire by themselves.' },
        { text: 'Tool makers’ manuals, local rules and a qualified teacher come before this sheet.' },
      ],
    },
  ];
};

const BY_HAND = [
  'Glue the tail templates on the sides’ ends.',
  'Saw and chop the tails.',
  'Scribe the pins from the tails, A from A; their templates show the waste, or serve alone.',
  'Saw the pins, chop the sockets.',
];

/** A lip projects beyond the shoulder that a front with a lip is gauged from. */
const gaugeStep = ({ sizes: { rebate } }: Drawer): string => {
  if (rebate.sides === 0) return 'Gauge every end.';
  return `Gauge every end; the front from its rebate’s shoulder${rebate.bottom > 0 ? ' and lower edge' : ''}.`;
};

const bottomStep = ({ spec: { bottom } }: Drawer): string =>
  bottom.kind === 'solid'
    ? 'Slide the bottom in from behind. Glue its front edge only; a slotted screw holds it under the back.'
    : 'Slide the bottom in from behind; screw it up under the back.';
