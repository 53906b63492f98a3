import { html, render } from 'lit-html';
import { hasEqualEnds } from '../drawer/drawerSizes.ts';
import { widthName } from '../joint/widthName.ts';
import { decode } from '../plan/read/decode.ts';
import type { Complaint, Result } from '../units/complaint.ts';
import type { Notation } from '../units/notation.ts';
import { quote } from '../units/quote.ts';
import { boardsWhenShown } from './boards/boardsWhenShown.ts';
import { find, setText } from './browser/dom.ts';
import { files } from './browser/files.ts';
import { inPauses } from './browser/inPauses.ts';
import { keepFocus } from './browser/keepFocus.ts';
import { keepPlan } from './browser/keptPlans.ts';
import { type PlanText, storedPlan } from './browser/storage.ts';
import { storing } from './browser/storing.ts';
import { controls } from './controls/controls.ts';
import { leaveField } from './controls/leaveField.ts';
import { moreMenu } from './controls/moreMenu.ts';
import { forgetRefused, onTakenBack, refusedWords, refuseTyped, takeTyped } from './controls/refusals.ts';
import { viewChoice } from './controls/viewChoice.ts';
import { cornerView } from './corner/cornerView.ts';
import { handActions } from './corner/handActions.ts';
import { keptDialog } from './dialogs/keptDialog.ts';
import { licencesDialog } from './dialogs/licencesDialog.ts';
import { messages } from './dialogs/messages.ts';
import { otherTab } from './dialogs/otherTab.ts';
import { onPrintKey } from './dialogs/printKey.ts';
import { textPanel } from './dialogs/textPanel.ts';
import { unpackedAfterStart } from './dialogs/unpackedAfterStart.ts';
import { addBox, addCorner, addDrawer, duplicate, move, remove, rename, setCount } from './model/drawers.ts';
import { boxesIn, type EditedCorner, listOf } from './model/editedCorner.ts';
import {
  makeEven,
  mirrorTails,
  oneFewer,
  oneMore,
  setTailCount,
  toggleLock,
  typeWidth,
} from './model/edits.ts';
import { readNumber } from './model/fields/fieldText.ts';
import { setKeys, unsetMeasure } from './model/fields/setKeys.ts';
import { type Handle, handlesOf } from './model/handles.ts';
import { followedWords, placeWords, whereWords } from './model/movedWords.ts';
import {
  attempt,
  attemptInRun,
  commit,
  drag,
  faultIn,
  grab,
  readAgain,
  redo,
  redoable,
  rest,
  type Session,
  selectCorner,
  selectedCorner,
  startSession,
  type,
  undo,
  undoable,
  viewStateOf,
} from './model/session.ts';
import { type Snapshot, snapshot } from './model/snapshot.ts';
import { typeMeasure } from './model/typeMeasure.ts';
import type { AppContext, Room, View } from './model/viewState.ts';
import { widthsOf } from './model/widths.ts';
import { cabinetView } from './overview/cabinetView.ts';
import { familyView } from './overview/familyView.ts';
import { editPlan } from './text/editPlan.ts';
import { adviceWords, complaintWords, faultWords, fileFaultWords } from './text/plainWords.ts';
import { readAsBuilt, readProject } from './text/planReader.ts';

/** Defined by the build: the plan that a first visitor sees. */
declare const HALFPIN_EXAMPLE: string;

/** The plan of the last visit, with what was being typed, or the example. */
const firstSession = (): Session => {
  const before = storedPlan();
  const last = before && snapshot(before.text);
  if (last?.ok) {
    const session = startSession(last.value);
    return before?.draft === undefined ? session : type(session, before.draft);
  }
  const example = snapshot(HALFPIN_EXAMPLE);
  if (!example.ok) throw new Error('The example is no plan');
  return startSession(example.value);
};

