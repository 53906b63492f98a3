import fc from 'fast-check';
import { parsePaper } from '../../src/paper/paperSizes.ts';
import { formatLength } from '../../src/units/formatLength.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { parseSlope } from '../../src/units/slope.ts';
import { abuse, must, mustBeClear, mustBeFinite, refused } from './abuse.ts';

/** Names that do harm where a program takes them for anything but text. */
export const HOSTILE_NAMES: readonly string[] = [
  '../../etc/passwd',
  '..',
  '/',
  'C:\\Windows\\x',
  '\\\\server\\share',
  'CON',
  'con.txt',
  'NUL',
  'COM1',
  'lpt9.pdf',
  'AUX',
  'name.',
  '. ',
  '-rf',
  '--force',
  '~',
  '$HOME',
  '%TEMP%',
  '`id`',
  '$(id)',
  `$${'{7*7}'}`,
  '{{7*7}}',
  '<%= 7*7 %>',
  '#{7*7}',
  '<script>alert(1)</script>',
  '"><svg onload=alert(1)>',
  ']]>',
  '&amp;&#0;',
  '<!--',
  "'; DROP TABLE drawers; --",
  '=1+1',
  'new\nline',
  'tab\there',
  'bell\u0007',
  'nul\u0000',
  '\u001b[31mred\u001b[0m',
  '\u009b2J',
  '\u202Egnp.exe',
  'חולצות',
  'أزرار وخيوط',
  'a\u200Fb\u2066c',
  'e\u0301'.repeat(60),
  '\u0301'.repeat(100),
  '\uD800',
  '\uFFFE',
  '👩‍👩‍👧‍👦'.repeat(20),
  'İI ıi ß ſ ﬁ Ǆ',
  '__proto__',
  'constructor',
  'toString',
  'Z'.repeat(10_000),
  '漢'.repeat(10_000),
  '(\\)) Tj ET Q',
  '%PDF-1.7',
  '*a',
  '&a',
  '!!js/function',
  ' ',
  '',
];

export const hostileName = fc.constantFrom(...HOSTILE_NAMES);

/** Any text: of any letters, hostile, or nearly a number. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  hostileName,
  fc
    .tuple(
      fc.constantFrom('', '', '-', '1:', '1 in ', '5 ', '5-'),
      fc.constantFrom(
        '0',
        '7',
        '18',
        '297',
        '3/4',
        '11/16',
        '0.5',
        ',5',
        '1,234',
        '5½',
        '1e3',
        '9'.repeat(308),
      ),
      fc.constantFrom('', '', 'mm', ' cm', 'in', '"', 'deg', '°', '%', 'x210', 'x11in', 'xroll', 'xx'),
    )
    .map((parts) => parts.join('')),
);

/** What stands for a number on the command line and in a plan. */
export const typedValues = abuse('lengths, slopes and papers of any text', 1, anyText, (text) => {
  const readings = [parseLength(text, 'mm'), parseLength(text, 'in'), parseSlope(text), parsePaper(text)];
  for (const reading of readings)
    if (reading.ok) mustBeFinite(reading.value);
    else refused(reading.complaints);
  const [length, , slope] = readings;
  if (length?.ok && typeof length.value === 'number') mustBeClear(formatLength(length.value, 'in'));
  if (slope?.ok && typeof slope.value === 'object' && 'run' in slope.value)
    must(slope.value.run > 2.4 && slope.value.run < 20.1, 'a slope outside its range');
  return readings.some(({ ok }) => ok) ? 'valid' : 'refused';
});
