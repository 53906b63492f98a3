// The memory of a whole process: node --import ./tests/bench/peak.mjs PROGRAM. It ends by saying its peak, in MB.
process.on('exit', () => {
  process.stderr.write(`\n${process.resourceUsage().maxRSS / 1024}`);
});
