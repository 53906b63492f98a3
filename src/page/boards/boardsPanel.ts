import { html, nothing, render, type TemplateResult } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { plankName } from '../../drawer/blanks/blankWords.ts';
import { plurals } from '../../drawer/blanks/breakoutWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import { drawersAndBoxes } from '../../drawer/drawer.ts';
import type { Box, Point } from '../../drawing/drawing.ts';
import { boardCuts } from '../../sheets/boards/boardCuts.ts';
import type { BoardView } from '../../sheets/boards/boardView.ts';
import type { DefectKind, Plank, StockName } from '../../stock/plank.ts';
import { extentsOf } from '../../stock/polygon.ts';
import type { Pin } from '../../stock/wanted.ts';
import type { Complaint, Result } from '../../units/complaint.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { unitOf } from '../../units/notation.ts';
import { lettersIn } from '../browser/letters.ts';
import { addBoard, boardsIn, setBoardSizes } from '../model/boards/boardEdits.ts';
import { boardSizes } from '../model/boards/boardShape.ts';
import { addDefect, removeDefect, setDefectBox } from '../model/boards/defectEdits.ts';
import { boardStep, type Grip, type Held, moved } from '../model/boards/heldBoard.ts';
import { differInPinsOnly, takenUp } from '../model/boards/heldPart.ts';
import { freeAll, freePart, pinPart } from '../model/boards/pinEdits.ts';
import type { Snapshot } from '../model/snapshot.ts';
import { MOST_DRAWN, type View } from '../model/viewState.ts';
import { type BoardsState, readyBoards } from '../sheets/readyBoards.ts';
import { boardFields } from './boardFields.ts';
import { boardFigure } from './boardFigure.ts';
import { type BoardHands, boardHands } from './boardHands.ts';
import { frontsView } from './frontsView.ts';
import { keptPictures } from './keptPictures.ts';
import { layoutNews } from './layoutNews.ts';
import { newBoardForm } from './newBoardForm.ts';
import { carriedWords, partCallout } from './partCallout.ts';
import { partFields } from './partFields.ts';
import { pinSign } from './partGrips.ts';
import { type PartsAtHand, partHands, partKeys, withParts } from './partHands.ts';
import { partsTable } from './partsTable.ts';
import type { BoardPicture } from './seenBoard.ts';

/** What the panel needs of the page. */
export interface BoardsActions {
  /**
   * @param what the edit in words
   * @param run a name that edits share which are one step of undo
   */
  readonly edit: (what: string, edit: (now: Snapshot) => Result<Snapshot>, run?: string) => boolean;
  /** For typed text that cannot be read. */
  readonly complain: (complaints: readonly Complaint[]) => void;
  /** Tells screen readers. */
  readonly announce: (words: string) => void;
}

/** Round the boards, in px: for the grip at a board's end. */
const BESIDE = 34;
const MOST_ZOOM = 8;

/** The widest picture of the cabinet, in px. */
const FRONTS = 480;
const frontsRoom = (room: number, letters: number) => ({ width: Math.min(room, FRONTS * letters), letters });

const NOTHING_CUT = { blanks: [], cuts: [], offcuts: [] };

interface Gesture {
  readonly board: number;
  readonly grip: Grip;
  readonly held?: Held;
}

/**
 * The boards of the plan as they lie, with the parts that come out of them, which are laid out beside the page; boards and
 * defects are drawn and typed here.
 * @returns shows them, where they are seen
 */
