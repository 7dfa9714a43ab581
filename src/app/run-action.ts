import type * as Acts from './actions.ts';
import type { AppHost } from './app-host.ts';

let known: typeof Acts | undefined;

/** Does what a button, a menu or a key asks for. How, is fetched when it is first asked: nothing before the first paint is.
 *  Once fetched it is done at once, so that what is typed next finds what the key has opened. */
export async function runAction(name: string, app: AppHost, id = ''): Promise<void> {
  known ??= await import('./actions.ts');
  try {
    await known.actions[name]?.(app, id);
  } catch (error) {
    app.tell(error instanceof Error ? error.message : String(error));
  }
}
