import type { Fonts } from '../../render/fonts.ts';
import type * as Exporter from './exportSheets.ts';

declare global {
  /** The part that makes sheets; defined by a script that is added when it is first needed. */
  var halfpinExporter: typeof Exporter | undefined;
}

/** Unpacks compressed data from an inert element of the page. */
export const unpack = async (id: string): Promise<Blob> => {
  const packed = document.getElementById(id)?.textContent ?? '';
  const bytes = Uint8Array.from(atob(packed.trim()), (character) => character.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).blob();
};

const bytesOf = async (id: string): Promise<Uint8Array> =>
  new Uint8Array(await (await unpack(id)).arrayBuffer());

const load = async (): Promise<{ exporter: typeof Exporter; fonts: Fonts }> => {
  const [script, regular, bold] = await Promise.all([
    unpack('exporter').then((blob) => blob.text()),
    bytesOf('font-regular'),
    bytesOf('font-bold'),
  ]);
  const element = document.createElement('script');
  element.textContent = script;
  document.head.append(element);
  const exporter = globalThis.halfpinExporter;
  if (exporter === undefined) throw new Error('The part that makes sheets did not start');
  return { exporter, fonts: { regular, bold } };
};

let loaded: ReturnType<typeof load> | undefined;

/** The part of the page that makes sheets, several times larger than all the rest: loaded when first needed. */
export const loadExporter = (): ReturnType<typeof load> => {
  loaded ??= load();
  return loaded;
};
