import { Failure, WRONG_INPUT } from './failure.ts';
import { writeWholeNew } from './writeWhole.ts';

/** Writes a file where there is none yet; what is there is the user's, and stays. */
export const writeNew = async (path: string, text: string): Promise<void> => {
  try {
    await writeWholeNew(path, text);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST')
      throw new Failure([`${path}: there is a file of this name already; try another name`], WRONG_INPUT);
    throw error;
  }
};
