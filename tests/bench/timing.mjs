export const median = (values) => {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length / 2;
  return (sorted[Math.floor(middle)] + sorted[Math.ceil(middle) - 1 + (sorted.length % 2)]) / 2;
};

/** The median milliseconds of each of some works, done in turn so that a busy spell of the machine meets them all. */
export const timesInTurn = (rounds, works) => {
  const times = Object.fromEntries(Object.keys(works).map((name) => [name, []]));
  for (let round = 0; round < rounds; round++)
    for (const [name, work] of Object.entries(works)) {
      const started = performance.now();
      work();
      times[name].push(performance.now() - started);
    }
  return Object.fromEntries(Object.entries(times).map(([name, each]) => [name, median(each)]));
};
