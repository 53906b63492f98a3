/** Unpacks what the page carries packed, in an element that does nothing by itself. */
export const unpack = async (id: string): Promise<Blob> => {
  const packed = document.getElementById(id)?.textContent ?? '';
  const bytes = Uint8Array.from(atob(packed.trim()), (character) => character.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).blob();
};
