/** What the published types of pdfkit leave out. */
declare namespace PDFKit {
  interface EmbeddedFont {
    /** The name under which pages refer to it. */
    readonly id: string;
    readonly subset: import('fontkit').Subset;
    /** By number in the subset: the code points it stands for, and its advance in thousandths of an em. */
    readonly unicode: (readonly number[])[];
    readonly widths: number[];
    readonly scale: number;
    ref(): PDFKitReference;
  }

  interface PDFDocument {
    readonly _font: EmbeddedFont;
    font(font: import('fontkit').Font): this;
    on(event: 'data', listener: (chunk: Uint8Array) => void): this;
  }
}
