import type { AppHost } from './app-host.ts';
import { actionOf } from './key-bindings.ts';
import { runAction } from './run-action.ts';

/** Hears what is meant for the page wherever in it the focus is: its keys, and the events of the clipboard, which some browsers
 *  send to the body of the page while the cells have the focus. Gives what ends it. */
export function hear(app: AppHost): () => void {
  const until = new AbortController();
  const { signal } = until;
  const ifInCells = (name: 'copy' | 'cut' | 'paste', act: (event: ClipboardEvent) => void): void => {
    const heard = (event: ClipboardEvent): void => {
      if (!event.defaultPrevented && isInCells(app)) act(event);
    };
    document.addEventListener(name, heard, { signal });
  };
  document.addEventListener('keydown', (event) => pressed(app, event), { signal });
  ifInCells('copy', (event) => app.acts.copy(event, false));
  ifInCells('cut', (event) => app.acts.copy(event, true));
  ifInCells('paste', (event) => app.acts.paste(event));
  return () => until.abort();
}

function isInCells({ grid }: AppHost): boolean {
  const around = grid.getRootNode();
  return around instanceof ShadowRoot && around.activeElement === grid;
}

function pressed(app: AppHost, event: KeyboardEvent): void {
  if (event.key === 'Escape') app.drawer = false;
  const action = event.defaultPrevented ? undefined : actionOf(event);
  if (!action || (/^(?:un|re)do$/.test(action) && isOverSheet(event))) return;
  event.preventDefault();
  void runAction(action, app);
}

/** In a page over the sheet undo takes back what is typed there, not what was done below. */
const isOverSheet = (event: Event): boolean => event.composedPath().some((each) => each instanceof HTMLDialogElement);
