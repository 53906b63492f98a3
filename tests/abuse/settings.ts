import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { readJointOptions } from '../../src/cli/jointOptions.ts';
import { printerRows } from '../../src/cli/printers.ts';
import { Failure } from '../../src/files/failure.ts';
import { loadPrinters } from '../../src/files/printerStore.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { undo } from '../../src/paper/correction.ts';
import { wild } from '../joint/anySpec.ts';
import { abuse, must, mustBeClear, mustBeFinite, refused } from './abuse.ts';
import { mustBeSound } from './joints.ts';
import { anyText, hostileName } from './texts.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-abuse-'));
process.on('exit', () => rmSync(folder, { recursive: true }));

const near1 = fc.double({ min: 0.97, max: 1.03, noNaN: true });
const printer = fc.record({
  error: fc.record({
    x: fc.oneof({ weight: 4, arbitrary: near1 }, wild),
    y: fc.oneof({ weight: 4, arbitrary: near1 }, wild),
    skew: fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, wild),
  }),
  paper: fc.oneof({ weight: 4, arbitrary: fc.constantFrom('A4', 'Letter') }, anyText),
  measured: fc.oneof({ weight: 4, arbitrary: fc.constantFrom('2026-05-31', '2024-02-29') }, anyText),
});
const stored = fc
  .dictionary(fc.oneof(fc.constantFrom('office', 'Copy shop 2'), hostileName), printer, { maxKeys: 3 })
  .map((printers) => JSON.stringify(printers));
const damaged = fc
  .tuple(stored, fc.nat(400), fc.nat(6), fc.string({ maxLength: 4 }))
  .map(([text, at, cut, put]) => `${text.slice(0, at)}${put}${text.slice(at + cut)}`);

export const printerFiles = abuse(
  'files of printers of any bytes',
  0.3,
  fc.oneof(stored, damaged, fc.json(), fc.string({ unit: 'binary' }), fc.uint8Array({ maxLength: 40 })),
  async (bytes) => {
    const path = join(folder, 'printers.json');
    writeFileSync(path, bytes);
    const before = readFileSync(path);
    try {
      const printers = await loadPrinters(folder);
      for (const { error } of Object.values(printers)) mustBeFinite(undo(error));
      for (const line of printerRows(printers, new Date('2026-06-01'))) mustBeClear(line);
      return 'valid';
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      for (const line of error.lines) mustBeClear(line);
      must(readFileSync(path).equals(before), 'a damaged file was changed');
      return 'refused';
    }
  },
);

const typed = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 4, max: 40 }).map(String) },
  { weight: 1, arbitrary: anyText },
);
const rarely = (text: fc.Arbitrary<string>) =>
  fc.oneof({ weight: 5, arbitrary: fc.constant(undefined) }, text);

export const jointOptions = abuse(
  'options of any text',
  1,
  fc.record({
    name: rarely(hostileName),
    kind: rarely(fc.oneof(fc.constantFrom('through', 'lapped'), anyText)),
    width: fc.oneof({ weight: 6, arbitrary: fc.integer({ min: 50, max: 400 }).map(String) }, anyText),
    tailBoard: typed,
    pinBoard: typed,
    lap: rarely(typed),
    slope: rarely(fc.oneof(fc.constant('1:7'), anyText)),
    tails: rarely(fc.oneof(fc.constantFrom('3', '20,25,20'), anyText)),
    pin: rarely(typed),
    halfPin: rarely(typed),
    graded: rarely(fc.oneof(fc.constant('0.9'), anyText)),
    gradedFrom: rarely(anyText),
    units: rarely(fc.oneof(fc.constantFrom('mm', 'in'), anyText)),
  }),
  (all) => {
    const given = Object.fromEntries(Object.entries(all).filter(([, text]) => text !== undefined));
    const { spec, complaints, name } = readJointOptions(given);
    if (complaints.length > 0) return refused(complaints);
    must(!/\p{Cc}/u.test(name) && name.length <= 160, 'a name that is no name');
    must(spec !== undefined, 'neither read nor refused');
    const laid = layOut(
      spec ?? { kind: 'through', width: 0, tailBoard: 0, pinBoard: 0, spacing: { kind: 'even' } },
    );
    if (!laid.ok) return refused(laid.complaints);
    mustBeSound(laid.value);
    return 'valid';
  },
);