/** Starts the page: connects its parts to the editor's state. */
export const startApp = (): void => {
  let session: Session = firstSession();
  const unit = (): Notation => session.now.project.units;

  const said = messages(find('messages', HTMLElement));
  const spoken = find('spoken', HTMLElement);
  /** Tells screen readers, also what was told before. */
  const announce = (words: string): void => spoken.replaceChildren(words);
  const refocus = keepFocus();
  const inWords = (complaint: Complaint): string => complaintWords(complaint, session.now.project);
  const refuse = (complaints: readonly Complaint[]): void => {
    const [first, ...more] = complaints.map(inWords);
    refuseTyped(complaints.map(inWords));
    // What the message is about is scrolled out from under it, where it then is.
    show();
    if (first !== undefined) said.show({ kind: 'stop', title: first, lines: more });
  };

  const plan = (): PlanText => ({
    text: session.now.text,
    ...(session.draft && { draft: session.draft.text }),
  });
  const stored = storing(plan, () => keepOther(), said.show);

  let holdSheets: (isHeld: boolean) => void = () => {};
  const go = (next: Session): void => {
    if (next === session) return;
    if (next.now !== session.now || next.draft !== session.draft) {
      stored.soon();
      // It was of the plan before.
      said.clear();
      forgetRefused();
      // An address with another plan would open that one again.
      if (location.hash.startsWith('#plan=')) history.replaceState(null, '', '#');
    }
    if (next.selected !== session.selected) forgetRefused();
    const isHeld = next.dragging !== undefined;
    if (isHeld !== (session.dragging !== undefined)) holdSheets(isHeld);
    session = next;
    show();
  };
  onTakenBack(() => {
    // The message that it was refused goes with it.
    said.clear();
    show();
  });

  /** @param what the edit in words, for undo; its place is added */
  const tryIt = (
    what: string,
    edit: (now: Snapshot, corner: EditedCorner) => Result<Snapshot>,
    where = whereWords(selectedCorner(session)),
    run?: string,
  ): boolean => {
    const words = `${what}, ${where}`;
    const result =
      run === undefined ? attempt(session, edit, words) : attemptInRun(session, edit, words, run);
    if (result.ok) {
      said.clear();
      go(result.value);
    } else refuse(result.complaints);
    return result.ok;
  };

  const welcome = find('welcome', HTMLElement);
  welcome.hidden = session.now.text !== HALFPIN_EXAMPLE;
  const nameOf = (i: number): string => widthName(i, widthsOf(selectedCorner(session).joint).length);
  const page: AppContext = {
    now: () => session.now,
    draft: () => session.draft,
    unit,
    openPlan: (given, name) => {
      const reading = readProject(given);
      if (reading.ok) {
        const text =
          typeof given === 'string' ? given : new TextDecoder('utf-8', { ignoreBOM: true }).decode(given);
        welcome.hidden = true;
        if (text !== session.now.text || session.draft !== undefined) {
          const last = undoable(session);
          page.keep({
            name: session.now.project.name,
            ...plan(),
            ...(last !== undefined && { last }),
          });
        }
        const next = commit(session, { text, project: reading.value }, `opening of ${quote(name)}`);
        go({ ...next, selected: startSession(next.now).selected });
      } else
        page.refusePlan(
          name,
          reading.complaints.map((fault) => fileFaultWords(fault, reading.units, decode(given).text)),
        );
      return reading.ok;
    },
    refusePlan: (name, lines) =>
      said.show({
        kind: 'stop',
        title: `${quote(name)} was not opened; your open plan is unchanged.`,
        lines,
      }),
    type: (text) => go(type(session, text)),
    say: said.show,
    refuse,
    settle: () => {
      leaveField();
      const { faults = [], units = unit() } = session.draft ?? {};
      return [...refusedWords(), ...faults.map((fault) => faultWords(fault, units))];
    },
    saved: stored.saved,
    keep: (left) => {
      // The example is in the page.
      if (left.text !== HALFPIN_EXAMPLE || left.draft !== undefined) void keepPlan(left).then(stored.kept);
    },
  };
  const keepOther = otherTab(page, stored.now);

  const hosts = {
    set: find('set', HTMLElement),
    tools: find('tools', HTMLElement),
    corner: find('corner', HTMLElement),
  };
  const select = (selected: Session['selected']): void => {
    go(selectCorner(session, selected));
    // In one column, the selected corner may be out of sight.
    const { top, bottom } = hosts.corner.getBoundingClientRect();
    if (top > innerHeight * 0.6 || bottom < innerHeight * 0.2) hosts.tools.scrollIntoView();
  };
  const drawCorner = cornerView(
    hosts.corner,
    handActions({ session: () => session, go, announce, clear: said.clear }),
  );
  const views = [
    cabinetView(find('cabinet', HTMLElement), {
      select,
      edit: (what, edit, run) => tryIt(what, edit, 'the plan', run),
      announce,
    }),
    familyView(find('family', HTMLElement), { select }),
    controls(find('which', HTMLElement), hosts.tools, find('controls', HTMLElement), {
      select,
      oneMore: () => tryIt('one tail more', oneMore),
      oneFewer: (i) => tryIt('one tail fewer', (now, corner) => oneFewer(now, corner, i)),
      even: () => tryIt('even tails', makeEven),
      choose: () => tryIt('tails as the set has them', (now, corner) => setTailCount(now, corner, undefined)),
      mirror: () => tryIt('mirrored tails', mirrorTails),
      lock: (i) => tryIt(`lock of ${nameOf(i)}`, (now, corner) => toggleLock(now, corner, i)),
      width: (i, value) => tryIt(nameOf(i), (now, corner) => typeWidth(now, corner, i, value)),
      measure: (quantity, value) => {
        const before = selectedCorner(session);
        const isSet = tryIt(
          quantity.name,
          (now, corner) => typeMeasure(now, corner, quantity, value, session.scope),
          placeWords(quantity, viewStateOf(session)),
        );
        const followed = followedWords(before, selectedCorner(session), unit());
        if (isSet && followed !== '')
          said.show({ kind: 'note', title: `With the ${quantity.name}: ${followed}` });
      },
      unset: (quantity) =>
        tryIt(
          quantity.name,
          (now, corner) => unsetMeasure(now, corner, quantity, session.scope),
          placeWords(quantity, viewStateOf(session)),
        ),
      set: (what, settings) =>
        tryIt(
          what,
          (now, corner) => setKeys(now, corner, settings, session.scope),
          settings[0]?.[0].of === 'plan' ? 'the plan' : whereWords(selectedCorner(session)),
        ),
      scope: (scope) => go({ ...session, scope }),
      rename: (name) => tryIt('name', (now, corner) => rename(now, corner, name)),
      setCount: (typed) => tryIt('quantity', (now, corner) => setCount(now, corner, readNumber(typed))),
      add: () => {
        if (tryIt('new drawer', addDrawer, 'the plan'))
          select({ of: 'drawer', index: session.now.project.set.drawers.length - 1, end: 'front' });
      },
      addBox: () => {
        if (tryIt('new box', addBox, 'the plan'))
          select({ of: 'box', index: boxesIn(session.now.project.set).length - 1, end: 'front' });
      },
      addCorner: () => {
        if (tryIt('new corner', addCorner, 'the plan'))
          select({ of: 'joint', index: session.now.project.joints.length - 1 });
      },
      move: (by) => {
        const { selected } = session;
        if (tryIt('order', (now, corner) => move(now, corner, by)))
          select({ ...selected, index: selected.index + by });
      },
      duplicate: () => {
        if (tryIt('copy', duplicate)) select({ ...session.selected, index: session.selected.index + 1 });
      },
      remove: () => {
        const { index } = session.selected;
        tryIt('removal', remove);
        // After the last of a list, the one before it.
        if (selectedCorner(session).ref.index !== index)
          select({ ...session.selected, index: Math.max(0, index - 1) });
      },
      complain: refuse,
    }),
    boardsWhenShown(find('stock-body', HTMLElement), {
      edit: (what, edit, run) => tryIt(what, edit, 'the plan', run),
      complain: refuse,
      announce,
    }),
  ];
  viewChoice(() => show());
  moreMenu();

  const title = find('title', HTMLInputElement);
  title.addEventListener('change', () => {
    const name = title.value;
    takeTyped('Name of the plan', name, () =>
      tryIt('name', ({ text }) => snapshot(editPlan(text, [{ at: ['name'], value: name }])), 'the plan'),
    );
    title.value = session.now.project.name;
  });

  const showText = textPanel(page);
  const sheets = unpackedAfterStart(
    import('./dialogs/sheetsDialog.ts').then(({ sheetsDialog }) => sheetsDialog(page)),
    'what makes sheets',
    said.show,
  );
  const bench = unpackedAfterStart(
    import('./dialogs/benchDialog.ts').then(({ benchDialog }) => benchDialog(page)),
    'the bench view',
    said.show,
  );
  const fingers = unpackedAfterStart(
    import('./controls/fingersPanel.ts').then(({ fingersPanel }) =>
      fingersPanel(find('fingers', HTMLElement), find('fingers-body', HTMLElement), {
        edit: (what, edit) => tryIt(what, edit, 'the plan'),
        complain: refuse,
      }),
    ),
    'movable fingers',
    said.show,
  );
  const join = (view: View): void => {
    views.push(view);
    view({ ...viewStateOf(session), room });
  };
  fingers.whenThere(join);
  sheets.whenThere(({ update, hold }) => {
    join(update);
    holdSheets = hold;
  });
  onPrintKey(() => sheets.ask(({ printNow }) => printNow()));
  const goBack = (): void => {
    const what = undoable(session);
    go(undo(session));
    if (what !== undefined) announce(`undone: ${what}`);
  };
  const goForward = (): void => {
    const what = redoable(session);
    go(redo(session));
    if (what !== undefined) announce(`redone: ${what}`);
  };
  const actions: Readonly<Record<string, () => void>> = {
    undo: goBack,
    redo: goForward,
    'undo-board': goBack,
    'redo-board': goForward,
    take: () => sheets.ask(({ print }) => print()),
    'save-sheets': () => sheets.ask(({ save }) => save()),
    bench: () => bench.ask((open) => open(selectedCorner(session).ref)),
    kept: keptDialog(page),
    licences: licencesDialog(),
    ...files(page),
  };
  for (const [id, act] of Object.entries(actions)) find(id, HTMLButtonElement).addEventListener('click', act);

  const names = { corner: find('corner-name', HTMLElement), ends: find('corner-ends', HTMLElement) };
  const familyTitle = find('family-title', HTMLElement);
  const [undoButtons, redoButtons] = ['undo', 'redo'].map((id) =>
    [id, `${id}-board`].map((each) => find(each, HTMLButtonElement)),
  ) as [HTMLButtonElement[], HTMLButtonElement[]];
  const advice = find('advice', HTMLElement);
  const unread = find('unread', HTMLElement);
  const show = (): void => {
    drawCorner({ ...viewStateOf(session), room });
    // While a hand moves a line, all else follows when it is still.
    if (session.dragging === undefined) follow.now();
    else follow.later();
  };
  const follow = inPauses(function* () {
    if (session.dragging !== undefined) {
      session = rest(session);
      yield;
      drawCorner({ ...viewStateOf(session), room });
      yield;
    }
    const shown = viewStateOf(session);
    const { corner, now } = shown;
    if (document.activeElement !== title) title.value = now.project.name;
    setText(names.corner, corner.name);
    setText(names.ends, endsWords(corner));
    const { length } = now.project.set.drawers;
    if (hosts.set.hidden !== (length === 0)) {
      hosts.set.hidden = length === 0;
      // What is hidden has no width.
      room = rooms();
    }
    setText(familyTitle, length === 0 ? 'Corners' : 'Corners side by side');
    for (const button of undoButtons) {
      button.disabled = session.history.past.length === 0;
      button.title = undoable(session) ?? '';
    }
    for (const button of redoButtons) {
      button.disabled = session.history.future.length === 0;
      button.title = redoable(session) ?? '';
    }
    render(
      adviceFor(corner, now).map((complaint) => html`<li>${adviceWords(complaint, unit())}</li>`),
      advice,
    );
    for (const view of views) {
      yield;
      view({ ...shown, room });
    }
    yield;
    showText();
    setText(
      unread,
      session.draft === undefined
        ? ''
        : `${faultIn(session.draft)}: sheets and links are of the plan before it.`,
    );
    refocus();
  });

  const rooms = (): Room => ({
    cabinet: hosts.set.clientWidth,
    corner: hosts.corner.clientWidth,
    letters: Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16,
  });
  let room = rooms();
  const measure = (): void => {
    // What is hidden has no width.
    if (hosts.corner.clientWidth === 0) return;
    room = rooms();
    show();
  };

  addEventListener('keydown', (event) => {
    const isOver = event.defaultPrevented || document.querySelector('dialog[open]') !== null;
    if (event.key === 'Escape' && !isOver) said.close();
    const typing = event.target instanceof HTMLTextAreaElement || event.target instanceof HTMLInputElement;
    const act = actions[shortcut(event, typing) ?? ''];
    if (act === undefined || document.querySelector('dialog[open]') !== null) return;
    event.preventDefault();
    act();
  });
  new ResizeObserver(measure).observe(hosts.corner);
  measure();

  // The browser compiles the code of a drag at its first move. A moment after the page is seen, simulated moves have it
  // compiled before the user needs it.
  const rehearse = ([handle, ...others]: readonly Handle[]): void => {
    if (handle === undefined) return;
    drag(grab(session, handle), 1);
    setTimeout(rehearse, REST, others);
  };
  setTimeout(() => rehearse(handlesOf(selectedCorner(session))), REST);

  const hasBuilt = (): boolean =>
    session.now.project.set.drawers.some(({ spec }) => spec.asBuilt !== undefined);
  void readAsBuilt().then(() => {
    if (hasBuilt()) go(readAgain(session));
  });
};

