// The built program, loaded once and kept, for tests that run many commands: see program.ts.
const [, , program] = process.argv;
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

process.on('message', async ({ args, cwd, env }) => {
  [out, err] = ['', ''];
  process.chdir(cwd);
  for (const name of Object.keys(process.env)) delete process.env[name];
  Object.assign(process.env, surroundings, env);
  const status = await run(args);
  process.send({ status, out, err });
});
