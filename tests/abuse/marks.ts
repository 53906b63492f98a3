import fc from 'fast-check';
import { CREATOR, guideMark, isOfPlan, pieceMark, readMark } from '../../src/render/mark.ts';
import { abuse, must } from './abuse.ts';
import { anyText } from './texts.ts';

const markOf = (text: string): Promise<string | undefined> => {
  const bytes = Buffer.from(text);
  return readMark(bytes.length, async (from, length) => bytes.subarray(from, from + length));
};

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** A PDF as short as one can be, with the creator where ours have it. */
const pdf = (creator: string, more: string): string => {
  const objects = ['<<\n/Producer 2 0 R\n/Creator 3 0 R\n>>', '(PDFKit)', `(${creator})`];
  let text = '%PDF-1.7\n';
  const entries = objects.map((object, i) => {
    const entry = `${String(Buffer.byteLength(text)).padStart(10, '0')} 00000 n \n`;
    text += `${i + 1} 0 obj\n${object}\nendobj\n${more}`;
    return entry;
  });
  const table = Buffer.byteLength(text);
  return `${text}xref\n0 4\n0000000000 65535 f \n${entries.join('')}trailer\n<<\n/Size 4\n/Root 1 0 R\n/Info 1 0 R\n>>\nstartxref\n${table}\n%%EOF\n`;
};

const parts = fc.array(
  fc.oneof(
    fc.constantFrom(
      CREATOR,
      '<svg >',
      '<title>',
      '</title>',
      '<desc>',
      '</desc>',
      'Drawn by Halfpin.',
      '%PDF-1.7\n',
      '/Creator (Halfpin)',
      '/Info 1 0 R\n',
      'startxref\n',
      '%%EOF\n',
      '999\n',
      'xref\n0 4\n',
      '<meta name="generator" content="Halfpin">\n',
    ),
    anyText,
  ),
  { maxLength: 8 },
);

/** A whole file of ours, with what makes it a plan's. */
const own = fc.record({ plan: anyText, file: anyText, title: anyText });

export const marks = abuse(
  'files that may carry our mark',
  0.5,
  fc.oneof(
    fc.record({ own, before: parts }),
    fc.record({ text: parts.map((each) => each.join('')) }),
    fc.record({ text: fc.tuple(parts, anyText).map(([more, creator]) => pdf(`x${creator}`, more.join(''))) }),
  ),
  async (given) => {
    if ('text' in given) {
      const mark = await markOf(given.text);
      // Nothing but a mark at the very beginning is one, whatever follows.
      must(
        mark === undefined ||
          /^(?:<svg [^>]*><title>[^<]*<\/title><desc>Drawn |999\nHalfpin[:,] )/u.test(given.text),
        `taken for ours: ${given.text}`,
      );
      return mark === undefined ? 'refused' : 'valid';
    }
    const { plan, file, title } = given.own;
    const described = `<svg width="1mm"><title>${escaped(title)}</title><desc>${escaped(pieceMark(plan, file))}</desc>`;
    const commented = `999\n${guideMark(plan, file, title).replace(/\p{Cc}+/gu, ' ')}\n`;
    for (const text of [`${described}</svg>\n`, commented]) {
      const mark = await markOf(text);
      must(mark !== undefined, `not known for ours: ${text}`);
      must(!isOfPlan(mark ?? '', `${plan}x`, file), `of another plan: ${text}`);
      must(!isOfPlan(mark ?? '', plan, `x${file}`), `of another file: ${text}`);
      const before = given.before.join('');
      must(
        before === '' || (await markOf(`mine${before}${text}`)) === undefined,
        `not at its place: ${text}`,
      );
    }
    must((await markOf(pdf(CREATOR, ''))) === CREATOR, 'a PDF of ours is not known');
    return 'valid';
  },
);
