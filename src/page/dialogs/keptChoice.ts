import type { Drawer } from '../../drawer/drawer.ts';
import { DEFAULT_MARGIN } from '../../paper/printable.ts';
import { chooseOnly, drawnSingles, wholeDrawers } from '../../project/only.ts';
import { hasGuides, type Project } from '../../project/project.ts';
import type { SheetSet } from '../../project/sheetsOf.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { keepFont, keptFont } from '../browser/keptFont.ts';
import { storeChosen, storedPrinter, storedPrinters } from '../browser/storage.ts';
import type { SheetChoice } from '../sheets/sheetJob.ts';

/** What the user has chosen; paper and margin follow the plan's unit until they are typed. */
export interface Chosen
  extends Omit<SheetChoice, 'paper' | 'margin' | 'correction' | 'font'>,
    Partial<Pick<SheetChoice, 'paper' | 'margin'>> {
  /** The name of a measured printer; none where it is empty. */
  readonly printer: string;
  readonly font?: File | undefined;
}

/**
 * What is chosen of paper, templates and printer. The printer and the font file are those of the visit before, where the
 * browser keeps them.
 * @param changed is called where the font of the visit before has been found
 */
export const keptChoice = (unit: () => Notation, changed: () => void) => {
  let chosen: Chosen = { boards: 'both', flat: false, rods: false, printer: storedPrinter() };
  void keptFont().then((font) => {
    if (font === undefined || 'font' in chosen) return;
    chosen = { ...chosen, font };
    changed();
  });
  return {
    chosen: (): Chosen => chosen,
    choose: (part: Partial<Chosen>): void => {
      chosen = { ...chosen, ...part };
      if (part.printer !== undefined) storeChosen(part.printer);
      if ('font' in part) void keepFont(part.font);
    },
    /** Draws all again where a plan has not the drawers that were chosen. */
    follow: (project: Project): void => {
      const { only = '' } = chosen;
      if (only !== '' && !chooseOnly(project, only).ok) chosen = { ...chosen, only: '' };
    },
    /** The kinds of sheet that there are of what is chosen of a project. */
    kinds: (whole: Project): readonly SheetSet['kind'][] => {
      const { only = '' } = chosen;
      const read = only === '' ? undefined : chooseOnly(whole, only);
      const project = read?.ok ? read.value : whole;
      const { length } = wholeDrawers(project);
      const compared = wholeDrawers(project).filter(({ spec }) => spec.box === undefined).length;
      // One drawer of several has nothing to be compared with.
      const isAlone = compared === 1 && project.set.drawers.length > 1;
      return [
        'templates',
        ...(project.set.drawers.some(isDrilled) ? (['drilling'] as const) : []),
        ...(hasGuides(project) ? (['guides'] as const) : []),
        ...(length === 0 ? [] : (['cutting-list'] as const)),
        ...(length + drawnSingles(project).length === 0 ? [] : (['bench'] as const)),
        ...(compared === 0 || isAlone ? [] : (['comparison'] as const)),
        ...(compared === 0 ? [] : (['proportion'] as const)),
        'corners',
      ];
    },
    choice: (): SheetChoice => {
      const isMetric = unitOf(unit()) === 'mm';
      const { printer, ...rest } = chosen;
      const error = printer === '' ? undefined : storedPrinters()[printer];
      return {
        paper: isMetric ? 'A4' : 'Letter',
        // It is round in mm alone, and a proof must be measured with the margin it was drawn with.
        margin: `${DEFAULT_MARGIN}${isMetric ? '' : 'mm'}`,
        ...rest,
        ...(error && { correction: { printer, error } }),
      };
    },
  };
};

/** Whether anything is drilled in a drawer's front. */
const isDrilled = ({ spec: { fittings } }: Drawer): boolean =>
  [fittings?.pulls, fittings?.locks].some((each) => each !== undefined && each.number !== 0);
