import { type PlanText, storedIn } from './storage.ts';

/**
 * Listens to other tabs with this page.
 * @param isOpen called where another tab is open already
 * @param hasStored called with a plan that another tab stores
 */
export const otherTabs = (isOpen: () => void, hasStored: (plan: PlanText) => void): void => {
  addEventListener('storage', (event) => {
    const plan = storedIn(event);
    if (plan !== undefined) hasStored(plan);
  });
  if (!('BroadcastChannel' in globalThis)) return;
  const channel = new BroadcastChannel('halfpin');
  channel.addEventListener('message', ({ data }) => {
    if (data === 'hello') channel.postMessage('here');
    else isOpen();
  });
  channel.postMessage('hello');
};
