import type { BoardView } from '../../sheets/boards/boardView.ts';
import { nextTask } from '../browser/dom.ts';
import { type BoardPicture, boardPicture } from './seenBoard.ts';

interface Kept {
  readonly made: string;
  readonly of: BoardView['layout'];
  readonly picture: BoardPicture;
}

/** In ms: after so long no further picture is begun before the browser has had its turn. */
const SLICE = 25;

/**
 * Pictures of boards as they were drawn last, so that only what has changed is drawn anew; when there are many, in slices.
 * @param show is called when there is time for further pictures
 */
export const keptPictures = (show: () => void) => {
  const kept = new Map<string, Kept>();
  let until = 0;
  let isWaiting = false;
  return {
    /** A new slice begins. */
    begin: (): void => {
      until = performance.now() + SLICE;
    },
    /** A board's picture; the one before, or none, until there is time for it. @param key tells boards apart */
    of: (key: string, view: BoardView, scale: number, letters: number): BoardPicture | undefined => {
      const made = JSON.stringify([view.plank, view.kerf, scale, letters]);
      const before = kept.get(key);
      if (before?.made === made && before.of === view.layout) return before.picture;
      if (performance.now() > until) {
        if (!isWaiting)
          void nextTask().then(() => {
            isWaiting = false;
            show();
          });
        isWaiting = true;
        return before?.picture;
      }
      const picture = boardPicture(view, scale, letters);
      kept.set(key, { made, of: view.layout, picture });
      return picture;
    },
  };
};
