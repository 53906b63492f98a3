/** The part of bidi-js that the renderers use; the types it comes with are those of a module that Node does not load. */
declare module 'bidi-js' {
  interface Bidi {
    /** The level of each unit of a text; odd where it runs from right to left. */
    getEmbeddingLevels(text: string, direction: 'ltr' | 'rtl' | 'auto'): { readonly levels: Uint8Array };
    getMirroredCharacter(character: string): string | null;
  }

  export default function bidiFactory(): Bidi;
}
