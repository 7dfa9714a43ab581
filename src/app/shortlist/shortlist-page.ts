import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { createWorkerAnalyst } from '../../analysis/client.ts';
import { explainedRow } from '../../analysis/shortlist/explained-row.ts';
import { nearestRows } from '../../analysis/shortlist/nearest-rows.ts';
import { QuestionError } from '../../analysis/subject/place-error.ts';
import { sharedShortlist } from '../../analysis/pool.ts';
import { nothingAsked } from '../../analysis/shortlist/asked.ts';
import { placesFor } from '../../analysis/shortlist/places.ts';
import type { Analyst, Row, Shortlist, ShortlistQuestion } from '../../analysis/types.ts';
import { readWish } from '../../analysis/shortlist/wish.ts';
import { listed } from '../../analysis/subject/words.ts';
import '../../components/dialog/page-dialog.ts';
import type { Finding, ListedRow, PlaceChoice, Wanted, WishShown } from '../../components/shortlist/data.ts';
import '../../components/shortlist/driver-shortlist.ts';
import { isRefusal } from '../../document/command.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import type { Sheet, UnitSystem } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { formatNumber } from '../../units/show.ts';
import type { AppHost } from '../app-host.ts';
import { inventedDrivers, wholeShelf } from '../pages/shelf-drivers.ts';
import { sheetsOfRows, starterOf, type Opened } from './open.ts';
import { choiceKey, placesOf, rulesShown, shortlistQuestion } from './question.ts';
import { openTemplate } from '../template-list.ts';

