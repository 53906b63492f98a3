import type { Correction, PrinterError } from '../../paper/printerCorrection.ts';

const KEY = 'halfpin';
const PENDING_KEY = 'halfpin pending';
const PRINTERS_KEY = 'halfpin printers';
const PRINTER_KEY = 'halfpin printer';
const PROBE_KEY = 'halfpin probe';

/** A plan's text, and what is typed in its place and not valid yet. */
export interface PlanText {
  readonly text: string;
  readonly draft?: string;
}

/** The plan stored on an earlier visit; undefined where there is none, or the browser stores nothing. */
export const storedPlan = (): PlanText | undefined => {
  try {
    return planIn(localStorage.getItem(KEY));
  } catch {
    return undefined;
  }
};

const planIn = (stored: string | null): PlanText | undefined => {
  const found: unknown = JSON.parse(stored ?? 'null');
  if (typeof found !== 'object' || found === null || !('text' in found)) return undefined;
  if (typeof found.text !== 'string') return undefined;
  const draft = 'draft' in found ? found.draft : undefined;
  return { text: found.text, ...(typeof draft === 'string' && { draft }) };
};

/** A plan that another tab has stored; undefined where it stored something else. */
export const storedIn = ({ key, newValue }: StorageEvent): PlanText | undefined =>
  key === KEY ? planIn(newValue) : undefined;

/** Whether this browser stores anything. */
export const canStore = (): boolean => {
  try {
    localStorage.setItem(PROBE_KEY, '');
    localStorage.removeItem(PROBE_KEY);
    return true;
  } catch {
    return false;
  }
};

/** Stores the plan for the next visit; false where the browser's storage is full or switched off. */
export const storePlan = (plan: PlanText): boolean => {
  try {
    localStorage.setItem(KEY, JSON.stringify(plan));
    return true;
  } catch {
    return false;
  }
};

/** A plan that another took the place of. */
export interface KeptPlan extends PlanText {
  readonly name: string;
  readonly at: Date;
  /** The last edit of it, in words; none where it was not edited on that visit. */
  readonly last?: string;
}

/** The plans that are to be kept and may not be yet, the latest last. */
export const storedPending = (): KeptPlan[] => {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(PENDING_KEY) ?? '[]');
    return Array.isArray(found) ? found.flatMap(keptIn) : [];
  } catch {
    return [];
  }
};

const keptIn = (value: unknown): KeptPlan[] => {
  if (typeof value !== 'object' || value === null) return [];
  const { name, text, draft, at, last } = value as Record<keyof KeptPlan, unknown>;
  if (typeof name !== 'string' || typeof text !== 'string' || typeof at !== 'string') return [];
  return [
    {
      name,
      text,
      ...(typeof draft === 'string' && { draft }),
      at: new Date(at),
      ...(typeof last === 'string' && { last }),
    },
  ];
};

/** Stores the plans that are to be kept; false where the browser's storage is full or switched off. */
export const storePending = (plans: readonly KeptPlan[]): boolean => {
  try {
    if (plans.length === 0) localStorage.removeItem(PENDING_KEY);
    else localStorage.setItem(PENDING_KEY, JSON.stringify(plans));
    return true;
  } catch {
    return false;
  }
};

type Printers = Readonly<Record<string, PrinterError>>;

/** Every printer that has been measured in this browser. */
export const storedPrinters = (): Printers => {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(PRINTERS_KEY) ?? '{}');
    if (typeof found !== 'object' || found === null) return {};
    return Object.fromEntries(
      Object.entries(found).filter((entry): entry is [string, PrinterError] => isError(entry[1])),
    );
  } catch {
    return {};
  }
};

const isError = (value: unknown): value is PrinterError => {
  if (typeof value !== 'object' || value === null) return false;
  const { x, y, skew } = value as Record<keyof PrinterError, unknown>;
  return [x, y, skew].every((part) => Number.isFinite(part)) && Number(x) > 0.9 && Number(y) > 0.9;
};

/** Stores a printer's error under its name; false where the browser's storage is full or switched off. */
export const storePrinter = ({ printer, error }: Correction): boolean => {
  try {
    localStorage.setItem(PRINTERS_KEY, JSON.stringify({ ...storedPrinters(), [printer]: error }));
    return true;
  } catch {
    return false;
  }
};

/** The name of the printer that sheets are corrected for; empty where none is chosen. */
export const storedPrinter = (): string => {
  try {
    const name = localStorage.getItem(PRINTER_KEY) ?? '';
    return Object.hasOwn(storedPrinters(), name) ? name : '';
  } catch {
    return '';
  }
};

/** Stores which printer is chosen, for the next visit; where the browser stores nothing, it does nothing. */
export const storeChosen = (printer: string): void => {
  try {
    localStorage.setItem(PRINTER_KEY, printer);
  } catch {
    // Until the page is left, it is used all the same.
  }
};
