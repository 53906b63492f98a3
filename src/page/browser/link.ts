const MARK = 'plan=';
/** Longer links are ignored: no plan is as long. */
const LONGEST = 4e6;
/** The most that a link may unfold into, in bytes. */
const MOST_BYTES = 20e6;

const through = async (bytes: Uint8Array<ArrayBuffer>, way: CompressionStream | DecompressionStream) => {
  const reader = new Blob([bytes]).stream().pipeThrough(way).getReader();
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return new Blob(chunks).arrayBuffer();
    size += value.length;
    if (size > MOST_BYTES) throw new RangeError('too long');
    chunks.push(value);
  }
};

/** A plan's text as the part of a link after `#`. */
export const linkOf = async (text: string): Promise<string> => {
  const packed = new Uint8Array(
    await through(new TextEncoder().encode(text), new CompressionStream('deflate-raw')),
  );
  let binary = '';
  for (const byte of packed) binary += String.fromCharCode(byte);
  return MARK + btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/u, '');
};

/** The plan in a link's part after `#`: undefined where there is none, null where it is damaged. */
export const planInLink = async (hash: string): Promise<Uint8Array<ArrayBuffer> | null | undefined> => {
  const packed = hash.replace(/^#/u, '');
  if (!packed.startsWith(MARK)) return undefined;
  if (packed.length > LONGEST) return null;
  try {
    const binary = atob(packed.slice(MARK.length).replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
    return new Uint8Array(await through(bytes, new DecompressionStream('deflate-raw')));
  } catch {
    return null;
  }
};
