import { createWorkerEngine } from './engine/client.ts';
import { readKept, writeKept } from './exchange/file.ts';
import { BrowserStorage } from './storage/browser-storage.ts';
import { openTabs } from './storage/tabs.ts';
import { restoreColours } from './app/colours.ts';
import { registerOffline } from './app/offline.ts';
import { Session } from './app/session.ts';
import { themeSheet } from './components/theme.ts';
import './app/octavo-app.ts';

/** Puts the parts together: the only file that knows them all. */
async function start(): Promise<void> {
  document.adoptedStyleSheets.push(themeSheet());
  restoreColours();

  const storage = new BrowserStorage({ encode: writeKept, decode: readKept });
  const session = new Session(createWorkerEngine(), storage, openTabs());
  // A document in the address comes before those that are kept. Fetched only where there is one.
  const linked = async (): Promise<string | undefined> =>
    location.hash === '' ? undefined : (await import('./app/linked.ts')).openLinked(session);
  const told = await linked();
  const problem = session.workbook
    ? undefined
    : await session.start(async () => {
        const { openTemplate } = await import('./app/template-list.ts');
        return openTemplate('two-driver-check');
      });
  const app = document.querySelector('octavo-app') ?? document.body.appendChild(document.createElement('octavo-app'));
  app.session = session;
  const tell = (words: string | undefined): void => {
    if (words) app.tell(words);
  };
  tell(told ?? problem);
  addEventListener('hashchange', () => void linked().then(tell));
  void registerOffline();
}

void start();
