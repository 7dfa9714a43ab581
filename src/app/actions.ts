import { newDocument } from '../document/create.ts';
import type { OctavoDocument } from '../document/types.ts';
import type { Place } from '../engine/types.ts';
import { parseAddress } from '../formula/address.ts';
import { switchColours } from './colours.ts';
import { openFromFile, saveToFile } from './files.ts';
import type { AppHost } from './app-host.ts';
import { openPlotForm } from './plots/plot-acts.ts';

type Action = (app: AppHost, id: string) => void | Promise<void>;

const onDocument = async (app: AppHost, document: OctavoDocument): Promise<void> => {
  app.drawer = false;
  const problem = await app.session?.adopt(document);
  if (problem) app.tell(problem);
};

/** Everything that a button, a menu or a key of the frame does. */
export const actions: Readonly<Record<string, Action>> = {
  undo: (app) => app.workbook?.undo(),
  redo: (app) => app.workbook?.redo(),
  pin: async ({ workbook }) => {
    await (workbook?.document.baseline ? workbook.unpin() : workbook?.pin());
  },
  system: async (app) => {
    const system = app.workbook?.document.system === 'metric' ? 'imperial' : 'metric';
    await app.acts.do({ kind: 'system', system });
  },
  theme: (app) => {
    switchColours();
    app.requestUpdate();
  },
  drawer: (app) => {
    app.drawer = !app.drawer;
  },
  guide: (app) => app.openGuide(),
  keys: (app) => app.open('keys'),
  tour: (app) => {
    app.drawer = false;
    app.open('tour');
  },
  'open-cell': (app) => app.open('cell'),
  shelf: (app) => app.open('shelf'),
  ask: (app) => app.open('ask'),
  shortlist: (app) => app.open('shortlist'),
  'add-plot': (app) => openPlotForm(app),
  review: (app) => app.open('review'),
  compare: (app) => app.open('compare'),
  link: (app) => app.open('link'),
  'save-csv': async ({ workbook, sheet }) => {
    if (!workbook || !sheet) return;
    const { sheetToCsv } = await import('./plots/csv-files.ts');
    sheetToCsv(workbook, sheet);
  },
  gallery: (app) => {
    app.drawer = false;
    app.open('gallery');
  },
  'new-empty': (app) => onDocument(app, newDocument('Untitled')),
  template: async (app, id) => {
    const { openTemplate } = await import('./template-list.ts');
    await onDocument(app, await openTemplate(id));
  },
  document: async (app, id) => {
    const problem = await app.session?.open(id);
    if (problem) app.tell(problem);
  },
  forget: async (app, id) => {
    const title = app.session?.documents.find((entry) => entry.id === id)?.title ?? 'this document';
    if (id === app.workbook?.document.id) return app.tell(`“${title}” is open. Open another document first.`);
    const agreed = await app.dialog.ask({
      title: `Remove “${title}” from this device?`,
      text: 'This cannot be undone. Save a copy to a file first if you may want it again.',
      confirm: 'Remove',
      cancel: 'Keep it',
    });
    if (agreed !== undefined) await app.session?.forget(id);
  },
  rename: async (app) => {
    const title = await app.dialog.ask({
      title: 'Rename the document',
      label: 'Title',
      value: app.workbook?.document.title ?? '',
      confirm: 'Rename',
    });
    if (title?.trim()) await app.acts.do({ kind: 'title', title: title.trim() });
  },
  'save-file': async ({ grid, workbook }) => {
    // What is still being written in the formula line, or tried out on the rule, is kept first.
    grid.focus({ preventScroll: true });
    await workbook?.settle();
    if (workbook) saveToFile(workbook.document);
  },
  'open-file': async (app) => {
    const opened = await openFromFile();
    if (typeof opened === 'string') app.tell(opened);
    else if (opened) await onDocument(app, opened);
  },
  'go-to': async (app) => {
    const { workbook, sheet } = app;
    if (!workbook || !sheet) return;
    const placeOf = (text: string): Place | undefined => {
      const cut = text.lastIndexOf('!');
      const wanted = text.slice(cut + 1).trim();
      const on = cut < 0 ? sheet : workbook.document.sheets.find(({ name }) => sameWord(name, text.slice(0, cut)));
      const named = [...(on?.names ?? [])].find(([name]) => sameWord(name, wanted))?.[1];
      const cell = (named ?? wanted).split(':')[0]?.toUpperCase() ?? '';
      return on && parseAddress(cell) ? { sheet: on.id, cell } : undefined;
    };
    const asked = await app.dialog.ask({
      title: 'Go to',
      label: 'A cell such as D12, a name, or Sheet!Name',
      value: '',
      offers: [...sheet.names.keys()],
      confirm: 'Go',
      check: (text) =>
        text.trim() === '' || placeOf(text)
          ? undefined
          : `There is no cell or name “${text}” here. The names of this sheet are offered while you type.`,
    });
    const place = asked === undefined ? undefined : placeOf(asked);
    if (place) app.go(place);
  },
};

const sameWord = (a: string, b: string): boolean =>
  a.trim().toLowerCase() === b.trim().replaceAll("'", '').toLowerCase();
