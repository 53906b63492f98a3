import { type Phrase, say } from './phrase.ts';
import type { Unit } from './unit.ts';

/** A fraction of a rule that is marked in inches, with no unit behind it. */
const BARE_FRACTION = /^(?:\d+\s*[-\s]\s*)?(?:\d+\s*[/⁄]\s*\d+|[¼½¾⅛⅜⅝⅞])$|^\d+[¼½¾⅛⅜⅝⅞]$/u;

/** What was most likely meant by a length that is out of range as mm: `7/16in` for a bare 7/16. */
export const inchesMeant = (typed: unknown, unit: Unit): Phrase | undefined =>
  unit === 'mm' && typeof typed === 'string' && BARE_FRACTION.test(typed.trim())
    ? say`${typed.trim()}in`
    : undefined;
