import type { actions } from './actions.ts';
import type { AppHost } from './app-host.ts';

let known: typeof actions | undefined;

/** Takes in how everything is done. From then on it is done at once, so that what is typed next finds what a key has opened. */
export function learnActions(all: typeof actions): void {
  known = all;
}

/** Does what a button, a menu or a key asks for. How, is fetched where it is not known yet: nothing before the first paint is. */
export async function runAction(name: string, app: AppHost, id = ''): Promise<void> {
  known ??= (await import('./actions.ts')).actions;
  try {
    await known[name]?.(app, id);
  } catch (error) {
    app.tell(error instanceof Error ? error.message : String(error));
  }
}
