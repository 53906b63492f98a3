import type { Printers } from '../../files/printerStore.ts';
import type { PrinterError } from '../../paper/printerCorrection.ts';
import { table } from '../../render/table.ts';

const DAY = 24 * 60 * 60 * 1000;

export const printerRows = (printers: Printers, today: Date): string[] => {
  const entries = Object.entries(printers);
  if (entries.length === 0) return ['No printer has been measured yet. Begin with: halfpin proof'];
  return table(
    ['printer', 'across', 'up', 'skew', 'paper', 'measured', 'days ago'],
    entries.map(([name, { error, paper, measured }]) => [
      name,
      percent(error.x),
      percent(error.y),
      skewText(error),
      paper,
      measured,
      String(Math.max(0, Math.floor((today.getTime() - Date.parse(measured)) / DAY))),
    ]),
    [false, true, true, true, false, false, true],
  );
};

/** `−0.40 %` for a printer that prints short. */
export const percent = (factor: number): string => `${signed((factor - 1) * 100)} %`;

/** How far an upright line of 100 mm leans to the right. */
export const skewText = ({ skew }: PrinterError): string => `${signed(skew * 100)} mm in 100`;

const signed = (value: number): string => {
  const size = Math.abs(value).toFixed(2);
  return Number(size) === 0 ? size : `${value < 0 ? '−' : '+'}${size}`;
};
