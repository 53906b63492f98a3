import { storedIn } from './storage.ts';

/**
 * Listens to other tabs with this page.
 * @param isOpen called where another tab is open already
 * @param hasStored called with the text of a plan that another tab stores
 */
export const otherTabs = (isOpen: () => void, hasStored: (text: string) => void): void => {
  addEventListener('storage', (event) => {
    const text = storedIn(event);
    if (text !== undefined) hasStored(text);
  });
  if (!('BroadcastChannel' in globalThis)) return;
  const channel = new BroadcastChannel('halfpin');
  channel.addEventListener('message', ({ data }) => {
    if (data === 'hello') channel.postMessage('here');
    else isOpen();
  });
  channel.postMessage('hello');
};
