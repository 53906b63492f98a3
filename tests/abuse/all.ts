import type { Abuse } from './abuse.ts';
import { climates, woods } from './climates.ts';
import { cutters, trialLogs, trials } from './cutters.ts';
import { joints } from './joints.ts';
import { drawerSets, ordinaryPlans, plansOfAnything, plansOfBytes, plansWithSlips } from './plans.ts';
import { jointOptions, printerFiles } from './settings.ts';
import { drawings, names, proofs, sheets } from './sheets.ts';
import { typedValues } from './texts.ts';

/** Every interface that takes something from outside. */
export const ALL: readonly Abuse[] = [
  typedValues,
  jointOptions,
  joints,
  drawerSets,
  ordinaryPlans,
  plansWithSlips,
  plansOfAnything,
  plansOfBytes,
  cutters,
  trials,
  trialLogs,
  climates,
  woods,
  printerFiles,
  proofs,
  names,
  drawings,
  sheets,
];
