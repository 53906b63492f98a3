import type { Correction, PrinterError } from '../paper/correction.ts';

const KEY = 'halfpin printers';

type Printers = Readonly<Record<string, PrinterError>>;

/** Every printer that has been measured in this browser. */
export const printers = (): Printers => {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
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

/** Keeps a printer's error under its name; false where the browser keeps nothing. */
export const keepPrinter = ({ printer, error }: Correction): boolean => {
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...printers(), [printer]: error }));
    return true;
  } catch {
    return false;
  }
};
