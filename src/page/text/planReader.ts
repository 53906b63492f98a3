import { type MakeSet, readerWith } from '../../project/readerWith.ts';
import { accept } from '../../units/complaint.ts';

/** Until what boards make that came out other than planned is loaded, all are taken as planned: few plans have any. */
let make: MakeSet = accept;

/** Reads plans, and their values. */
export const { readProject, projectOf } = readerWith((planned) => make(planned));

/** Plans that are read from now on have their boards as they came out. */
export const readAsBuilt = async (): Promise<void> => {
  make = (await import('../../drawer/made/madeSet.ts')).madeSet;
};
