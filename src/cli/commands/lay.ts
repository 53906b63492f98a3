import type { Command } from 'commander';
import type { Drawer } from '../../drawer/drawer.ts';
import { rebateFirst } from '../../drawer/rebateFirst.ts';
import type { Joint } from '../../joint/joint.ts';
import { jointRecord } from '../../joint/jointRecord.ts';
import type { Project } from '../../project/project.ts';
import { printJson } from '../../render/json.ts';
import type { RouterCut } from '../../router/passes/routerCut.ts';
import { formatLength } from '../../units/formatLength.ts';
import { speak } from '../../units/phrase.ts';
import { loadProject } from '../loadProject.ts';
import { addJointOptions, type JointOptions } from '../options/jointOptions.ts';
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

interface LayOptions extends JointOptions {
  readonly json?: boolean;
}

/** `lay`: the numbers to mark out from. */
export const addLay = (program: Command): void => {
  const command = program
    .command('set-out')
    .alias('lay')
    .summary('the numbers to mark out from, without a printer')
    .description(
      'Prints every line of a joint, measured from the reference edge, and the settings to mark it with.',
    )
    .argument('[plan]', 'a plan file, or - for standard input')
    .option('--json', 'print one JSON object, lengths in mm');
  addJointOptions(command)
    .addHelpText(
      'after',
      '\nExample:\n  halfpin set-out --width 96 --tail-board 11 --pin-board 20 --lap 5 --slope 1:7\n',
    )
    .action(async (plan: string | undefined, options: LayOptions) => {
      const project = await loadProject(plan, options);
      process.stdout.write(options.json ? printJson(layRecord(project)) : `${layText(project).join('\n')}\n`);
    });
};

const layRecord = ({ units, set, joints, cuts }: Project) => {
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
      ...set.drawers.flatMap((drawer) => {
        const { spec, front, back } = drawer;
        const { name } = spec;
        const ofFront = record(`${name} front`, front);
        const rebate = rebateFirst(drawer).map((says) => speak(says, units));
        return [
          { drawer: name, corner: 'front', ...ofFront, advice: [...ofFront.advice, ...rebate] },
          { drawer: name, corner: 'back', ...record(`${name} back`, back) },
        ];
      }),
      ...joints.map(({ name, joint }) => record(name, joint)),
    ],
    ...(set.family && { family: { target: set.family.target, spread: set.family.spread } }),
    ...spacerRecord(set),
    ...((set.family || set.advice.length > 0) && {
      advice: set.advice.map(({ says }) => speak(says, units)),
    }),
  };
};

/** Whether a half space at either edge is cut, and not left to be cut by hand. */
const cutsOuter = ({ passes }: RouterCut): boolean =>
  [passes[0], passes.at(-1)].some((centres = []) => centres.length > 0);

const layText = ({ units, set, joints, cutting, cuts }: Project): string[] => {
  const corner = (heading: string, joint: Joint, pinBoardFrom?: string): string[] => {
    const cut = cuts.get(joint);
    return [
      ...jointText(heading, joint, units, pinBoardFrom),
      ...(cut && cutting ? ['', ...cutText(cut.guided, cutting, units, pinBoardFrom)] : []),
      ...(cut?.fingers ? ['', ...fingerText(cut.fingers, cutsOuter(cut.guided), units)] : []),
    ];
  };
  const frontText = (drawer: Drawer): string[] => {
    const heading = `${drawer.spec.name}, front corners A and B`;
    const first = rebateFirst(drawer).map((says) => ({ at: [], says }));
    return [
      ...corner(heading, drawer.front, drawer.sizes.rebate.sides > 0 ? "the rebate's shoulder" : undefined),
      ...adviceText(first, units),
    ];
  };
  return apart([
    ...set.drawers.flatMap((drawer) => [
      frontText(drawer),
      [
        ...corner(`${drawer.spec.name}, back corners C and D`, drawer.back),
        ...terminalLines(
          `On the sides the back's measures start at the groove's upper edge, ${formatLength(drawer.sizes.backFrom, units)} from the reference edge.`,
        ),
      ],
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
    set.asked ? spacerText(set, units) : [],
    cutting ? cautionText(units) : [],
  ]);
};
