import { readPlan } from '../../plan/readPlan.ts';
import type { KeptPlan } from '../browser/storage.ts';

const MINUTE = 60_000;

/** When a plan was left: to the second where another of its name was left in the same minute. */
export const leftAt = ({ name, at }: KeptPlan, plans: readonly KeptPlan[]): string => {
  const minuteOf = (date: Date): number => Math.floor(date.getTime() / MINUTE);
  const near = plans.filter((other) => other.name === name && minuteOf(other.at) === minuteOf(at));
  return at.toLocaleString(undefined, {
    dateStyle: 'medium',
    timeStyle: near.length > 1 ? 'medium' : 'short',
  });
};

/** What is in a plan, and what was last done to it: `9 drawers; last: pin, all nine drawers`. */
export const contentWords = ({ text, last }: KeptPlan): string => {
  const reading = readPlan(text);
  const { drawers, boxes, joints } = reading.ok ? reading.plan : { drawers: [], boxes: [], joints: [] };
  const [made, boxed] = [drawers, boxes].map((specs) => specs.reduce((sum, { count }) => sum + count, 0));
  const holds = [
    ...(made ? [counted(made, 'drawer')] : []),
    ...(boxed ? [`${boxed} ${boxed === 1 ? 'box' : 'boxes'}`] : []),
    ...(joints.length === 0 ? [] : [counted(joints.length, 'single corner')]),
  ];
  return `${holds.join(', ')}; ${last === undefined ? 'as opened' : `last: ${last}`}`;
};

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