/** What stood in the form when the page was closed. */
let left: Wanted = nothingAsked;
let leftWish: { readonly text: string; readonly taken?: WishShown } = { text: '' };
const nothingYet: Finding = { rows: [], best: [], front: [], alone: [], said: '' };
/** So many rows are explained. */
const EXPLAINED = 3;
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
  @state() private wish = leftWish;
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
    const system = this.#system;
    return html`<page-dialog
      wide
      heading="Which drivers go together"
      @close=${() => this.dispatchEvent(new CustomEvent('close'))}
    >
      <driver-shortlist
        .wanted=${this.wanted}
        .finding=${this.finding}
        .places=${this.#places}
        .rules=${rulesShown(this.wanted, system)}
        wish=${this.wish.text}
        .taken=${this.wish.taken}
        system=${system}
        @wish=${(event: CustomEvent<{ text: string }>) => this.#read(event.detail.text)}
        @ask=${(event: CustomEvent<{ wanted: Wanted }>) => this.#ask(event.detail.wanted)}
        @take=${this.#take}
        @stop=${() => this.#asking.abort()}
        @open-rows=${(event: CustomEvent<{ rows: readonly ListedRow[] }>) => void this.#open(event.detail.rows)}
      ></driver-shortlist>
    </page-dialog>`;
  }

  get #system(): UnitSystem {
    return this.workbook?.document.system ?? 'metric';
  }

  get #places(): PlaceChoice[] {
    return placesOf(this.entries, this.wanted.ways, this.said);
  }

  async #begin(): Promise<void> {
    this.entries = await wholeShelf();
    this.#ask(this.wanted);
  }

  #take = (event: CustomEvent<{ place: PlaceChoice['place']; id: string; isTaken: boolean }>): void => {
    const { place, id, isTaken } = event.detail;
    this.said = new Map([...this.said, [choiceKey(place, id), isTaken]]);
    this.#ask(this.wanted);
  };

  /** What a wish does not speak of is asked no longer; box, ranking and rules stay. */
  #read(text: string): void {
    const { wish, ...taken } = readWish(text);
    this.wish = leftWish = { text, taken };
    if (taken.understood.length > 0) this.#ask({ ...this.wanted, price: '', reach: '', plays: '', ...wish });
  }

  #ask(wanted: Wanted): void {
    this.wanted = left = wanted;
    this.#asking.abort();
    this.#asking = new AbortController();
    try {
      void this.#find(shortlistQuestion(wanted, this.entries, this.#places), this.#asking.signal);
    } catch (error) {
      if (!(error instanceof QuestionError)) throw error;
      this.finding = { ...nothingYet, wrong: error.message };
    }
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
      const finding = findingOf(question, found, this.wanted.ways, this.#system);
      show(finding);
      if (found.rows.length > 0) return;
      const ask = (eased: ShortlistQuestion): Promise<Shortlist> => sharedShortlist(this.#threads, eased, { signal });
      show({ ...finding, nearest: await nearestRows(question, ask, this.#system) });
    } catch (error) {
      if (signal.aborted) {
        const { progress, ...rest } = this.finding;
        if (progress !== undefined && this.#asking.signal === signal)
          this.finding = { ...rest, best: [], front: [], alone: [], said: 'Stopped: there may be better ones.' };
      } else show({ ...nothingYet, wrong: error instanceof Error ? error.message : String(error) });
    }
  }

  async #open(rows: readonly ListedRow[]): Promise<void> {
    const { app, workbook, sheet, wanted } = this;
    if (!app || !workbook || !sheet) return;
    const places = this.#places;
    const opened = rows.map((row) => ({ row: row as Row, drivers: this.#driversOf(row, places) }));
    const question = shortlistQuestion(wanted, this.entries, places);
    const starter = await openTemplate(starterOf(wanted.ways));
    const made = sheetsOfRows(workbook.document, sheet.id, starter, opened, wanted, question);
    this.dispatchEvent(new CustomEvent('close'));
    if (isRefusal(made)) return app.tell(made.refused);
    const done = app.acts.do(made.command);
    // At once, not when all is computed: the reader may be elsewhere by then.
    app.show(made.sheet);
    app.go({ sheet: made.sheet, cell: made.cell });
    if (!(await done)) return;
    const names = listed(rows.map(({ names }) => names.join(' + ')));
    const stand =
      rows.length === 1 ? 'stands in a sheet of its own now' : `stand in ${rows.length} sheets of their own now`;
    app.tell([`${names} ${stand}.`, ...new Set(made.told)].join(' '));
  }

  #driversOf(row: ListedRow, places: readonly PlaceChoice[]): Opened[number]['drivers'] {
    return Object.fromEntries(
      places.flatMap(({ place, drivers }, index) => {
        const id = drivers.filter(({ isTaken }) => isTaken)[row.members[index] ?? -1]?.id;
        const entry = this.entries.find((each) => each.id === id);
        return entry ? [[place, entry]] : [];
      }),
    );
  }
}

function findingOf(
  question: ShortlistQuestion,
  { rows, front, partners, judged, outside, counts }: Shortlist,
  ways: Wanted['ways'],
  system: UnitSystem,
): Finding {
  return {
    rows,
    best: rows
      .slice(0, EXPLAINED)
      .map((row, index) => ({ row, why: explainedRow(row, question, system, rows[index + 1]) })),
    front: front.toSorted((a: Row, b: Row) => b.score - a.score),
    alone: placesFor[ways].map((place, list) => ({
      place,
      drivers: (partners[list] ?? []).flatMap(({ why }, index) =>
        why === undefined ? [] : [{ name: question.lists[list]?.[index]?.name ?? '', why }],
      ),
    })),
    said: saidOf(rows.length, judged, outside, counts),
  };
}

/** Counts of pairs and teams are whole. */
const COUNT_DIGITS = 8;

function saidOf(shown: number, judged: number, outside: number, counts: Shortlist['counts']): string {
  const { good, caution, fail, problem } = counts;
  const works = good + caution;
  const count = (number: number): string => formatNumber(number, COUNT_DIGITS);
  const found =
    works === 0
      ? 'None works under these limits.'
      : `${count(works)} work${works === 1 ? 's' : ''}, ${count(good)} of them comfortably${shown < works ? `; the best ${shown} are listed` : ''}.`;
  const others = [
    ...(fail > 0 ? [`${count(fail)} of ${count(judged)} judged ${fail === 1 ? 'has' : 'have'} no shared window`] : []),
    ...(outside > 0 ? [`${count(outside)} do not keep the limits`] : []),
    ...(problem > 0 ? [`${count(problem)} cannot be judged for want of numbers`] : []),
  ];
  return others.length > 0 ? `${found} ${others.join(', ')}.` : found;
}

declare global {
  interface HTMLElementTagNameMap {
    'shortlist-page': ShortlistPage;
  }
}
