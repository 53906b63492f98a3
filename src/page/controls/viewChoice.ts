import { find } from '../browser/dom.ts';

/** What the page shows: the corners of the set, or the boards that its parts come out of. */
type Place = 'corners' | 'boards';

/** The choice between corners and boards. @param show is called when the other has been chosen */
export const viewChoice = (show: () => void): void => {
  const main = find('main', HTMLElement);
  const buttons = {
    corners: find('at-corners', HTMLButtonElement),
    boards: find('at-boards', HTMLButtonElement),
  };
  const choose = (place: Place): void => {
    main.classList.toggle('at-boards', place === 'boards');
    find('stock', HTMLElement).hidden = place !== 'boards';
    for (const [each, button] of Object.entries(buttons))
      button.setAttribute('aria-pressed', String(each === place));
    show();
  };
  for (const place of ['corners', 'boards'] as const)
    buttons[place].addEventListener('click', () => choose(place));
};
