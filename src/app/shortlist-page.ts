import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { createWorkerAnalyst } from '../analysis/client.ts';
import { sharedShortlist } from '../analysis/pool.ts';
import type { Analyst, Row, Shortlist, ShortlistQuestion } from '../analysis/types.ts';
import '../components/dialog/page-dialog.ts';
import { shelved } from '../components/shelf/shelved.ts';
import type { Finding, ListedRow, PlaceChoice, Wanted } from '../components/shortlist/data.ts';
import '../components/shortlist/driver-shortlist.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import type { AppHost } from './app-host.ts';
import { inventedDrivers, ownShelf } from './shelf-drivers.ts';
import { choiceKey, placesOf, shortlistQuestion } from './shortlist-question.ts';
import { sheetOfRow } from './shortlist-sheet.ts';
import { openTemplate } from './template-list.ts';
import { THREE_WAY } from './two-way.ts';

/** What stood in the form when the page was closed. */
let left: Wanted = {
  ways: 2,
  price: '',
  reach: '',
  box: 'vented',
  plays: '',
  ranking: 'window*10-price/100',
};
const nothingYet: Finding = { rows: [], front: [], alone: [], said: '' };
/** More threads than these gain little. */
const MOST_THREADS = 2;

/** Which drivers of the shelf go together under some limits, over the sheet; the one that is chosen opens as a sheet of its own.
 *  @fires close - It was closed. */
@customElement('shortlist-page')
export class ShortlistPage extends LitElement {
  @property({ attribute: false }) app: AppHost | undefined;
  @property({ attribute: false }) workbook: Workbook | undefined;
  @property({ attribute: false }) sheet: Sheet | undefined;
  @state() private wanted = left;
  @state() private finding = nothingYet;
  @state() private entries: readonly DriverEntry[] = inventedDrivers();
  @state() private said: ReadonlyMap<string, boolean> = new Map();
  #threads: Analyst[] = [];
  #asking = new AbortController();

  override connectedCallback(): void {
    super.connectedCallback();
    const threads = Math.min(MOST_THREADS, navigator.hardwareConcurrency || 1);
    this.#threads = Array.from({ length: threads }, () => createWorkerAnalyst());
    void this.#begin();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#asking.abort();
    for (const thread of this.#threads) thread.dispose();
  }

  protected override firstUpdated(): void {
    // After the dialog has opened, which gives the focus to its cross.
    void this.updateComplete.then(() => this.renderRoot.querySelector('driver-shortlist')?.focus());
  }

  protected override render(): TemplateResult {
    return html`<page-dialog
      wide
      heading="Which drivers go together"
      @close=${() => this.dispatchEvent(new CustomEvent('close'))}
    >
      <driver-shortlist
        .wanted=${this.wanted}
        .finding=${this.finding}
        .places=${this.#places}
        system=${this.workbook?.document.system ?? 'metric'}
        @ask=${(event: CustomEvent<{ wanted: Wanted }>) => this.#ask(event.detail.wanted)}
        @take=${this.#take}
        @stop=${() => this.#asking.abort()}
        @open-row=${(event: CustomEvent<{ row: ListedRow }>) => void this.#open(event.detail.row)}
      ></driver-shortlist>
    </page-dialog>`;
  }

  get #places(): PlaceChoice[] {
    return placesOf(this.entries, (entry) => shelved(entry).driver, this.wanted.ways, this.said);
  }

