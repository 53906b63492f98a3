import type { Command } from 'commander';
import type { TrialOptions } from '../options/trialOptions.ts';

/** `trial`: the next setting after a trial joint. */
export const addTrial = (program: Command): void => {
  program
    .command('trial')
    .summary('what a trial joint measures, turned into the next setting')
    .description(
      "Says what to change after a trial joint. One cutter in both boards: its depth. Pins cut along a sloped guide: the guide's place, and the straight cutter's depth. Fingers: what is left where it is, and what moves. By hand: what to pare, shim or scribe again.",
    )
    .argument('[plan]', 'a plan file that has the joint, and what it is cut with; or -')
    .option('--json', 'print one JSON object, lengths in mm')
    .option('--units <unit>', 'mm or in: what a bare number means, and what is shown')
    .option('--log <file>', 'keep every trial in this file, and say what they converge to')
    .option('--out <folder>', 'draw what moves into this folder, as PDF and SVG')
    .option('--force', 'write over files that halfpin did not make')
    .optionsGroup('How the joint was cut:')
    .option('--joint <name>', 'which of the plan\'s corners: "Buttons front"')
    .option('--cutter-angle <degrees>', 'one dovetail cutter in both boards, at this angle')
    .option('--cutter-length <length>', 'how far up its side it cuts')
    .option('--depth <length>', 'how deep the cutter was set')
    .option('--slope <slope>', 'or pins cut along a guide of this slope: 1:8')
    .option('--at <length>', 'how far that guide was from its first place')
    .option('--by-hand', 'or both boards sawn and chopped by hand')
    .optionsGroup('What was measured:')
    .option('--loose <length>', 'how far a tail moves from side to side in its socket')
    .option('--tight <length>', 'or how much must be removed before a tail enters its socket')
    .option('--proud <length>', "how far the tail board is proud of the pins' ends")
    .option('--shy <length>', 'or how far it is below flush')
    .option('--short <length>', "the gap between the tails' ends and the floors of their sockets")
    .addHelpText(
      'after',
      `
Examples:
  halfpin trial --cutter-angle 14 --depth 9.5 --loose 0.2
  halfpin trial --slope 1:8 --tight 0.1 --proud 0.3
  halfpin trial --by-hand --tight 0.1
  halfpin trial examples/trinket-box.yaml --joint "Box corner" --loose 1/64
`,
    )
    .action(async (plan: string | undefined, options: TrialOptions) => {
      const { tryJoint } = await import('../actions/tryJoint.ts');
      await tryJoint(plan, options);
    });
};
