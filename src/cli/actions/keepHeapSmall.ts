/**
 * Has what is no longer used collected when the heap has grown by a quarter. Node would let it grow to several times what is
 * in use, and drawing a large set makes much that is used for one page only.
 */
export const keepHeapSmall = async (): Promise<void> => {
  const { setFlagsFromString } = await import('node:v8');
  setFlagsFromString('--heap-growing-percent=25');
};
