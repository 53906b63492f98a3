import { formatPlanComplaint } from '../plan/planComplaint.ts';
import { element } from './dom.ts';
import { layOutPlan } from './layOutPlan.ts';
import { find, type Page } from './page.ts';

/** The plan as it is written, to be read and changed; while it cannot be made, the drawings stay as they were. */
export const textPanel = (page: Pick<Page, 'now'>, write: (text: string) => void) => {
  const panel = find('text-panel', HTMLDetailsElement);
  const area = find('text', HTMLTextAreaElement);
  const wrong = find('text-wrong', HTMLUListElement);

  const say = (lines: readonly string[]): void => {
    wrong.replaceChildren(...lines.slice(0, 20).map((line) => element('li', {}, line)));
    area.setAttribute('aria-invalid', String(lines.length > 0));
  };

  area.addEventListener('input', () => {
    const reading = layOutPlan(area.value);
    if (reading.ok) {
      say([]);
      write(area.value);
    } else say(reading.complaints.map((complaint) => formatPlanComplaint('line', complaint, 'mm')));
  });

  const show = (): void => {
    const { text } = page.now().work;
    if (!panel.open || document.activeElement === area || area.value === text) return;
    area.value = text;
    say([]);
  };
  panel.addEventListener('toggle', show);
  area.addEventListener('blur', () => {
    if (wrong.childElementCount === 0) show();
  });
  return show;
};
