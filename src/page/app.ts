import { accept, type Complaint, type Result } from '../complaint.ts';
import { LARGEST_PLAN } from '../plan/decode.ts';
import { formatPlanComplaint, type PlanComplaint } from '../plan/planComplaint.ts';
import { starterPlan } from '../plan/starterPlan.ts';
import { quote, type Unit } from '../units/length.ts';
import { speak } from '../units/phrase.ts';
import { adjust } from './adjust.ts';
import { cabinetView } from './cabinetView.ts';
import { controls } from './controls.ts';
import type { Corner } from './corner.ts';
import { cornerView } from './cornerView.ts';
import { setText } from './dom.ts';
import { editPlan } from './editPlan.ts';
import { count, makeEven, mirrored, oneFewer, oneMore, toggleLock, typeWidth } from './edits.ts';
import { familyView } from './familyView.ts';
import { handleText, lineHandles, quantityHandles } from './handles.ts';
import { layOutPlan } from './layOutPlan.ts';
import { linkOf, planInLink } from './link.ts';
import { messages } from './messages.ts';
import { saveFile } from './saveFile.ts';
import {
  attempt,
  bringBack,
  commit,
  drag,
  drop,
  grab,
  nudge,
  type Session,
  shownOf,
  startSession,
  takeBack,
} from './session.ts';
import { keep, kept } from './storage.ts';
import { type Snapshot, snapshot } from './work.ts';

declare const HALFPIN_EXAMPLE: string;

const find = <E extends HTMLElement>(id: string, kind: new () => E): E => {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`The page has no ${id}`);
  return found;
};

const begin = (): Snapshot => {
  const before = kept();
  const last = before && snapshot(before);
  if (last?.ok) return last.value;
  const example = snapshot({ text: HALFPIN_EXAMPLE, locks: {} });
  if (!example.ok) throw new Error('The example is no plan');
  return example.value;
};

let session: Session = startSession(begin());
const unit = (): Unit => session.now.laid.plan.units;

const said = messages(find('messages', HTMLElement));
const spoken = find('spoken', HTMLElement);
const title = find('title', HTMLInputElement);
const undoButton = find('undo', HTMLButtonElement);
const redoButton = find('redo', HTMLButtonElement);

const sentence = ({ says, hint }: Complaint): string =>
  hint === undefined ? speak(says, unit()) : `${speak(says, unit())}; try ${speak(hint, unit())}`;

const refuse = (complaints: readonly Complaint[]): void => {
  const [first, ...more] = complaints.map(sentence);
  if (first !== undefined) said.show({ kind: 'stop', title: first, lines: more });
};

/** Keeps the work a moment after it has changed, so that dragging is not held up. */
let keeping: ReturnType<typeof setTimeout> | undefined;
let keepsNothing = false;
const keepNow = (): void => {
  clearTimeout(keeping);
  keeping = undefined;
  if (keep(session.now.work) || keepsNothing) return;
  keepsNothing = true;
  said.show({
    kind: 'note',
    title:
      'This browser does not keep your plan: its storage is full or switched off. Save the plan as a file before you leave.',
  });
};
const keepSoon = (): void => {
  keeping ??= setTimeout(keepNow, 400);
};

const go = (next: Session): void => {
  const changed = next.now !== session.now;
  session = next;
  if (changed) keepSoon();
  show();
};

const tryIt = (edit: (now: Snapshot, corner: Corner) => Result<Snapshot>): void => {
  const result = attempt(session, edit);
  if (result.ok) {
    said.clear();
    go(result.value);
  } else refuse(result.complaints);
};

const views = [
  cabinetView(find('cabinet', HTMLElement), { select }),
  cornerView(find('corner', HTMLElement), {
    grab: (handle) => go(grab(session, handle)),
    drag: (by) => go(drag(session, by)),
    drop: (isKept) => go(drop(session, isKept)),
    nudge: (handle, steps) => {
      const { session: next, stop } = nudge(session, handle, steps);
      const [first] = stop;
      go(next);
      const moved = [...lineHandles(shownOf(next).corner), ...quantityHandles(shownOf(next).corner)].find(
        ({ id }) => id === handle.id,
      );
      if (first !== undefined) refuse(stop);
      else {
        said.clear();
        if (moved !== undefined) setText(spoken, handleText(moved, unit()));
      }
    },
  }),
  familyView(find('family', HTMLElement), { select }),
  controls(find('controls', HTMLElement), {
    select,
    oneMore: () => tryIt(oneMore),
    oneFewer: (i) => tryIt((now, corner) => oneFewer(now, corner, i)),
    even: () => tryIt(makeEven),
    choose: () => tryIt((now, corner) => count(now, corner, undefined)),
    mirror: () => tryIt(mirrored),
    lock: (i) => tryIt((now, corner) => accept(toggleLock(now, corner, i))),
    width: (i, value) => tryIt((now, corner) => typeWidth(now, corner, i, value)),
    measure: (quantity, value) => tryIt((now, corner) => adjust(now, corner, quantity, value, session.scope)),
    scope: (scope) => go({ ...session, scope }),
    complain: refuse,
  }),
];

