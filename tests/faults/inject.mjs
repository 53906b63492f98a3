// Loaded before the program: at the n-th step by which it changes the disk, something happens.
//   HALFPIN_FAULT_STEP   which step, counted from 1; 0 for none
//   HALFPIN_FAULT        kill (a write is cut in half) | vanish | an error's code, from that step on: ENOSPC, EIO …
//   HALFPIN_FAULT_FOLDER the folder that vanishes
//   HALFPIN_FAULT_DAY    what the clock shows, as 1970-01-01
//   HALFPIN_FAULT_COUNT  a file to write the number of steps to
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

const { HALFPIN_FAULT_STEP = '0', HALFPIN_FAULT = 'kill', HALFPIN_FAULT_FOLDER = '' } = process.env;
const at = Number(HALFPIN_FAULT_STEP);
const { HALFPIN_FAULT_DAY } = process.env;
if (HALFPIN_FAULT_DAY !== undefined) {
  const wrong = Date.parse(`${HALFPIN_FAULT_DAY}T12:00Z`) - Date.now();
  const { now } = Date;
  globalThis.Date = class extends Date {
    constructor(...given) {
      super(...(given.length === 0 ? [now() + wrong] : given));
    }
    static now = () => now() + wrong;
  };
}
const { writeFileSync, rmSync } = fs;
let step = 0;

const fault = (path) =>
  Object.assign(new Error(`${HALFPIN_FAULT}: injected`), {
    code: HALFPIN_FAULT,
    errno: -1,
    ...(typeof path === 'string' && { path }),
  });

const kill = () => {
  process.kill(process.pid, 'SIGKILL');
  // The signal is on its way.
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0);
};

/** What is done before, or instead of, a step; taking things away works on a full disk too. */
const before = (name, [first]) => {
  step += 1;
  if (step === at && HALFPIN_FAULT === 'kill') kill();
  if (step === at && HALFPIN_FAULT === 'vanish')
    rmSync(HALFPIN_FAULT_FOLDER, { recursive: true, force: true });
  if (at > 0 && step >= at && /^E/u.test(HALFPIN_FAULT) && name !== 'rm') throw fault(first);
};

const wrap = (target, name, isStep = () => true) => {
  const original = target[name];
  target[name] = async function (...args) {
    if (isStep(args)) before(name, args);
    return original.apply(this, args);
  };
};

for (const name of ['mkdir', 'rename', 'link', 'copyFile', 'rm', 'writeFile']) wrap(fs.promises, name);
const handle = await fs.promises.open(process.execPath);
const prototype = Object.getPrototypeOf(handle);
await handle.close();
wrap(fs.promises, 'open', ([, flags]) => flags !== 'r' && flags !== undefined);
wrap(prototype, 'sync');
const { write, writeFile } = prototype;
// One write of the system: a kill comes before or after it, but a full disk may take half.
prototype.write = async function (data, ...rest) {
  if (step + 1 === at && HALFPIN_FAULT === 'ENOSPC') {
    step += 1;
    return write.call(this, data, 0, data.length >> 1);
  }
  before('write', []);
  return write.call(this, data, ...rest);
};
prototype.writeFile = async function (data, ...rest) {
  if (step + 1 === at && HALFPIN_FAULT === 'kill') {
    const bytes = Buffer.from(data);
    await write.call(this, bytes, 0, bytes.length >> 1);
  }
  before('writeFile', []);
  return writeFile.call(this, data, ...rest);
};
syncBuiltinESMExports();

if (process.env.HALFPIN_FAULT_COUNT)
  process.on('exit', () => writeFileSync(process.env.HALFPIN_FAULT_COUNT, String(step)));
