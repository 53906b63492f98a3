// A thread that hands commands to the program in a process beside it, so that a test can wait for each: see program.ts.
import { fork } from 'node:child_process';
import { workerData } from 'node:worker_threads';

const { program, port, done } = workerData;
const answer = (message) => {
  port.postMessage(message);
  Atomics.store(done, 0, 1);
  Atomics.notify(done, 0);
};
const child = fork(new URL('residentProgram.mjs', import.meta.url), [program], { execArgv: [] });
child.on('message', answer);
child.on('exit', (status) => answer({ status, out: '', err: 'the program ended its process' }));
port.on('message', (command) => child.send(command));
