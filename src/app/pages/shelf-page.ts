import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../../components/dialog/page-dialog.ts';
import '../../components/shelf/driver-shelf.ts';
import type { ShelfView } from '../../components/shelf/driver-shelf.ts';
import { isRefusal, type Command } from '../../document/command.ts';
import { newId } from '../../document/create.ts';
import { driverBlockAt, type DriverBlock } from '../../document/shelf/block.ts';
import type { DriverEntry, DriverTable } from '../../document/shelf/entry.ts';
import { freeName, mergeShelves } from '../../document/shelf/merge.ts';
import { putDriver, rowsInBlock } from '../../document/shelf/put.ts';
import { tableSheet, type TableMeaning } from '../../document/shelf/table-sheet.ts';
import type { OctavoDocument, Origin, Sheet } from '../../document/types.ts';
import { readDatasheet } from '../../exchange/datasheet/read.ts';
import { readShelf, writeShelf } from '../../exchange/shelf-file.ts';
import { speak } from '../../units/show.ts';
import type { AppHost } from '../app-host.ts';
import { chooseFile, offerFile } from '../files.ts';
import { inventedDrivers, ownShelf } from './shelf-drivers.ts';

/** Where the reader was when the shelf was closed. */
let left: ShelfView = { kind: 'list' };

/** The shelf opens next with this datasheet as pasted. */
export function beginWithSheet(text: string): void {
  left = { kind: 'paste', text };
}

interface TableUse {
  readonly driver: string;
  readonly table: DriverTable;
  readonly meaning: TableMeaning;
}

/** The driver shelf over the sheet, and the driver of the sheet that stands beneath the selection.
 *  @fires close - It was closed. */
