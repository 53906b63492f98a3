import { join } from 'node:path';
import { refuseOptions } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import { savePrinter } from '../../files/printerStore.ts';
import { writePdf } from '../../files/writeDrawn.ts';
import type { Paper } from '../../paper/paperSizes.ts';
import type { PrinterError } from '../../paper/printerCorrection.ts';
import { readPrinterName } from '../../paper/printerName.ts';
import { accuracyText, finenessOf, proofAccuracy } from '../../paper/proofAccuracy.ts';
import { type ProofLengths, proofLengths } from '../../paper/proofLengths.ts';
import { type MeasuredProof, readProof } from '../../paper/readProof.ts';
import { printJson } from '../../render/json.ts';
import { fileStem } from '../../sheets/fileStem.ts';
import { accept, type Complaint, type Result, refuse, under } from '../../units/complaint.ts';
import { mm, say } from '../../units/phrase.ts';
import type { Unit } from '../../units/unit.ts';
import type { ProofOptions } from '../commands/proof.ts';
import { readUnits } from '../options/notationOptions.ts';
import { type OptionReader, optionReader } from '../options/optionReader.ts';
import { readPaperOptions } from '../options/paperOptions.ts';
import { loadCorrection, userFolder } from '../options/printerOption.ts';
import { terminalLines } from '../report/jointText.ts';
import { percent, skewText } from '../report/printerText.ts';

const MEASURES = { x: 'measuredX', y: 'measuredY', d1: 'measuredD1', d2: 'measuredD2' } as const;

type Measures = Partial<ProofLengths>;

/** Draws a proof sheet; or reads what was measured on one, and keeps it with --save. Throws a Failure with every complaint. */
export const provePrinter = async (options: ProofOptions): Promise<void> => {
  const unit = readUnits(options.units) ?? 'mm';
  const read = optionReader(options, unit);
  const printed = readPaperOptions(read);
  const measures = readMeasures(read);
  if (read.complaints.length > 0 || printed === undefined) return refuseOptions(read.complaints, unit);
  const sheet: Sheet = { ...printed, unit };
  if (Object.keys(measures).length > 0) return keepErrorOf(sheet, measures, options);
  return drawSheet(options, sheet);
};

/** The measured lengths, as far as they can be read. */
const readMeasures = (read: OptionReader<ProofOptions>): Measures =>
  Object.fromEntries(
    Object.entries(MEASURES).flatMap(([key, option]) => {
      const length = read.length(option);
      return length === undefined ? [] : [[key, length]];
    }),
  );

/** What a proof sheet is drawn for. */
interface Sheet {
  readonly paper: Paper;
  readonly margin: number;
  readonly unit: Unit;
}

const keepErrorOf = async (sheet: Sheet, measures: Measures, options: ProofOptions): Promise<void> => {
  const { paper, margin, unit } = sheet;
  const nominal = proofLengths(paper, margin, unit);
  if (!nominal.ok) return refuseOptions(nominal.complaints, unit);
  const read = readSides(nominal.value, measures);
  if (!read.ok) return refuseOptions([otherUnit(sheet, options) ?? read.complaints].flat(), unit);
  const { error, measured } = read.value;
  if (options.save !== undefined)
    await savePrinter(userFolder(), nameOf(options.save), {
      error,
      paper: paper.name,
      measured: new Date().toISOString().slice(0, 10),
    });
  const typed = (...keys: readonly (keyof ProofLengths)[]): string[] =>
    keys.flatMap((key) => options[MEASURES[key]] ?? []);
  const fineness = {
    sides: finenessOf(typed('x', 'y'), unit),
    diagonals: finenessOf(typed('d1', 'd2'), unit),
  };
  if (options.json) {
    const accuracy = proofAccuracy(nominal.value, measured, fineness);
    process.stdout.write(printJson({ ...nominal.value, error, accuracy, saved: options.save ?? null }));
    return;
  }
  const kept =
    options.save === undefined
      ? 'Not kept; add --save and a name to keep it.'
      : `Kept as ${options.save}: add --printer ${options.save} to halfpin draw.`;
  const lines = [
    `Across ${percent(error.x)}, up ${percent(error.y)}${measured.d1 === undefined ? '' : `, skew ${skewText(error)}`}. ${kept}`,
    accuracyText(nominal.value, measured, fineness, unit),
  ].flatMap((text) => terminalLines(text));
  process.stdout.write(`${lines.join('\n')}\n`);
};

/** The printer's error and what it is read from; complaints where one of the two sides was not measured. */
const readSides = (
  nominal: ProofLengths,
  measures: Measures,
): Result<{ readonly error: PrinterError; readonly measured: MeasuredProof }> => {
  const { x, y } = measures;
  if (x !== undefined && y !== undefined) {
    const measured = { ...measures, x, y };
    const error = readProof(nominal, measured);
    return error.ok ? accept({ error: error.value, measured }) : error;
  }
  const missing = (['x', 'y'] as const).filter((side) => measures[side] === undefined);
  return refuse(
    ...missing.map((side) => ({
      at: [MEASURES[side]],
      says: say`${side} is missing; it should be near ${mm(nominal[side])}`,
    })),
  );
};

/** A complaint where the typed lengths fit the proof sheet of the other unit. */
const otherUnit = ({ paper, margin, unit }: Sheet, options: ProofOptions): Complaint | undefined => {
  const other = unit === 'mm' ? 'in' : 'mm';
  const nominal = proofLengths(paper, margin, other);
  return nominal.ok && readSides(nominal.value, readMeasures(optionReader(options, other))).ok
    ? {
        at: [MEASURES.x],
        says: say`these are the lengths of the proof sheet in ${other === 'in' ? 'inches' : 'mm'}`,
        hint: say`--units ${other}`,
      }
    : undefined;
};

const nameOf = (typed: string): string => {
  const read = readPrinterName(typed);
  return read.ok ? read.value : refuseOptions(under(['save'], read.complaints), 'mm');
};

const drawSheet = async (
  { json, out, printer, force }: ProofOptions,
  { paper, margin, unit }: Sheet,
): Promise<void> => {
  const correction = printer === undefined ? undefined : await loadCorrection(printer);
  const { drawProof } = await import('../../paper/proofSheet.ts');
  const drawn = drawProof(paper, margin, unit, correction);
  if (!drawn.ok) return refuseOptions(drawn.complaints, unit);
  const { lengths, page } = drawn.value;
  const path = join(out ?? 'templates-out', `proof-${fileStem(paper.name)}.pdf`);
  if (!json || out !== undefined) {
    await guardOverwrite([path], force === true);
    await writePdf(path, `Proof sheet for ${paper.name}`, [page]);
  }
  process.stdout.write(
    json
      ? printJson(lengths)
      : `${path}: print it at 100 % on ${paper.name}, measure it with a steel rule, and type in what you read as it says.\n`,
  );
};
