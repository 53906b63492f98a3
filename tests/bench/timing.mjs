/**
 * The milliseconds that processors have worked for this process. Unlike a clock on the wall it does not count the time in
 * which a busy machine lets it wait; what the engine does beside the program, such as collecting garbage, is in it.
 */
export const worked = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

export const median = (values) => {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  return (sorted[Math.floor(middle)] + sorted[Math.ceil(middle)]) / 2;
};

/** The median milliseconds of each of some works, done in turn so that a busy spell of the machine meets them all. */
export const timesInTurn = async (rounds, works) => {
  const times = Object.fromEntries(Object.keys(works).map((name) => [name, []]));
  for (let round = 0; round < rounds; round++)
    for (const [name, work] of Object.entries(works)) {
      const started = worked();
      await work();
      times[name].push(worked() - started);
    }
  return Object.fromEntries(Object.entries(times).map(([name, each]) => [name, median(each)]));
};
