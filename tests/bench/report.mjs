// Lines of what the bench finds, each beside its budget.
import { readFileSync } from 'node:fs';

const budgets = JSON.parse(readFileSync(new URL('budgets.json', import.meta.url), 'utf8'));

const over = [];
export const line = (...[name, ours, floor, value, budget, mark = '']) =>
  console.log(
    name.padEnd(42) + [ours, floor, value, budget].map((each) => each.padStart(11)).join('') + mark,
  );
export const heading = (title, floor, value) => {
  console.log('');
  line(title, 'halfpin', floor, value, 'budget');
};
const figure = (value) => (value >= 100 ? Math.round(value).toLocaleString('en') : value.toFixed(2));
export const ms = (value) =>
  value < 0.1 ? `${(value * 1000).toFixed(2)} µs` : `${value < 10 ? value.toFixed(2) : value.toFixed(0)} ms`;
export const mb = (value) => `${value.toFixed(0)} MB`;

/** A line of the table, and what it says of the budget of its name. */
export const report = (name, ours, floor, value) => {
  const { most, least, why } = budgets[name] ?? {};
  const budget = most !== undefined ? `≤ ${figure(most)}` : least !== undefined ? `≥ ${figure(least)}` : '';
  const broken = value > most || value < least;
  if (broken) over.push(`${name}: ${figure(value)}, budget ${budget}: ${why}`);
  line(name, ours, floor, figure(value), budget, broken ? '  over' : '');
};

/** Says what is over its budget; then the status is 1. */
export const conclude = () => {
  console.log('');
  if (over.length === 0) console.log('Nothing is over its budget.');
  else {
    console.log(`Over budget:\n${over.map((each) => `  ${each}`).join('\n')}`);
    process.exitCode = 1;
  }
};
