import { join } from 'node:path';
import type { Command } from 'commander';
import { type Complaint, under } from '../complaint.ts';
import { Failure, refuseOptions, WRONG_INPUT } from '../files/failure.ts';
import { isPrinterName, savePrinter } from '../files/printerStore.ts';
import { refuseForeign } from '../files/refuseForeign.ts';
import { writePdf } from '../files/writePdf.ts';
import { proofLengths } from '../paper/proofLengths.ts';
import { readProof } from '../paper/readProof.ts';
import { printJson } from '../render/json.ts';
import { fileStem } from '../template/fileStem.ts';
import { formatLength, parseLength, type Unit } from '../units/length.ts';
import { wrapText } from './jointText.ts';
import { addPaperOptions, type PaperOptions, readPaperOptions } from './paperOptions.ts';
import { loadCorrection, percent, skewText, userFolder } from './printers.ts';
import { readUnits } from './units.ts';

interface ProofOptions extends PaperOptions {
  readonly out?: string;
  readonly json?: boolean;
  readonly units?: string;
  readonly measuredX?: string;
  readonly measuredY?: string;
  readonly measuredD1?: string;
  readonly measuredD2?: string;
  readonly save?: string;
  readonly printer?: string;
  readonly force?: boolean;
}

/** `proof`: how a printer errs, found out and kept. */
export const addProof = (program: Command): void => {
  const command = program
    .command('proof')
    .summary('find out how a printer errs, and keep its correction')
    .description(
      'Draws a sheet to print and measure. Typed back, the measures tell how the printer errs; kept under a name, they correct every page drawn with --printer.',
    )
    .option('--out <folder>', 'where to write the sheet (templates-out)')
    .option('--json', 'print the lengths on the sheet as JSON, in mm')
    .option('--units <unit>', 'mm or in: what a bare number means, and what is shown')
    .option('--measured-x <length>', 'the bar at the foot, as it was measured')
    .option('--measured-y <length>', 'the bar at the left, as it was measured')
    .option('--measured-d1 <length>', 'from the bottom left corner to the top right')
    .option('--measured-d2 <length>', 'from the top left corner to the bottom right')
    .option('--save <name>', "keep the correction under the printer's name")
    .option('--printer <name>', 'draw the sheet corrected for this printer, to prove the correction')
    .option('--force', 'write over a file that halfpin did not make');
  addPaperOptions(command)
    .addHelpText(
      'after',
      `
Examples:
  halfpin proof --paper A4
  halfpin proof --paper A4 --measured-x 179.3 --measured-y 240.7 --save office
`,
    )
    .action(proof);
};

const MEASURES = ['measuredX', 'measuredY', 'measuredD1', 'measuredD2'] as const;

const proof = async (options: ProofOptions): Promise<void> => {
  const unit = readUnits(options.units) ?? 'mm';
  const complaints: Complaint[] = [];
  const printed = readPaperOptions(options, unit, complaints);
  const measured = MEASURES.map((key) => {
    const text = options[key];
    if (text === undefined) return undefined;
    const parsed = parseLength(text, unit);
    if (parsed.ok) return parsed.value;
    complaints.push(...under([key], parsed.complaints));
    return undefined;
  });
  if (complaints.length > 0 || printed === undefined) return refuseOptions(complaints, unit);
  const { paper, margin } = printed;

  if (measured.every((length) => length === undefined)) {
    if (options.save !== undefined)
      throw new Failure(
        ['--save: there is nothing to save yet; give what you measured, --measured-x and --measured-y'],
        WRONG_INPUT,
      );
    return drawSheet(options, { paper, margin, unit });
  }
  const nominal = proofLengths(paper, margin, unit);
  if (!nominal.ok) return refuseOptions(nominal.complaints, unit);
  if (options.printer !== undefined)
    throw new Failure(
      ['--printer: a corrected sheet does not tell how the printer errs; measure an uncorrected one'],
      WRONG_INPUT,
    );
  const [x, y, d1, d2] = measured;
  const missing = (['x', 'y'] as const).filter((side) => (side === 'x' ? x : y) === undefined);
  if (x === undefined || y === undefined)
    throw new Failure(
      missing.map(
        (side) =>
          `--measured-${side}: ${side} is missing; it should be near ${formatLength(nominal.value[side], unit)}`,
      ),
      WRONG_INPUT,
    );
  const read = readProof(nominal.value, {
    x,
    y,
    ...(d1 !== undefined && { d1 }),
    ...(d2 !== undefined && { d2 }),
  });
  if (!read.ok) return refuseOptions(read.complaints, unit);
  const error = read.value;
  if (options.save !== undefined)
    await savePrinter(userFolder(), nameOf(options.save), {
      error,
      paper: paper.name,
      measured: new Date().toISOString().slice(0, 10),
    });
  if (options.json) {
    process.stdout.write(printJson({ ...nominal.value, error, saved: options.save ?? null }));
    return;
  }
  const kept =
    options.save === undefined
      ? 'Not kept; add --save and a name to keep it.'
      : `Kept as ${options.save}: add --printer ${options.save} to halfpin draw.`;
  process.stdout.write(
    `${wrapText(`Across ${percent(error.x)}, up ${percent(error.y)}, an upright leans ${skewText(error)}. ${kept}`).join('\n')}\n`,
  );
};

const nameOf = (text: string): string => {
  if (isPrinterName(text)) return text;
  throw new Failure(
    ['--save: a printer is named with letters, digits, spaces, dots and hyphens, 40 at the most; try office'],
    WRONG_INPUT,
  );
};

const drawSheet = async (
  { json, out, printer, force }: ProofOptions,
  { paper, margin, unit }: { paper: Parameters<typeof proofLengths>[0]; margin: number; unit: Unit },
): Promise<void> => {
  const correction = printer === undefined ? undefined : await loadCorrection(printer);
  const { drawProof } = await import('../paper/proof.ts');
  const drawn = drawProof(paper, margin, unit, correction);
  if (!drawn.ok) return refuseOptions(drawn.complaints, unit);
  const { lengths, page } = drawn.value;
  const path = join(out ?? 'templates-out', `proof-${fileStem(paper.name)}.pdf`);
  if (!json || out !== undefined) {
    await refuseForeign([path], force === true);
    await writePdf(path, `Proof sheet for ${paper.name}`, [page]);
  }
  process.stdout.write(
    json
      ? printJson(lengths)
      : `${path}: print it at 100 % on ${paper.name}, measure it with a steel rule, and type in what you read as it says.\n`,
  );
};
