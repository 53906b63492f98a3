/** Where a font's directory begins: of a collection that of the first. */
const directoryAt = (view: DataView): number => (view.getUint32(0) === TTCF ? view.getUint32(12) : 0);

/** `ttcf`, a collection. */
const TTCF = 0x74746366;
/** `head`, whose own sum is that with its third word, which tells the sum of the whole file, as 0. */
const HEAD = 0x68656164;

/**
 * Whether every table of a font lies in its file and has the sum that its directory gives (the OpenType specification, "Calculating
 * checksums"). What reads a font trusts its tables: of one that is damaged it may take any number for how many entries there
 * are, and more memory for them than there is.
 * @param bytes of a TrueType or OpenType file, or a collection
 */
export const hasWholeTables = (bytes: Uint8Array): boolean => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const directory = directoryAt(view);
    const count = view.getUint16(directory + 4);
    for (let i = 0; i < count; i++) {
      const entry = directory + 12 + 16 * i;
      const [tag, told, at, length] = [0, 4, 8, 12].map((more) => view.getUint32(entry + more)) as [
        number,
        number,
        number,
        number,
      ];
      const adjustment = tag === HEAD ? view.getUint32(at + 8) : 0;
      if (at + length > bytes.length || sumOf(view, at, length) !== (told + adjustment) >>> 0) return false;
    }
    return count > 0;
  } catch {
    // Beyond the file's end.
    return false;
  }
};

/** The sum of a table's words of four bytes, the last filled up with zeros. */
const sumOf = (view: DataView, at: number, length: number): number => {
  const words = Math.floor(length / 4);
  let sum = 0;
  for (let i = 0; i < words; i++) sum = (sum + view.getUint32(at + 4 * i)) >>> 0;
  for (let i = 4 * words; i < length; i++)
    sum = (sum + view.getUint8(at + i) * 2 ** (8 * (3 - (i % 4)))) >>> 0;
  return sum;
};
