import { atOnce } from '../storage/at-once.ts';

const KEY = 'octavo-colours';
const DARK = matchMedia('(prefers-color-scheme: dark)');

/** Whether the page is dark now: as the reader chose, otherwise as the system is. */
export function isDark(): boolean {
  const chosen = document.documentElement.dataset['theme'];
  return chosen ? chosen === 'dark' : DARK.matches;
}

/** Takes the other colours, and remembers them on this device. */
export function switchColours(): void {
  const chosen = isDark() ? 'light' : 'dark';
  document.documentElement.dataset['theme'] = chosen;
  atOnce.keep(KEY, chosen);
}

/** The colours chosen last time; the system's where none were. */
export function restoreColours(): void {
  const chosen = atOnce.read(KEY);
  if (chosen) document.documentElement.dataset['theme'] = chosen;
}
