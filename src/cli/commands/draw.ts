import type { Command } from 'commander';
import type { DrawOptions } from '../options/drawOptions.ts';
import { addJointOptions, type JointOptions } from '../options/jointOptions.ts';
import { addPaperOptions, FONT_OPTION } from '../options/paperOptions.ts';

/** `draw`: full-size templates. */
export const addDraw = (program: Command): void => {
  const command = program
    .command('draw')
    .summary('full-size templates to print and glue on')
    .description(
      'Draws the templates of a plan, or of one corner, at full size, on sheets to be printed at 100 %.',
    )
    .argument('[plan]', 'a plan file, or - for standard input')
    .option('--out <folder>', 'where to write', 'templates-out')
    .option(
      '--as <kinds>',
      'pdf or svg; for guides also dxf (for CAD and cutting machines): pdf,svg,dxf',
      'pdf',
    )
    .option('--flat', 'flat templates: one face each, for boards of uneven thickness')
    .option('--boards <board>', 'tail or pin: only that board of each corner')
    .option('--rods', 'a rod of each corner as well, to knife from')
    .option('--only <names>', 'only these drawers and single corners of a plan: Buttons,Cloth/side')
    .option(
      '--sheets <kinds>',
      'which sheets as PDF: templates, contents, drilling, guides, cutting-list, bench, comparison (all these), or proportion, or corners, as pictures',
    )
    .option('--copies <copies>', 'one of each template, or made: each as often as it is made (one)')
    .option('--printer <name>', 'correct every sheet for a printer measured with halfpin proof')
    .option('--send <queue>', 'print to this queue too (CUPS, the printing system of Linux and macOS)')
    .option(
      '--tidy',
      'remove old files in the name of this plan, which it does not make or which --sheets leaves out',
    )
    .option('--force', 'write over files that halfpin did not make');
  addPaperOptions(command).option(...FONT_OPTION);
  command.option(
    '--bench-paper <size>',
    'paper of cutting list, bench sheets, comparison, proportion and corners (as --paper up to Legal, else A4 or Letter)',
  );
  addJointOptions(command)
    .addHelpText(
      'after',
      `
Examples:
  halfpin draw examples/haberdashery-chest.yaml
  halfpin draw --width 96 --tail-board 11 --pin-board 20 --lap 5 --paper A4
  halfpin draw examples/haberdashery-chest-guided.yaml --as pdf,svg,dxf
  halfpin draw examples/haberdashery-chest-fingers.yaml --sheets guides
  halfpin draw examples/haberdashery-chest.yaml --sheets templates,bench
  halfpin draw examples/corners.yaml --sheets corners
  halfpin draw examples/haberdashery-chest.yaml --only Buttons,Cloth/side
  halfpin draw examples/haberdashery-chest.yaml --sheets templates --copies made
`,
    )
    .action(async (plan: string | undefined, options: DrawOptions & JointOptions) => {
      // Drawing is loaded for this command only.
      const { drawSheets } = await import('../actions/drawSheets.ts');
      await drawSheets(plan, options);
    });
};
