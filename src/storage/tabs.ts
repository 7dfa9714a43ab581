import type { Tabs } from './autosave.ts';
import type { Entry } from './types.ts';

/** Speaks with the other tabs of the same browser. Where the browser has no such channel, the comparison of revisions at
 *  each save still keeps one tab from overwriting another; it is only noticed later. */
export function openTabs(name = 'octavo'): Tabs | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  const channel = new BroadcastChannel(name);
  return {
    tell: (entry) => channel.postMessage(entry),
    listen(heard) {
      const listener = (event: MessageEvent<Entry>): void => heard(event.data);
      channel.addEventListener('message', listener);
      return () => channel.removeEventListener('message', listener);
    },
  };
}
