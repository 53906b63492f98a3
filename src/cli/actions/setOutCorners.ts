import { type Drawer, drawersAndBoxes } from '../../drawer/drawer.ts';
import { hasEqualEnds } from '../../drawer/drawerSizes.ts';
import { rebateFirst } from '../../drawer/rebateFirst.ts';
import type { SpacerPrice } from '../../drawer/spacers/spacerPrices.ts';
import type { Joint } from '../../joint/joint.ts';
import { jointRecord } from '../../joint/jointRecord.ts';
import type { Project } from '../../project/project.ts';
import { printJson } from '../../render/json.ts';
import type { RouterCut } from '../../router/passes/routerCut.ts';
import { formatLength } from '../../units/formatLength.ts';
import { speak } from '../../units/phrase.ts';
import type { LayOptions } from '../commands/lay.ts';
import { loadProject } from '../loadProject.ts';
import { cautionText, cutText } from '../report/cutText.ts';
import { fingerRecord, spacerRecord } from '../report/fingerRecord.ts';
import { fingerText, spacerText } from '../report/fingerText.ts';
import {
  adviceText,
  apart,
  familySentence,
  jointText,
  terminalLines,
  workText,
} from '../report/jointText.ts';

/** Prints the numbers to mark a plan's corners from, or those of one corner. */
export const setOutCorners = async (plan: string | undefined, options: LayOptions): Promise<void> => {
  const project = await loadProject(plan, options);
  // The search for few spacers is loaded only where fingers are set.
  const prices =
    project.set.asked === undefined
      ? []
      : (await import('../../drawer/spacers/spacerPrices.ts')).spacerPrices(project.set);
  process.stdout.write(
    options.json ? printJson(layRecord(project, prices)) : `${layText(project, prices).join('\n')}\n`,
  );
};

const layRecord = ({ units, set, joints, cuts }: Project, prices: readonly SpacerPrice[]) => {
  const record = (name: string, joint: Joint) => {
    const cut = cuts.get(joint);
    return {
      ...jointRecord(name, joint, units),
      ...(cut && { guided: cut.guided }),
      ...(cut?.fingers && fingerRecord(cut.fingers)),
    };
  };
  return {
    joints: [
      ...drawersAndBoxes(set).flatMap((drawer) => {
        const { spec, front, back } = drawer;
        const { name } = spec;
        const whose = spec.box === undefined ? { drawer: name } : { box: name };
        const ofFront = record(`${name} front`, front);
        const rebate = rebateFirst(drawer).map((says) => speak(says, units));
        return [
          { ...whose, corner: 'front', ...ofFront, advice: [...ofFront.advice, ...rebate] },
          { ...whose, corner: 'back', ...record(`${name} back`, back) },
        ];
      }),
      ...joints.map(({ name, joint }) => record(name, joint)),
    ],
    ...(set.family && { family: { target: set.family.target, spread: set.family.spread } }),
    ...spacerRecord(set, prices),
    ...((set.family || set.advice.length > 0) && {
      advice: set.advice.map(({ says }) => speak(says, units)),
    }),
  };
};

/** Whether a half space at either edge is cut, and not left to be cut by hand. */
const cutsOuter = ({ passes }: RouterCut): boolean =>
  [passes[0], passes.at(-1)].some((centres = []) => centres.length > 0);

const layText = (
  { units, set, joints, cutting, cuts }: Project,
  prices: readonly SpacerPrice[],
): string[] => {
  const corner = (heading: string, joint: Joint, pinBoardFrom?: string): string[] => {
    const cut = cuts.get(joint);
    return [
      ...jointText(heading, joint, units, pinBoardFrom),
      ...(cut && cutting ? ['', ...cutText(cut.guided, cutting, units, pinBoardFrom)] : []),
      ...(cut?.fingers ? ['', ...fingerText(cut.fingers, cutsOuter(cut.guided), units)] : []),
    ];
  };
  const frontText = (drawer: Drawer): string[] => {
    const heading = `${drawer.spec.name}, ${hasEqualEnds(drawer.spec) ? 'corners A, B, C and D' : 'front corners A and B'}`;
    const first = rebateFirst(drawer).map((says) => ({ at: [], says }));
    return [
      ...corner(heading, drawer.front, drawer.sizes.rebate.sides > 0 ? "the rebate's shoulder" : undefined),
      ...adviceText(first, units),
    ];
  };
  const backText = (drawer: Drawer): string[] => [
    ...corner(`${drawer.spec.name}, back corners C and D`, drawer.back),
    ...(drawer.spec.box === undefined
      ? terminalLines(
          `On the sides the back's measures start at the groove's upper edge, ${formatLength(drawer.sizes.backFrom, units)} from the reference edge.`,
        )
      : []),
  ];
  return apart([
    ...drawersAndBoxes(set).flatMap((drawer) => [
      frontText(drawer),
      hasEqualEnds(drawer.spec) ? [] : backText(drawer),
    ]),
    ...joints.map(({ name, joint }) => [
      ...corner(name, joint),
      ...workText(joint, units, cuts.has(joint)),
      ...adviceText(joint.advice, units),
    ]),
    [
      ...(set.family ? terminalLines(familySentence(set.family, units)) : []),
      ...adviceText(set.advice, units),
    ],
    set.asked ? spacerText(set, prices, units) : [],
    cutting ? cautionText(units) : [],
  ]);
};