/** Pause between two simulated moves, in ms, so that the user's own come first. */
const REST = 40;

/** The action of a key with Ctrl or Cmd; in a text field, undo and redo are the field's own. */
const shortcut = (event: KeyboardEvent, typing: boolean): string | undefined => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  switch (event.key.toLowerCase()) {
    case 'z':
      return typing ? undefined : event.shiftKey ? 'redo' : 'undo';
    case 'y':
      return typing ? undefined : 'redo';
    case 's':
      return 'save';
    case 'o':
      return 'open';
    default:
      return undefined;
  }
};

/** Which corners are shown: `front corners`, `single corner`. */
const endsWords = ({ ref, drawer }: EditedCorner): string =>
  ref.of === 'joint' ? 'single corner' : `${drawer && hasEqualEnds(drawer.spec) ? 'all' : ref.end} corners`;

/** The advice on this corner, and on the whole set. */
const adviceFor = ({ ref, joint }: EditedCorner, { project }: Snapshot): readonly Complaint[] => {
  const { advice } = project.set;
  if (ref.of === 'joint') return [...advice.filter(({ at }) => at[0] === 'climate'), ...joint.advice];
  return advice.filter(({ at, also = [] }) =>
    [at, ...also].some(([list, index]) =>
      list === 'drawers' || list === 'boxes' ? list === listOf(ref) && index === ref.index : true,
    ),
  );
};