  async #begin(): Promise<void> {
    const kept = await ownShelf()
      .list()
      .catch(() => undefined);
    if (kept) this.entries = [...kept.entries, ...this.entries];
    this.#ask(this.wanted);
  }

  #take = (event: CustomEvent<{ place: PlaceChoice['place']; id: string; isTaken: boolean }>): void => {
    const { place, id, isTaken } = event.detail;
    this.said = new Map([...this.said, [choiceKey(place, id), isTaken]]);
    this.#ask(this.wanted);
  };

  #ask(wanted: Wanted): void {
    this.wanted = left = wanted;
    this.#asking.abort();
    this.#asking = new AbortController();
    const question = shortlistQuestion(wanted, this.entries, this.#places);
    if ('wrong' in question) this.finding = { ...nothingYet, wrong: question.wrong };
    else void this.#find(question, this.#asking.signal);
  }

  async #find(question: ShortlistQuestion, signal: AbortSignal): Promise<void> {
    const show = (finding: Finding): void => {
      if (!signal.aborted) this.finding = finding;
    };
    show({ ...this.finding, said: 'Looking…', progress: 0 });
    try {
      const found = await sharedShortlist(
        this.#threads,
        question,
        { signal, progress: ({ done, of }) => show({ ...this.finding, progress: of === 0 ? 0 : done / of }) },
        (rows) => show({ ...this.finding, rows, said: 'The first; looking on…' }),
      );
      show(findingOf(question, found));
    } catch (error) {
      if (signal.aborted) {
        const { progress, ...rest } = this.finding;
        if (progress !== undefined && this.#asking.signal === signal)
          this.finding = { ...rest, front: [], alone: [], said: 'Stopped: there may be better ones.' };
      } else show({ ...nothingYet, wrong: error instanceof Error ? error.message : String(error) });
    }
  }

  async #open(row: ListedRow): Promise<void> {
    const { app, workbook, sheet, wanted } = this;
    if (!app || !workbook || !sheet) return;
    const starter = await openTemplate(row.names.length === 3 ? THREE_WAY : 'two-driver-check');
    const places = this.#places;
    const drivers: Record<string, DriverEntry> = {};
    for (const [index, { place, drivers: all }] of places.entries()) {
      const id = all.filter(({ isTaken }) => isTaken)[row.members[index] ?? -1]?.id;
      const entry = this.entries.find((each) => each.id === id);
      if (entry) drivers[place.charAt(0).toUpperCase() + place.slice(1)] = entry;
    }
    const {
      command,
      sheet: made,
      cell,
      told,
    } = sheetOfRow(workbook.document, sheet.id, starter, row, drivers, {
      Target: typedAs(wanted.plays, 'dB'),
      PriceCap: typedAs(wanted.price, '¤'),
    });
    this.dispatchEvent(new CustomEvent('close'));
    if (!(await app.acts.do(command))) return;
    app.show(made);
    app.go({ sheet: made, cell });
    app.tell([`${row.names.join(' and ')} stand in a sheet of their own now.`, ...told].join(' '));
  }
}

const typedAs = (text: string, unit: string): string => (/^[\d.,]+$/.test(text) ? `${text} ${unit}` : text);

function findingOf(
  question: ShortlistQuestion,
  { rows, front, partners, judged, outside, counts }: Shortlist,
): Finding {
  const { lists } = question;
  const names = lists.length > 2 ? (['woofer', 'mid', 'tweeter'] as const) : (['woofer', 'tweeter'] as const);
  return {
    rows,
    front: front.toSorted((a: Row, b: Row) => b.score - a.score),
    alone: names.map((place, list) => ({
      place,
      drivers: (partners[list] ?? []).flatMap(({ why }, index) =>
        why === undefined ? [] : [{ name: lists[list]?.[index]?.name ?? '', why }],
      ),
    })),
    said: saidOf(rows.length, judged, outside, counts),
  };
}

function saidOf(shown: number, judged: number, outside: number, counts: Shortlist['counts']): string {
  const { good, caution, fail, problem } = counts;
  const works = good + caution;
  const found =
    works === 0
      ? 'None works under these limits.'
      : `${works} work${works === 1 ? 's' : ''}, ${good} of them comfortably${shown < works ? `; the best ${shown} are listed` : ''}.`;
  const others = [
    `${fail} of ${judged} judged ${fail === 1 ? 'has' : 'have'} no shared band`,
    `${outside} do not keep the limits`,
    ...(problem > 0 ? [`${problem} lack numbers`] : []),
  ];
  return `${found} ${others.join(', ')}.`;
}

declare global {
  interface HTMLElementTagNameMap {
    'shortlist-page': ShortlistPage;
  }
}
