import type { View } from '../model/viewState.ts';
import type { BoardsActions } from './boardsPanel.ts';

/** The boards, whose script is unpacked when they are first shown: many plans have none. */
export const boardsWhenShown = (host: HTMLElement, actions: BoardsActions): View => {
  let state: Parameters<View>[0] | undefined;
  let panel: View | undefined;
  const follow = (): void => {
    if (panel !== undefined && state !== undefined) panel(state);
  };
  const shown = new ResizeObserver(() => {
    if (host.clientWidth === 0) return;
    shown.disconnect();
    void import('./boardsPanel.ts').then(({ boardsPanel }) => {
      panel = boardsPanel(host, actions);
      follow();
    });
  });
  shown.observe(host);
  return (next) => {
    state = next;
    follow();
  };
};