export const boardsPanel = (host: HTMLElement, actions: BoardsActions): View => {
  let shown: Parameters<View>[0] | undefined;
  let chosen: { readonly board: number; readonly defect?: number; readonly part?: number } | undefined;
  let kind: DefectKind = 'loose knot';
  let isDrawing = false;
  let zoom = 1;
  let gesture: Gesture | undefined;
  let stocks: readonly StockName[] = ['front'];
  /** Runs of keys so far: those of one run are one step of undo. */
  let runs = 0;
  let scale = 1;
  const pictures = keptPictures(() => show());
  /** The pictures that are shown, by the places of their boards among all. */
  const seen = new Map<number, BoardPicture>();
  const layout = readyBoards(() => show());
  let laid: BrokenOut | undefined;
  let compared: { readonly of: readonly unknown[]; readonly isShown: boolean } | undefined;
  /** A part that was pinned by keys, which has the focus wherever it comes to lie. */
  let focused: number | undefined;

  const choose = (board: number | undefined, defect?: number, part?: number): void => {
    isDrawing &&= board === chosen?.board;
    chosen =
      board === undefined
        ? undefined
        : { board, ...(defect !== undefined && { defect }), ...(part !== undefined && { part }) };
    show();
  };
  /** The parts where they are shown; nothing where what is shown is of other parts. */
  const atHand = (): PartsAtHand | undefined => {
    const { work, sawing, units } = shown?.now.project ?? {};
    if (work === undefined || sawing === undefined || units === undefined || laid === undefined)
      return undefined;
    if (compared?.of[0] !== work || compared.of[1] !== laid)
      compared = { of: [work, laid], isShown: differInPinsOnly(work, laid) };
    if (!compared.isShown) return undefined;
    const { boards } = laid.breakout;
    return { work, sawing, boards, step: boardStep(unitOf(units)), scale, pictures: seen };
  };
  const choosePart = (wanted: number, plank?: number): void => {
    const there = atHand();
    const on = plank ?? (there && takenUp(there.work, there.boards, wanted)?.plank);
    const name = there?.work.planks[on ?? -1]?.name;
    if (shown === undefined || name === undefined) return;
    choose(
      boardsIn(shown.now).findIndex((entry) => entry.plank.name === name),
      undefined,
      wanted,
    );
  };
  const pin = (wanted: number, to: Pin): void => {
    focused = document.activeElement?.getAttribute('data-grip') === `part ${wanted}` ? wanted : undefined;
    if (actions.edit('place of a part', (now) => pinPart(now, wanted, to))) choosePart(wanted, to.plank);
  };
  const free = (wanted: number): void => {
    actions.edit('pin of a part', (now) => freePart(now, wanted));
  };
  const parts = partHands(host, atHand, {
    pin,
    told: (carried) => {
      const { work, units } = shown?.now.project ?? {};
      if (work !== undefined && units !== undefined) actions.announce(carriedWords(work, carried, units));
    },
    show: () => show(),
  });
  partKeys(host, parts);
  const plankOf = (board: number): Plank | undefined => shown && boardsIn(shown.now)[board]?.plank;

  const put = (board: number, held: Held, run?: string): boolean => {
    switch (held.is) {
      case 'sizes':
        return actions.edit('size of a board', (now) => setBoardSizes(now, board, held.sizes), run);
      case 'defect':
        return actions.edit(
          'place of a defect',
          (now) => setDefectBox(now, board, held.defect, held.box),
          run,
        );
      case 'drawn':
        return add(board, held.box);
    }
  };
  const add = (board: number, box: Box): boolean => {
    const defect = plankOf(board)?.defects.length;
    const isAdded = actions.edit(`${kind} on a board`, (now) => addDefect(now, board, kind, box));
    if (isAdded) choose(board, defect);
    return isAdded;
  };
  const remove = (board: number, defect: number): void => {
    if (actions.edit('removal of a defect', (now) => removeDefect(now, board, defect))) choose(board);
  };
  const hold = (by: Point, from: Point): Held | undefined => {
    const plank = gesture && plankOf(gesture.board);
    if (plank === undefined || gesture === undefined || shown === undefined) return undefined;
    const { x0, y1 } = extentsOf(plank.outline);
    const start: Point = [x0 + from[0] / scale, y1 - from[1] / scale];
    return moved(
      plank,
      gesture.grip,
      [by[0] / scale, -by[1] / scale],
      unitOf(shown.now.project.units),
      start,
    );
  };
  const hands: BoardHands = {
    isDrawing: () => isDrawing,
    grab: (board, grip) => {
      gesture = { board, grip };
    },
    drag: (by, from) => {
      const held = hold(by, from);
      if (gesture !== undefined && held !== undefined) gesture = { ...gesture, held };
      show();
    },
    drop: (kept) => {
      const { board, held } = gesture ?? {};
      gesture = undefined;
      if (kept && board !== undefined && held !== undefined) put(board, held);
      show();
    },
    press: (board, grip) => {
      const defect = defectIn(grip);
      if (defect !== undefined) choose(board, defect);
    },
    nudge: (board, grip, [x, y]) => {
      const plank = plankOf(board);
      if (plank === undefined || shown === undefined) return;
      const { units } = shown.now.project;
      const step = boardStep(unitOf(units));
      const by: Point =
        defectIn(grip) === undefined ? [(x + y) * step, (x + y) * step] : [x * step, y * step];
      const held = moved(plank, grip, by, unitOf(units));
      if (held === undefined || held.is === 'drawn' || !put(board, held, `${board} ${grip} ${runs}`)) return;
      const label = host.querySelector(`[data-board="${board}"][data-grip="${grip}"]`);
      actions.announce(label?.getAttribute('aria-valuetext') ?? label?.getAttribute('aria-label') ?? '');
    },
    remove: (board, grip) => {
      const defect = defectIn(grip);
      if (defect !== undefined) remove(board, defect);
    },
    rest: () => {
      runs++;
    },
  };
  boardHands(host, withParts(hands, parts, { choose: choosePart, free }));
  host.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || !isDrawing || event.defaultPrevented) return;
    isDrawing = false;
    event.preventDefault();
    show();
  });
  new ResizeObserver(() => show()).observe(host);

  const show = (): void => {
    if (shown === undefined || host.clientWidth === 0) return;
    const { now, room } = shown;
    const { project } = now;
    if (drawersAndBoxes(project.set).length === 0) {
      render(html`<p>Parts of drawers and boxes come out of boards, and this plan has neither.</p>`, host);
      return;
    }
    const boards = boardsIn(now);
    if (chosen !== undefined && chosen.board >= boards.length) chosen = undefined;
    const form = newBoardForm(project, stocks, boards.length === 0 ? 'List this board' : 'Add this board', {
      add: (board) => {
        if (actions.edit('board added', (from) => addBoard(from, board))) choose(boards.length);
      },
      choose: (next) => {
        stocks = next;
        show();
      },
      complain: actions.complain,
    });
    if (boards.length === 0) {
      render(
        html`<h3>List your boards</h3>
          <p class="quiet">Say what wood is at hand, board by board; which part comes out of which board follows from it, and how each is sawn. Begin with one.</p>${form}`,
        host,
      );
      return;
    }
    const state = layout.of(project);
    const letters = lettersIn(host.clientWidth, room.letters);
    const planks = (project.work?.planks ?? []).slice(0, MOST_DRAWN);
    const longest = Math.max(...planks.map(({ outline }) => boardSizes(outline).length));
    scale = (zoom * Math.max(100, host.clientWidth - BESIDE)) / longest;
    const name = chosen && boards[chosen.board]?.plank.name;
    laid = state.laid;
    const there = atHand();
    const carried = there && parts.carried();
    pictures.begin();
    render(
      html`${layoutNews(state, project.units, {
        stop: layout.stop,
        resume: layout.resume,
        list: (board) => {
          if (actions.edit('board added', (from) => addBoard(from, board))) choose(boards.length);
        },
      })}
      <div class="row zoom" role="group" aria-label="Size of the boards">
        <button type="button" class="step" aria-label="Smaller" ?disabled=${zoom <= 1} @click=${() => setZoom(zoom / 2)}>−</button>
        <button type="button" class="step" aria-label="Larger" ?disabled=${zoom >= MOST_ZOOM} @click=${() => setZoom(zoom * 2)}>+</button>
        <span class="quiet">All boards to one scale, show face up. Choose one to change it and to mark its defects; drag a part to pin it to another place.</span>
      </div>
      ${pinsRow(project.work?.pinned.length ?? 0, () => actions.edit('pins', freeAll))}
      <div class="lying">${repeat(
        planks,
        ({ name: own, copy }) => `${own} ${copy}`,
        (plank, index) =>
          boardOf(
            plank,
            index,
            boards.findIndex((entry) => entry.plank.name === plank.name),
            state,
            letters,
          ),
      )}</div>
      <p ?hidden=${(project.work?.planks.length ?? 0) <= MOST_DRAWN}>More boards are in the plan; these are the first ${MOST_DRAWN}.</p>
      <section aria-labelledby="new-board-title"><h3 id="new-board-title">Another board</h3>${form}</section>
      <div class="where-from">
        <div>${frontsView(project.set.drawers, laid, frontsRoom(host.clientWidth, letters), name)}</div>
        <div>${laid === undefined ? nothing : partsTable(laid, state.isNew, name, choosePart)}</div>
      </div>
      ${there && carried ? partCallout(host, there, carried, project.units) : nothing}`,
      host,
    );
    keepFocus(state.isNew);
  };
  /** A part that lies elsewhere is another element, and the focus goes with it. */
  const keepFocus = (isNew: boolean): void => {
    if (focused === undefined || !isNew) return;
    const node = host.querySelector(`[data-grip="part ${focused}"]`);
    if (document.activeElement === document.body && node instanceof SVGElement)
      node.focus({ preventScroll: true });
    focused = undefined;
  };
  const setZoom = (next: number): void => {
    zoom = Math.min(Math.max(next, 1), MOST_ZOOM);
    show();
  };

  /** One board: its name and sizes, its picture, and where it is chosen its fields. */
  const boardOf = (
    plank: Plank,
    index: number,
    board: number,
    state: BoardsState,
    letters: number,
  ): TemplateResult => {
    const { units, work, sawing } = (shown as Parameters<View>[0]).now.project;
    const { isNew } = state;
    const isChosen = chosen?.board === board && plank.copy === 1;
    const name = plankName(plank, work?.planks ?? []);
    const own = layoutOf(plank, laid);
    const view: BoardView = {
      plank,
      layout: own ?? NOTHING_CUT,
      kerf: sawing.kerf,
      blanks: laid?.blanks ?? [],
    };
    const picture = pictures.of(`${plank.name} ${plank.copy}`, view, scale, letters);
    if (picture !== undefined) seen.set(index, picture);
    const there = atHand();
    const carried = parts.carried();
    const { length, left, right } = boardSizes(plank.outline);
    const number = (value: number) => formatNumber(value, units);
    const widths = left === right ? number(left) : `${number(left)} to ${number(right)}`;
    const isWhole = isNew && state.share >= 1 && own === undefined;
    const figure =
      picture &&
      boardFigure(picture, {
        board,
        plank,
        name,
        isChosen,
        isOld: !isNew,
        defect: isChosen ? chosen?.defect : undefined,
        isDrawing: isChosen && isDrawing,
        held: isChosen ? gesture?.held : undefined,
        parts: there && {
          board,
          plank: index,
          blanks: there.work.blanks,
          laid: own?.blanks.filter(({ why }) => why.kind !== 'cut already') ?? [],
          isChosen: chosen?.board === board,
          chosen: chosen?.part,
          held:
            carried?.held.plank === index
              ? { ...carried.held, isRefused: carried.refusal !== undefined }
              : undefined,
          units,
        },
        units,
        choose: () => choose(board),
      });
    return html`<article class="plank ${isChosen ? 'chosen' : ''}" aria-label=${name}>
      <h3 class="plank-head"><button type="button" class="plank-name" aria-expanded=${isChosen} @click=${() => choose(isChosen ? undefined : board)}>
        <span class="plank-title">${name}</span> <span class="plank-figures">${number(length)} × ${widths} × ${number(plank.thickness)}, for ${plurals(plank.stocks)}${isWhole ? '; not cut into' : ''}</span>
      </button></h3>
      <div class="scroller">${figure ?? nothing}</div>
      ${there ? partFieldsOn(there, index) : nothing}
      ${isChosen ? fieldsOf(plank, board) : nothing}
      ${
        isChosen && isNew && laid !== undefined && own !== undefined
          ? html`<details><summary>Saw cuts in order</summary><ol class="cuts">${boardCuts(view, units).map(({ measure, text }) => html`<li>${measure} ${text}</li>`)}</ol></details>`
          : nothing
      }
    </article>`;
  };
  /** The fields of the chosen part, on the board that it lies on. */
  const partFieldsOn = (there: PartsAtHand, plank: number): TemplateResult | typeof nothing => {
    const part = chosen?.part;
    const own = part === undefined ? undefined : takenUp(there.work, there.boards, part);
    if (shown === undefined || part === undefined || own?.plank !== plank) return nothing;
    const why = there.boards.flatMap(({ blanks }) => blanks).find(({ wanted }) => wanted === part)?.why;
    return partFields(there.work, own, why, shown.now.project.units, {
      pin: (to) => pin(part, to),
      free: () => free(part),
      complain: actions.complain,
    });
  };
  const fieldsOf = (plank: Plank, board: number): TemplateResult => {
    const { now } = shown as Parameters<View>[0];
    const { units } = now.project;
    return boardFields(
      {
        board,
        plank,
        count: boardsIn(now)[board]?.count ?? 1,
        defect: chosen?.defect,
        kind,
        isDrawing,
        units,
      },
      {
        edit: actions.edit,
        complain: actions.complain,
        chooseDefect: (defect) => choose(board, defect),
        addDefect: () => add(board, middleOf(plank, boardStep(unitOf(units)))),
        setKind: (next) => {
          kind = next;
          show();
        },
        toggleDrawing: () => {
          isDrawing = !isDrawing;
          show();
        },
      },
    );
  };

  return (state) => {
    shown = state;
    // What a hand moves elsewhere is laid out when it is still.
    if (state.moving === undefined) show();
  };
};

