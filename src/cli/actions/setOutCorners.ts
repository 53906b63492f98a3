import { type Drawer, madeOf } from '../../drawer/drawer.ts';
import { hasEqualEnds } from '../../drawer/drawerSizes.ts';
import { entryName } from '../../drawer/made/built.ts';
import { cornerWords, drawerCorners } from '../../drawer/made/drawerCorners.ts';
import { rebateFirst } from '../../drawer/rebateFirst.ts';
import type { SpacerPrice } from '../../drawer/spacers/spacerPrices.ts';
import type { Joint } from '../../joint/joint.ts';
import { jointRecord } from '../../joint/jointRecord.ts';
import { railLength } from '../../joint/topRail.ts';
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
  const fitted = project.set.drawers.some(({ spec }) => spec.fittings !== undefined);
  if (options.json) {
    const record = fitted
      ? (await import('../../project/tables/fittingsRecord.ts')).fittingsRecord(project)
      : undefined;
    process.stdout.write(printJson({ ...layRecord(project, prices), ...(record && { fittings: record }) }));
    return;
  }
  const fittings = fitted ? (await import('../report/fittingsText.ts')).fittingsText(project) : [];
  process.stdout.write(`${apart([...layText(project, prices), fittings]).join('\n')}\n`);
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
      ...madeOf(set).flatMap((drawer) => {
        const { spec } = drawer;
        const rebate = rebateFirst(drawer).map((says) => speak(says, units));
        return drawerCorners(drawer).map(({ name, end, letters, joint }) => {
          const laid = record(name, joint);
          return {
            ...(spec.box === undefined ? { drawer: entryName(spec) } : { box: spec.name }),
            ...(spec.made && spec.name !== spec.made.name && { copies: spec.made.copies }),
            corner: end,
            corners: letters,
            ...laid,
            ...(end === 'front' && { advice: [...laid.advice, ...rebate] }),
          };
        });
      }),
      ...joints.map(({ name, joint, rail }) => ({
        ...record(name, joint),
        ...(rail && { rail: { ...rail, length: railLength(rail, joint) } }),
      })),
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
): string[][] => {
  const corner = (heading: string, joint: Joint, pinBoardFrom?: string): string[] => {
    const cut = cuts.get(joint);
    return [
      ...jointText(heading, joint, units, pinBoardFrom),
      ...(cut && cutting ? ['', ...cutText(cut.guided, cutting, units, pinBoardFrom)] : []),
      ...(cut?.fingers ? ['', ...fingerText(cut.fingers, cutsOuter(cut.guided), units)] : []),
    ];
  };
  const ofDrawer = (drawer: Drawer): string[][] => {
    const { spec, sizes } = drawer;
    const corners = drawerCorners(drawer);
    // Of corners that are all alike, one is enough.
    const isOne = hasEqualEnds(spec);
    return (isOne ? corners.slice(0, 1) : corners).map((each) => {
      const heading = `${spec.name}, ${isOne ? 'corners A, B, C and D' : cornerWords(each)}`;
      if (each.end === 'back')
        return [
          ...corner(heading, each.joint),
          ...(spec.box === undefined
            ? terminalLines(
                `On the sides the back's measures start at the groove's upper edge, ${formatLength(sizes.backFrom, units)} from the reference edge.`,
              )
            : []),
        ];
      return [
        ...corner(heading, each.joint, sizes.rebate.sides > 0 ? "the rebate's shoulder" : undefined),
        ...adviceText(
          rebateFirst(drawer).map((says) => ({ at: [], says })),
          units,
        ),
      ];
    });
  };
  return [
    ...madeOf(set).flatMap(ofDrawer),
    ...joints.map(({ name, joint, rail }) => [
      ...corner(name, joint),
      ...workText(joint, units, cuts.has(joint), rail),
      ...adviceText(joint.advice, units),
    ]),
    [
      ...(set.family ? terminalLines(familySentence(set.family, units)) : []),
      ...adviceText(set.advice, units),
    ],
    set.asked ? spacerText(set, prices, units) : [],
    cutting ? cautionText(units) : [],
  ];
};
