import type { GuideTitles } from '../../../src/sheets/guide/drawGuide.ts';

/** Titles of a guide for the front corners of one drawer. */
export const GUIDE_TITLES: GuideTitles = {
  names: ['Buttons, front'],
  item: 'Buttons, front',
  shorter: [],
  stem: 'buttons-front',
  units: 'mm',
  ends: ['front'],
  edge: ['reference edge', 'reference'],
  upper: 'upper edge',
};
