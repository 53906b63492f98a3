import { fileStem } from '../template/fileStem.ts';

/**
 * Hands a file to the user.
 * @param ending what follows the plan's name in the file's: `.yaml`, `-templates.pdf`
 */
export const saveFile = (name: string, ending: string, type: string, parts: BlobPart[]): void => {
  const url = URL.createObjectURL(new Blob(parts, { type }));
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = `${fileStem(name)}${ending}`;
  anchor.click();
  // The download reads it a moment later.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
};