function select(selected: Session['selected']): void {
  go({ ...session, selected });
}

function show(): void {
  const shown = shownOf(session);
  const { corner, now } = shown;
  if (document.activeElement !== title && title.value !== now.laid.plan.name)
    title.value = now.laid.plan.name;
  const ends = corner.ref.of === 'joint' ? 'a corner of its own' : `${corner.ref.end} corners`;
  setText(find('corner-name', HTMLElement), corner.name);
  setText(find('corner-ends', HTMLElement), ends);
  undoButton.disabled = session.history.past.length === 0;
  redoButton.disabled = session.history.future.length === 0;
  const advice = find('advice', HTMLElement);
  const mine = now.laid.set.advice.filter(
    ({ at }) => corner.ref.of === 'drawer' && at[0] === 'drawers' && at[1] === corner.ref.index,
  );
  const lines = (corner.ref.of === 'joint' ? corner.joint.advice : mine).map(sentence);
  if (advice.dataset.lines !== lines.join('\n')) {
    advice.dataset.lines = lines.join('\n');
    advice.replaceChildren(
      ...lines.map((line) => {
        const item = document.createElement('li');
        item.textContent = line;
        return item;
      }),
    );
  }
  for (const view of views) view(shown);
}

/** Takes a plan in place of the one in hand, which undo brings back. */
const take = (given: Uint8Array | string, name: string): void => {
  const reading = layOutPlan(given);
  if (!reading.ok) {
    said.show({
      kind: 'stop',
      title: `${quote(name)} was not opened; the plan in hand is as it was.`,
      lines: reading.complaints.map((complaint: PlanComplaint) => formatPlanComplaint(name, complaint, 'mm')),
    });
    return;
  }
  const text = typeof given === 'string' ? given : new TextDecoder().decode(given);
  said.clear();
  const next = commit(session, { work: { text, locks: {} }, laid: reading.value });
  go({ ...next, selected: startSession(next.now).selected });
};

const open = async (file: File): Promise<void> => {
  try {
    // One byte more than is allowed is enough to be refused.
    take(new Uint8Array(await file.slice(0, LARGEST_PLAN + 1).arrayBuffer()), file.name);
  } catch {
    said.show({
      kind: 'stop',
      title: `${quote(file.name)} could not be read; the plan in hand is as it was.`,
    });
  }
};

const chooser = find('file', HTMLInputElement);
chooser.addEventListener('change', () => {
  const [file] = chooser.files ?? [];
  chooser.value = '';
  if (file !== undefined) void open(file);
});

const actions: Readonly<Record<string, () => void>> = {
  undo: () => go(takeBack(session)),
  redo: () => go(bringBack(session)),
  open: () => chooser.click(),
  save: () => saveFile(`${session.now.laid.plan.name}`, 'yaml', 'application/yaml', [session.now.work.text]),
  fresh: () => take(starterPlan(unit()), 'a new plan'),
  link: () => void copyLink(),
};
for (const [id, act] of Object.entries(actions)) find(id, HTMLButtonElement).addEventListener('click', act);

const copyLink = async (): Promise<void> => {
  const hash = await linkOf(session.now.work.text);
  history.replaceState(null, '', `#${hash}`);
  try {
    await navigator.clipboard.writeText(location.href);
    said.show({ kind: 'note', title: 'A link that holds the whole plan has been copied.' });
  } catch {
    said.show({ kind: 'note', title: 'The link in the address bar now holds the whole plan.' });
  }
};

const openLink = async (): Promise<void> => {
  const bytes = await planInLink(location.hash);
  if (bytes === null)
    said.show({ kind: 'stop', title: 'The plan in this link is damaged; the plan in hand is as it was.' });
  else if (bytes !== undefined && new TextDecoder().decode(bytes) !== session.now.work.text)
    take(bytes, 'link');
};
addEventListener('hashchange', () => void openLink());

title.addEventListener('change', () => {
  const name = title.value;
  tryIt(({ work }) => snapshot({ ...work, text: editPlan(work.text, [{ at: ['name'], value: name }]) }));
  title.value = session.now.laid.plan.name;
});

addEventListener('keydown', (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  const typing = event.target instanceof HTMLTextAreaElement;
  if (key === 'z' && !typing) actions[event.shiftKey ? 'redo' : 'undo']?.();
  else if (key === 'y' && !typing) actions.redo?.();
  else if (key === 's') actions.save?.();
  else if (key === 'o') actions.open?.();
  else return;
  event.preventDefault();
});

addEventListener('dragover', (event) => {
  event.preventDefault();
  document.body.classList.add('dropping');
});
addEventListener('dragleave', (event) => {
  if (event.relatedTarget === null) document.body.classList.remove('dropping');
});
addEventListener('drop', (event) => {
  event.preventDefault();
  document.body.classList.remove('dropping');
  const [file] = event.dataTransfer?.files ?? [];
  if (file !== undefined) void open(file);
});
addEventListener('pagehide', () => {
  if (keeping !== undefined) keepNow();
});
addEventListener('resize', show);

show();
void openLink();