@customElement('shelf-page')
export class ShelfPage extends LitElement {
  @property({ attribute: false }) app: AppHost | undefined;
  @property({ attribute: false }) sheet: Sheet | undefined;
  @property() system: OctavoDocument['system'] = 'metric';
  @state() private own: readonly DriverEntry[] = [];
  @state() private told = '';
  @state() private view = left;
  readonly #invented = inventedDrivers();

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#attempt(async () => undefined);
  }

  protected override render(): TemplateResult {
    const block = this.#block;
    return html`<page-dialog wide heading="Driver shelf" @close=${() => this.dispatchEvent(new CustomEvent('close'))}>
      <button slot="tools" type="button" @click=${() => this.app?.open('shortlist')}>Which go together…</button>
      <driver-shelf
        .entries=${[...this.own, ...this.#invented]}
        .view=${this.view}
        .read=${readDatasheet}
        place=${block?.title ?? ''}
        .there=${block && this.sheet ? rowsInBlock(this.sheet, block) : undefined}
        told=${this.told}
        system=${this.system}
        @view=${(event: CustomEvent<{ view: ShelfView }>) => this.#show(event.detail.view)}
        @put-driver=${(event: CustomEvent<{ entry: DriverEntry }>) => void this.#put(event.detail.entry)}
        @add=${(event: CustomEvent<{ entries: readonly DriverEntry[]; put?: boolean }>) => void this.#add(event.detail)}
        @change=${(event: CustomEvent<{ entry: DriverEntry }>) => void this.#change(event.detail.entry)}
        @remove=${(event: CustomEvent<{ entry: DriverEntry }>) => void this.#remove(event.detail.entry)}
        @use-table=${(event: CustomEvent<TableUse>) => void this.#use(event.detail)}
        @save-file=${() => this.#save()}
        @read-file=${() => void this.#read()}
      ></driver-shelf>
    </page-dialog>`;
  }

  get #block(): DriverBlock | undefined {
    return this.sheet && this.app ? driverBlockAt(this.sheet, this.app.cell) : undefined;
  }

  #show(view: ShelfView): void {
    if (view.kind !== this.view.kind) this.told = '';
    this.view = left = view;
  }

  /** `origin` says where all its numbers come from. */
  async #put(entry: DriverEntry, origin?: Origin): Promise<void> {
    const block = this.#block;
    if (!this.app || !this.sheet || !block) return;
    const { id: sheet } = this.sheet;
    const { command, given, told } = putDriver(this.sheet, block, entry);
    const marks = given.map((cells): Command => ({ kind: 'describe', sheet, cells, attributes: { origin } }));
    this.dispatchEvent(new CustomEvent('close'));
    if (await this.app.acts.do(origin ? { kind: 'all', commands: [command, ...marks] } : command))
      this.app.tell([`${entry.name} stands in ${block.title} now.`, ...told].join(' '));
  }

  /** Makes a sheet of a measured table, at the end of the document. */
  async #use({ driver, table, meaning }: TableUse): Promise<void> {
    const { workbook } = this.app ?? {};
    if (!this.app || !workbook) return;
    const sheet = tableSheet(workbook.document, driver, table, meaning);
    if (!('cells' in sheet)) {
      this.told = `${table.title}: ${speak(sheet, this.system)}`;
      return;
    }
    this.dispatchEvent(new CustomEvent('close'));
    if (!(await this.app.acts.do({ kind: 'add-sheet', sheet }))) return;
    this.app.show(sheet.id);
    this.app.tell(
      `${table.title} of ${driver} is a curve now. ${sheet.cells.get('A3')?.text}: ${sheet.cells.get('B3')?.text}`,
    );
  }

  async #add({
    entries,
    put = false,
  }: {
    readonly entries: readonly DriverEntry[];
    readonly put?: boolean;
  }): Promise<void> {
    const isKept = await this.#attempt(async () => {
      const { changed, told } = mergeShelves([...this.own, ...this.#invented], entries);
      await ownShelf().put(
        changed.filter((each) => !each.invented),
        this.own,
      );
      const names = changed.map(({ name }) => name).join(', ');
      return [names === '' ? 'That is on the shelf already.' : `On the shelf now: ${names}.`, ...told.slice(1)].join(
        '\n',
      );
    });
    const [entry] = entries;
    if (isKept && put && entry) await this.#put(entry, 'datasheet');
  }

  /** What another tab has changed meanwhile is kept, and ours beside it. */
  async #change(entry: DriverEntry): Promise<void> {
    await this.#attempt(async () => {
      const [stale] = await ownShelf().put([entry], this.own);
      if (!stale) return `${entry.name} is kept.`;
      const ours = { ...stale, id: newId(), name: freeName(this.own, entry.name) };
      await ownShelf().put([ours], []);
      return `Another tab changed ${entry.name} meanwhile: both are kept, this one as ${ours.name}.`;
    });
  }

  async #remove(entry: DriverEntry): Promise<void> {
    const agreed = await this.app?.dialog.ask({
      title: `Take “${entry.name}” off the shelf?`,
      text: 'This cannot be undone. Sheets that use its numbers keep them.',
      confirm: 'Take it off',
      cancel: 'Keep it',
    });
    if (agreed === undefined) return;
    await this.#attempt(async () => {
      await ownShelf().remove(entry.id);
      return `${entry.name} is no longer on the shelf.`;
    });
  }

  #save(): void {
    if (this.own.length === 0) {
      this.told = 'There is no driver of your own to save yet; the invented ones come with every shelf.';
      return;
    }
    offerFile(writeShelf(this.own), 'drivers.octavo-shelf.json');
    this.told = `${this.own.length} drivers saved to drivers.octavo-shelf.json.`;
  }

  async #read(): Promise<void> {
    const file = await chooseFile();
    if (!file) return;
    const entries = readShelf(await file.text());
    if (isRefusal(entries)) {
      this.told = `${file.name}: ${entries.refused}`;
      return;
    }
    await this.#attempt(async () => {
      const { changed, told } = mergeShelves([...this.own, ...this.#invented], entries);
      await ownShelf().put(changed, this.own);
      return `${file.name}: ${told.join('\n')}`;
    });
  }

  /** Does something with what is stored, shows what then stands there, and tells; back to the list where something was done. */
  async #attempt(act: () => Promise<string | undefined>): Promise<boolean> {
    try {
      const said = await act();
      const { entries, refused } = await ownShelf().list();
      this.own = entries;
      if (said !== undefined) this.#show({ kind: 'list' });
      this.told = [...(said === undefined ? [] : [said]), ...refused].join('\n');
      return true;
    } catch (error) {
      this.told = `The browser does not keep the shelf: ${error instanceof Error ? error.message : String(error)}`;
      return false;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'shelf-page': ShelfPage;
  }
}
