// What the bench measures of breaking parts out of boards. One measurement in a process of its own, bundled by boards.mjs.
import { readFileSync } from 'node:fs';
import { brokenOut } from '../../src/drawer/blanks/brokenOut.ts';
import { readProject } from '../../src/project/readProject.ts';
import type { Plank } from '../../src/stock/plank.ts';
import { breakOut } from '../../src/stock/search/breakOut.ts';
import type { Wanted } from '../../src/stock/wanted.ts';
import { fewestBoards } from '../stock/exactBoards.ts';
import { plainFloor } from '../stock/plainFloor.ts';
import { type Grade, gradedPlank, numbers, SAW, want } from '../stock/randomBoards.ts';
import { faultsOf } from '../stock/sawOut.ts';
import { smallSet } from '../stock/smallSet.ts';

/** Milliseconds of the processor for this process so far. */
const worked = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

const areaOf = (planks: readonly Plank[]): number =>
  planks.reduce((sum, { outline: [, , [length, width] = [0, 0]] }) => sum + length * width, 0);

/** The example chest out of its nine boards, each time anew, once the process is warm. */
const chest = () => {
  const text = readFileSync('examples/haberdashery-chest-boards.yaml', 'utf8');
  const once = () => {
    const project = readProject(text);
    const work = project.ok ? project.value.work : undefined;
    if (!project.ok || work === undefined) throw new Error('the example lists no boards');
    const started = worked();
    let first = 0;
    const { breakout } = brokenOut(work, project.value.sawing, {
      onProgress: () => {
        first ||= worked() - started;
      },
    });
    const { boards, bound = 0, missing } = breakout;
    const parts = boards.reduce((sum, { blanks }) => sum + blanks.length, 0);
    const counts = { parts, boards: boards.length, bound, missing: missing.length };
    return { first, all: worked() - started, ...counts };
  };
  const times = [once(), once(), once(), once()].slice(1);
  const [middle] = times.sort((a, b) => a.all - b.all).slice(1);
  return { ...middle, first: Math.min(...times.map(({ first }) => first)) };
};

const HEIGHTS = [75, 109, 145, 189];
const WIDTHS = [313, 450, 607];

/** So many drawers from as many boards, of which two in five are for the fronts. */
const drawers = (count: number) => {
  const random = numbers(count * 7);
  const wanted = Array.from({ length: count }, (_, i) => {
    const [width = 0, height = 0] = [WIDTHS[i % 3], HEIGHTS[i % 4]];
    const side = want(440, height + 6, { stock: 'side', beside: `${i}` });
    return [want(width, height + 6), side, side, want(width, height - 14, { stock: 'back' })];
  }).flat();
  const planks = Array.from({ length: count }, (_, i) =>
    gradedPlank(random, 'common1', { stocks: i % 5 < 2 ? ['front'] : ['side', 'back'] }),
  );
  const started = worked();
  const answer = breakOut(planks, wanted, [], SAW);
  const all = worked() - started;
  const megabytes = process.resourceUsage().maxRSS / 1024;
  const plain = [true, false].reduce((sum, isFront) => {
    const own = planks.filter(({ stocks }) => stocks.includes('front') === isFront);
    return (
      sum +
      plainFloor(
        own,
        wanted.filter(({ stock }) => (stock === 'front') === isFront),
        SAW,
      ).missing
    );
  }, 0);
  return {
    parts: wanted.length,
    all,
    megabytes,
    boards: answer.boards.length,
    bound: answer.bound ?? 0,
    missing: answer.missing.length,
    plain,
    faults: faultsOf(planks, wanted, SAW, answer).length,
  };
};

const GRADES: readonly Grade[] = ['fas', 'selects', 'common1', 'common2'];

/** Three to eight drawers, all parts from the same boards of one grade. */
const drawerSet = (seed: number): { readonly planks: Plank[]; readonly wanted: Wanted[] } => {
  const random = numbers(seed * 15485863);
  const planks = Array.from({ length: 14 }, () => gradedPlank(random, GRADES[seed % 4] ?? 'fas'));
  const depth = 380 + Math.round(random() * 100);
  const wanted = Array.from({ length: 3 + Math.floor(random() * 6) }, () => {
    const width = random() < 0.5 ? 310 : 605;
    const height = [82, 115, 152][Math.floor(random() * 3)] ?? 0;
    return [want(width, height), want(depth, height), want(depth, height), want(width, height - 20)];
  }).flat();
  return { planks, wanted };
};

/** Sets of drawers, against strips over whole boards. */
const floor = (from: number, to: number) => {
  const sum = { sets: 0, worse: 0, fewer: 0, points: 0, proved: 0, above: 0, faults: 0, all: 0 };
  for (let seed = from; seed <= to; seed++) {
    const { planks, wanted } = drawerSet(seed);
    const plain = plainFloor(planks, wanted, SAW);
    const started = worked();
    const answer = breakOut(planks, wanted, [], SAW);
    sum.all += worked() - started;
    const boards = answer.boards.length;
    const parts = wanted.reduce((all, { length, width }) => all + length * width, 0);
    const yieldOf = (used: readonly number[]) => parts / areaOf(used.flatMap((i) => planks[i] ?? []));
    if (answer.missing.length > plain.missing || (plain.missing === 0 && boards > plain.used.length))
      sum.worse++;
    sum.faults += faultsOf(planks, wanted, SAW, answer).length;
    if (plain.missing > 0) continue;
    sum.sets++;
    sum.fewer += 1 - boards / plain.used.length;
    sum.points += yieldOf(answer.boards.map(({ plank }) => plank)) - yieldOf(plain.used);
    sum.above += boards - (answer.bound ?? 0);
    if (answer.bound === boards) sum.proved++;
  }
  return sum;
};

/** So many small sets that the boards suffice for, against an exact recursion. */
const small = (count: number) => {
  const sum = { sets: 0, same: 0, above: 0, missed: 0, proved: 0, wrong: 0, all: 0 };
  for (let seed = 1; sum.sets < count; seed++) {
    const { planks, sizes, wanted } = smallSet(seed);
    const started = worked();
    const { boards, bound = 0, missing } = breakOut(planks, wanted, [], SAW);
    sum.all += worked() - started;
    const fewest = fewestBoards(planks, sizes, SAW);
    if (fewest === undefined) {
      if (missing.length === 0) sum.wrong++;
      continue;
    }
    sum.sets++;
    if (missing.length > 0) sum.missed++;
    else if (boards.length === fewest) sum.same++;
    else if (boards.length > fewest + 1) sum.above++;
    if (bound === boards.length) sum.proved++;
    if (bound > fewest || (missing.length === 0 && boards.length < fewest)) sum.wrong++;
  }
  return sum;
};

const measurements = { chest, drawers, floor, small };

const [name = '', ...rest] = process.argv.slice(2);
const [a = 0, b = 0] = rest.map(Number);
console.log(JSON.stringify(measurements[name as keyof typeof measurements](a, b)));
