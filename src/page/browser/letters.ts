/** The letters of a drawing grow with those that the user has asked for while it has so much room for each size, in px. */
const ROOM = 340;

/**
 * How large the letters of a drawing are, to those of a user who has asked for none.
 * @param room width of the drawing in px
 * @param wanted the same for all other letters
 */
export const lettersIn = (room: number, wanted: number): number => Math.max(1, Math.min(wanted, room / ROOM));

/** The least mean width of a letter of a drawing, in px. */
const LETTER = 7.6;

/** As much of a name as there is room for, in px. */
export const fitting = (name: string, room: number): string => {
  const letters = [...name];
  const most = Math.floor(room / LETTER);
  return letters.length <= most ? name : most < 3 ? '' : `${letters.slice(0, most - 1).join('')}…`;
};

/** The least scale of a drawing: what is hidden has no room, and what is drawn has no negative size. */
const LEAST_SCALE = 1e-3;

/** Px to the mm of a drawing that is to be no wider and no higher, in px, with a frame all round it. */
export const scaleInto = (
  room: { readonly width: number; readonly height: number },
  frame: number,
  { width, height }: { readonly width: number; readonly height: number },
): number =>
  Math.max(LEAST_SCALE, Math.min((room.width - 2 * frame) / width, (room.height - 2 * frame) / height));
