import { cornerSwitch } from './cornerSwitch.ts';
import { itemControls } from './itemControls.ts';
import { measureList } from './measureList.ts';
import type { Wishes } from './part.ts';
import type { View } from './shown.ts';
import { tailControls } from './tailControls.ts';
import { widthTable } from './widthTable.ts';

/**
 * Everything that is set by words and numbers.
 * @param which for the choice between a drawer's corners
 * @param tools what goes beside the drawing
 * @param host what goes apart from it
 */
export const controls = (which: HTMLElement, tools: HTMLElement, host: HTMLElement, wishes: Wishes): View => {
  const corners = cornerSwitch(wishes);
  const tails = tailControls(wishes);
  const below = [widthTable(wishes), itemControls(wishes), measureList(wishes)];
  which.append(corners.node);
  tools.append(tails.node);
  host.append(...below.map(({ node }) => node));
  return (shown) => {
    for (const part of [corners, tails, ...below]) part.show(shown);
  };
};
