import { createWorkerEngine } from './engine/client.ts';
import { decodeDocument } from './exchange/decode.ts';
import { encodeDocument } from './exchange/encode.ts';
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

  const codec = {
    encode: (each: Parameters<typeof encodeDocument>[0]) => encodeDocument(each, { ids: true }),
    decode: decodeDocument,
  };
  const session = new Session(createWorkerEngine(), new BrowserStorage(codec), openTabs());
  const problem = await session.start(async () => {
    const { openTemplate } = await import('./app/template-list.ts');
    return openTemplate('two-driver-check');
  });
  const app = document.querySelector('octavo-app') ?? document.body.appendChild(document.createElement('octavo-app'));
  app.session = session;
  if (problem) app.tell(problem);
  void registerOffline();
}

void start();
