// The built program, loaded once and kept, for tests that run many commands: see program.ts.
import { workerData } from 'node:worker_threads';

const { program, port, done } = workerData;
let [out, err] = ['', ''];
process.stdout.write = (text) => {
  out += text;
  return true;
};
process.stderr.write = (text) => {
  err += text;
  return true;
};
const surroundings = { ...process.env };
// It begins by running what it is called with.
process.argv = [process.execPath, program, '--version'];
const { run } = await import(program);

port.on('message', async ({ args, env }) => {
  [out, err] = ['', ''];
  for (const name of Object.keys(process.env)) delete process.env[name];
  Object.assign(process.env, surroundings, env);
  const status = await run(args);
  port.postMessage({ status, out, err });
  Atomics.store(done, 0, 1);
  Atomics.notify(done, 0);
});
