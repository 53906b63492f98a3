import type { Command } from 'commander';
import { jointRecord } from '../joint/record.ts';
import { printJson } from '../render/json.ts';
import { formatLength } from '../units/length.ts';
import { speak } from '../units/phrase.ts';
import { addJointOptions, type JointOptions } from './jointOptions.ts';
import { adviceText, jointText, wrapText } from './jointText.ts';
import { loadWork, type Work } from './work.ts';

interface LayOptions extends JointOptions {
  readonly json?: boolean;
}

/** `lay`: the numbers to mark out from. */
export const addLay = (program: Command): void => {
  const command = program
    .command('lay')
    .summary('the numbers to mark out from, without a printer')
    .description(
      'Prints every line of a joint, measured from the reference edge, and the settings to mark it with.',
    )
    .argument('[plan]', 'a plan file')
    .option('--json', 'print one JSON object, lengths in mm');
  addJointOptions(command)
    .addHelpText(
      'after',
      '\nExample:\n  halfpin lay --width 96 --tail-board 11 --pin-board 20 --lap 5 --slope 1:7\n',
    )
    .action(async (plan: string | undefined, options: LayOptions) => {
      const work = await loadWork(plan, options);
      process.stdout.write(options.json ? printJson(layRecord(work)) : `${layText(work).join('\n')}\n`);
    });
};

const layRecord = ({ units, set, joints }: Work) => ({
  joints: [
    ...set.drawers.flatMap(({ spec: { name }, front, back }) => [
      { drawer: name, corner: 'front', ...jointRecord(`${name} front`, front, units) },
      { drawer: name, corner: 'back', ...jointRecord(`${name} back`, back, units) },
    ]),
    ...joints.map(({ name, joint }) => jointRecord(name, joint, units)),
  ],
  ...(set.family && {
    family: { target: set.family.target, spread: set.family.spread },
    advice: set.advice.map(({ says }) => speak(says, units)),
  }),
});

const layText = ({ units, set, joints }: Work): string[] =>
  [
    ...set.drawers.flatMap(({ spec: { name }, sizes, front, back }) => [
      jointText(`${name}, front corners A and B`, front, units),
      [
        ...jointText(`${name}, back corners C and D`, back, units),
        ...wrapText(
          `On the sides the back's measures start at the groove's top edge, ${formatLength(sizes.backFrom, units)} from the reference edge.`,
        ),
      ],
    ]),
    ...joints.map(({ name, joint }) => [
      ...jointText(name, joint, units),
      ...adviceText(joint.advice, units),
    ]),
    ...(set.family
      ? [
          [
            `The set keeps to tails of ${formatLength(set.family.target, units)}; its widest is ${set.family.spread.toFixed(2)} times its narrowest.`,
            ...adviceText(set.advice, units),
          ],
        ]
      : []),
  ].flatMap((block, i) => (i === 0 ? block : ['', ...block]));
