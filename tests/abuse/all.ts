import type { Abuse } from './abuse.ts';
import { choices } from './choices.ts';
import { climates, woods } from './climates.ts';
import { cutters, trialLogs, trials } from './cutters.ts';
import { joints } from './joints.ts';
import { marks } from './marks.ts';
import {
  boardsOfAnySize,
  drawerSets,
  guidedPlans,
  ordinaryPlans,
  plansOfAnything,
  plansOfBytes,
  plansWithSlips,
} from './plans.ts';
import { jointOptions, printerFiles, trialOptions } from './settings.ts';
import { drawings, guides, names, proofs, sheets } from './sheets.ts';
import { typedValues } from './texts.ts';

/** Every interface that takes something from outside. */
export const ALL: readonly Abuse[] = [
  typedValues,
  choices,
  jointOptions,
  joints,
  drawerSets,
  ordinaryPlans,
  guidedPlans,
  plansWithSlips,
  plansOfAnything,
  plansOfBytes,
  boardsOfAnySize,
  cutters,
  trials,
  trialOptions,
  trialLogs,
  climates,
  woods,
  printerFiles,
  marks,
  proofs,
  names,
  drawings,
  guides,
  sheets,
];
