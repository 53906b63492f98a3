import { fileStem } from '../../sheets/fileStem.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { quote } from '../../units/quote.ts';
import { blankPlan } from '../model/drawers.ts';
import { faultIn } from '../model/session.ts';
import type { AppContext } from '../model/viewState.ts';
import { startJob } from '../sheets/startJob.ts';
import { find } from './dom.ts';
import { linkOf, planInLink } from './link.ts';

/** More bytes than a plan may have; a larger file is read this far only. */
const MOST_READ = 100e6;

/** A larger file, in bytes, is first read where the page does not wait for it. */
const LARGE = 100e3;

/** The longest that reading may take, in ms. */
const LONGEST = 20e3;

/** Why a large file is no plan; nothing where it is one. */
const readAside = async (read: Blob): Promise<readonly string[]> => {
  const { end, stop } = startJob({ read }, () => {});
  const limit = setTimeout(stop, LONGEST);
  const how = await end;
  clearTimeout(limit);
  if (how.is === 'stopped') return [`it takes longer than ${LONGEST / 1000} seconds to read`];
  return how.is === 'made' ? [] : [how.says].flat();
};

/** Opens and saves plans, as files and as links. */
export const files = ({ now, draft, unit, openPlan, refusePlan, say, settle, saved }: AppContext) => {
  /** What was asked for last: reading may take longer than it takes to ask for another. */
  let latest: Blob | Promise<unknown> | undefined;
  const openFile = async (given: Blob, name: string): Promise<void> => {
    latest = given;
    const file = given.slice(0, MOST_READ);
    if (file.size > LARGE) {
      say({ kind: 'note', title: 'A large plan is being read.' });
      const wrong = await readAside(file);
      if (latest !== given) return;
      if (wrong.length > 0) {
        refusePlan(name, wrong);
        return;
      }
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (latest === given) openPlan(bytes, name);
  };
  const open = async (file: File): Promise<void> => {
    try {
      await openFile(file, file.name);
    } catch {
      say({ kind: 'stop', title: `${quote(file.name)} could not be read; your open plan is unchanged.` });
    }
  };

  const chooser = find('file', HTMLInputElement);
  chooser.addEventListener('change', () => {
    const [file] = chooser.files ?? [];
    chooser.value = '';
    if (file !== undefined) void open(file);
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

  const copyLink = async (): Promise<void> => {
    history.replaceState(null, '', `#${await linkOf(now().text)}`);
    const isCopied = await navigator.clipboard.writeText(location.href).then(
      () => true,
      () => false,
    );
    const typed = draft();
    if (typed !== undefined)
      say({ kind: 'stop', title: `${faultIn(typed)}. The link holds the plan before it.` });
    else
      say({
        kind: 'note',
        title: isCopied
          ? 'A link that holds the whole plan has been copied.'
          : 'The link in the address bar now holds the whole plan.',
      });
  };

  const openLink = async (): Promise<void> => {
    const bytes = await planInLink(location.hash);
    if (bytes === null)
      say({ kind: 'stop', title: 'The plan in this link is damaged; your open plan is unchanged.' });
    else if (
      bytes !== undefined &&
      new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes) !== now().text
    )
      await openFile(new Blob([bytes]), 'link');
  };
  addEventListener('hashchange', () => void openLink());
  void openLink();

  const save = (): void => {
    const wrong = settle();
    saveFile(now().project.name, '.yaml', 'application/yaml', [now().text]);
    saved();
    if (wrong.length > 0)
      say({
        kind: 'stop',
        title: 'The file holds the last valid plan: what you typed since could not be taken.',
        lines: wrong,
      });
  };

  const begin = async (unit: Notation): Promise<void> => {
    const script = import('../../plan/starterPlan.ts');
    latest = script;
    const { starterPlan } = await script;
    if (latest === script) openPlan(starterPlan(unitOf(unit)), 'a new plan');
  };

  return {
    open: () => chooser.click(),
    save,
    fresh: () => begin(unit()),
    blank: () => {
      latest = undefined;
      openPlan(blankPlan(unitOf(unit())), 'a blank plan');
    },
    'fresh-mm': () => begin('mm'),
    'fresh-in': () => begin('in'),
    link: () => void copyLink(),
  };
};

/**
 * Hands a file to the user.
 * @param ending what follows the plan's name in the file's: `.yaml`, `-templates.pdf`
 */
export const saveFile = (name: string, ending: string, type: string, parts: BlobPart[]): void => {
  const url = URL.createObjectURL(new Blob(parts, { type }));
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = `${fileStem(name)}${ending}`;
  anchor.click();
  // The download reads it a moment later.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
};
