import { html, render } from 'lit-html';
import { formatPlace, type PlanComplaint } from '../../plan/read/planComplaint.ts';
import { readProject } from '../../project/readProject.ts';
import { sentence } from '../../units/complaint.ts';
import { find } from '../browser/dom.ts';
import type { AppContext } from '../model/viewState.ts';
import { retype } from '../text/retype.ts';

/** The most complaints that are shown: later ones often follow from the first. */
const MOST_LINES = 8;

const lineOf = ({ line, complaint }: PlanComplaint): string => {
  const place = complaint.at.length === 0 ? '' : `${formatPlace(complaint.at)}: `;
  return `Line ${line}: ${place}${sentence(complaint, 'mm')}`;
};

export interface TextPanel {
  /** Shows the plan's text, unless it is being typed. */
  readonly show: () => void;
  /** What is wrong with what is typed. */
  readonly wrong: () => readonly string[];
}

/** The plan's text, to be edited; while it is not valid, the drawings stay as they are. */
export const textPanel = (page: Pick<AppContext, 'now'>, write: (text: string) => void): TextPanel => {
  let faults: readonly string[] = [];
  const panel = find('text-panel', HTMLDetailsElement);
  const area = find('text', HTMLTextAreaElement);
  const wrong = find('text-wrong', HTMLUListElement);

  const say = (lines: readonly string[]): void => {
    faults = lines;
    render(
      lines.slice(0, MOST_LINES).map((line) => html`<li>${line}</li>`),
      wrong,
    );
    area.setAttribute('aria-invalid', String(lines.length > 0));
  };

  area.addEventListener('input', () => {
    const text = retype(page.now().text, area.value);
    const reading = readProject(text);
    if (reading.ok) {
      say([]);
      write(text);
    } else say(reading.complaints.map(lineOf));
  });

  const show = (): void => {
    const { text } = page.now();
    if (!panel.open || document.activeElement === area || retype(text, area.value) === text) return;
    area.value = text;
    say([]);
  };
  panel.addEventListener('toggle', show);
  area.addEventListener('blur', () => {
    if (faults.length === 0) show();
  });
  return { show, wrong: () => faults };
};
