import { shownText } from '../drawing/shownText.ts';

/** The program that made a file, as the file names it: a PDF as its creator, a page as its generator. */
export const CREATOR = 'Halfpin';

/** The description of an SVG file that shows something. */
export const PICTURE_MARK = `Drawn by ${CREATOR}.`;
/** The description of an SVG file that is cut or glued on begins so. */
const PIECE_MARK = `Drawn at full size by ${CREATOR}: print at 100 %.`;

/** Which file of which plan, in signs that every writer of XML leaves as they are. */
const fileOf = (plan: string, file: string): string => `plan “${shownText(plan)}”, ${file}`;

/** The description of a piece as SVG, of a plan or of none. */
export const pieceMark = (plan: string | undefined, file: string): string =>
  plan === undefined ? PIECE_MARK : `${PIECE_MARK} Written for ${fileOf(plan, file)}`;

/** The comment that a plan's guide as DXF begins with. */
export const guideMark = (plan: string, file: string, title: string): string =>
  `${CREATOR}, ${fileOf(plan, file)}: ${title}`;

/** Reads so many bytes of a file from a place on; fewer where it ends. */
export type ReadPart = (from: number, length: number) => Promise<Uint8Array>;

/** The beginning in which SVG, DXF and HTML carry their mark; titles name many drawers at most. */
const HEAD = 1 << 16;

const SVG = /^<svg [^>]*><title>[^<]*<\/title><desc>(Drawn [^<]*)<\/desc>/u;
const DXF = new RegExp(`^999\\n(${CREATOR}[:,] [^\\n]*)\\n`, 'u');
const HTML = new RegExp(
  `^<!doctype html>\\n<html lang="en">\\n<head>\\n<meta charset="utf-8">\\n<meta name="generator" content="(${CREATOR})">\\n`,
  'u',
);

/** A PNG's signature and header, read as UTF-8, then the text that names its maker. */
const PNG = new RegExp(`^\uFFFDPNG\r\n\x1A\n[^]{8,30}tEXtSoftware\0(${CREATOR})`, 'u');
const SCRIPT = new RegExp(`^// (${CREATOR})\n`, 'u');
const MANIFEST = new RegExp(`^\\{"name":"(${CREATOR})",`, 'u');

/**
 * The mark that every file of ours carries where its format has a place for it: a PDF in its information dictionary, an
 * SVG as its description, a DXF as its first comment, the page as its generator; of a site also a PNG as its software, a
 * script as its first comment, and a manifest as its name. Nothing for a file without, whatever
 * else it holds.
 * @param size of the file, in bytes
 */
export const readMark = async (size: number, read: ReadPart): Promise<string | undefined> => {
  const head = new TextDecoder().decode(await read(0, HEAD));
  if (head.startsWith('%PDF-')) return pdfCreator(size, read);
  const described = SVG.exec(head)?.[1];
  if (described === undefined)
    return [DXF, HTML, PNG, SCRIPT, MANIFEST].map((mark) => mark.exec(head)?.[1]).find(Boolean);
  const text = described.replace(/&(lt|gt|quot|amp);/gu, (_, name: keyof typeof ENTITIES) => ENTITIES[name]);
  return text === PICTURE_MARK || text.startsWith(PIECE_MARK) ? text : undefined;
};

const ENTITIES = { lt: '<', gt: '>', quot: '"', amp: '&' } as const;

/** Whether a mark is that of a piece or a guide of this plan, in a file that still has its name. */
export const isOfPlan = (mark: string, plan: string, file: string): boolean =>
  mark === pieceMark(plan, file) || mark.startsWith(guideMark(plan, file, ''));

/** Bytes of a PDF that hold its trailer, or one of the small objects that lead to its creator. */
const SMALL = 1024;

/** The creator in a PDF's information dictionary, found through its trailer and table of objects as our writer writes them. */
const pdfCreator = async (size: number, read: ReadPart): Promise<string | undefined> => {
  const latin1 = new TextDecoder('latin1');
  const text = async (from: number): Promise<string> => latin1.decode(await read(from, SMALL));
  const [, info, table] =
    /\/Info (\d{1,9}) 0 R\n[\s\S]*\nstartxref\n(\d{1,15})\n%%EOF\n?$/u.exec(
      await text(Math.max(0, size - SMALL)),
    ) ?? [];
  if (info === undefined || table === undefined) return undefined;
  const [opening] = /^xref\n0 \d{1,9}\n/u.exec(await text(Number(table))) ?? [];
  if (opening === undefined) return undefined;
  /** What follows the number of an object; each has an entry of 20 bytes in the table. */
  const object = async (number: string): Promise<string> => {
    const entry = await text(Number(table) + opening.length + 20 * Number(number));
    const [, offset] = /^(\d{10}) \d{5} n/u.exec(entry) ?? [];
    const found = offset === undefined ? '' : await text(Number(offset));
    return found.startsWith(`${number} 0 obj\n`) ? found.slice(`${number} 0 obj\n`.length) : '';
  };
  const [, creator] = /^<<\n\/Producer \d+ 0 R\n\/Creator (\d{1,9}) 0 R\n/u.exec(await object(info)) ?? [];
  if (creator === undefined) return undefined;
  return (await object(creator)).startsWith(`(${CREATOR})\nendobj`) ? CREATOR : undefined;
};