const defectIn = (grip: Grip): number | undefined =>
  grip.startsWith('defect ') ? Number(grip.slice('defect '.length)) : undefined;

/** What the sign of a pin means, and how all are set free; nothing where there is none. */
const pinsRow = (count: number, freeAll: () => void): TemplateResult | typeof nothing =>
  count === 0
    ? nothing
    : html`<div class="row pins" role="group" aria-label="Pinned parts">
        <span>${pinSign()} ${count === 1 ? 'One part is pinned' : `${count} parts are pinned`} by hand; the rest is fitted round ${count === 1 ? 'it' : 'them'}.</span>
        <button type="button" @click=${freeAll}>Set all free</button>
      </div>`;

/** What is laid out on a board, by its name. */
const layoutOf = (plank: Plank, laid: BrokenOut | undefined) =>
  laid?.breakout.boards.find(({ plank: index }) => {
    const other = laid.planks[index];
    return other?.name === plank.name && other.copy === plank.copy;
  });

/** The extent of a defect that is added by numbers, in steps along and across. */
const ADDED = [40, 30] as const;

const middleOf = ({ outline }: Plank, step: number): Box => {
  const { x0, y0, x1, y1 } = extentsOf(outline);
  const [x, y] = [Math.round((x0 + x1) / 2 / step) * step, Math.round((y0 + y1) / 2 / step) * step];
  const [along, across] = ADDED.map((steps) => (steps * step) / 2) as [number, number];
  return { x0: x - along, x1: x + along, y0: y - across, y1: y + across };
};
