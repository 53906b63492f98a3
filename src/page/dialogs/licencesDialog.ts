import { find, setText } from '../browser/dom.ts';
import { unpack } from '../browser/unpack.ts';

/** The dialog with the licences of the page and of all that is bundled in it. */
export const licencesDialog = (): (() => void) => {
  const dialog = find('licences-dialog', HTMLDialogElement);
  const text = find('licences-text', HTMLElement);
  find('licences-close', HTMLButtonElement).addEventListener('click', () => dialog.close());
  return () => {
    dialog.showModal();
    void unpack('packed-licences')
      .then((blob) => blob.text())
      .then((licences) => setText(text, licences));
  };
};
