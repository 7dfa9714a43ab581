import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { FunctionDescription, FunctionWords } from '../../../functions/define.ts';
import { unfetched } from '../../../functions/words.ts';
import { engineFunctions } from '../../formula/engine-functions.ts';
import type { Functions } from '../../formula/types.ts';
import { isPointerCoarse } from '../coarse-pointer.ts';
import { SearchWords } from './search-words.ts';
import { learnUsual, usualOf, type Usual } from './usual.ts';
import { parameterWords, resultWords, signatureOf } from './parameter-words.ts';
import { guideStyles } from './styles.ts';

/** Every function with all that its declaration says: what it takes and gives, where it comes from, an example.
 *  @fires use-example - The example is wanted in a cell; `detail.formula`. */
@customElement('function-guide')
export class FunctionGuide extends LitElement {
  static override styles = guideStyles;

  /** The functions that there are, in reading order. */
  @property({ attribute: false }) functions: Functions = new Map();
  /** The function that is opened; without regard to case. */
  @property() function = '';
  @state() private search = '';
  #words = new SearchWords(this.functions);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('functions')) this.#words = new SearchWords(this.functions);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void learnUsual().then(() => this.requestUpdate());
  }

  /** Words can be typed at once; a finger does not want a keyboard over half of the page. */
  protected override firstUpdated(): void {
    if (isPointerCoarse()) return;
    // After the dialog around it has opened, which gives the focus to its cross.
    requestAnimationFrame(() => this.renderRoot.querySelector('input')?.focus());
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('function') && !changed.has('functions')) return;
    this.renderRoot.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
    this.renderRoot.querySelector('article')?.scrollTo({ top: 0 });
  }

  protected override render(): TemplateResult {
    const found = this.#words.find(this.search);
    const asked = this.function.toUpperCase();
    const usual = usualNames(this.search);
    const opened = engineFunctions.has(asked) ? undefined : this.#opened(found);
    const title = opened?.name ?? (usual.includes(asked) ? asked : usual[0]);
    const count = found.length + (this.search === '' ? 0 : usual.length);
    return html`<nav aria-label="Functions">
        <input
          type="search"
          aria-label="Search functions"
          placeholder="Search: port, resonance, pad"
          .value=${this.search}
          @input=${(event: Event) => this.#seek((event.target as HTMLInputElement).value)}
          @keydown=${(event: KeyboardEvent) => this.#step(event, found)}
        />
        <p class="count" role="status">
          ${count === 0 ? 'No function says that: try another word.' : `${String(count)} function${count === 1 ? '' : 's'}`}
        </p>
        <div class="list" tabindex="-1">
          ${families(found).map(
            ([family, members]) =>
              html`<h3>${family}</h3>
                <ul>
                  ${members.map((each) => this.#entry(each.name, each === opened, each.words?.summary))}
                </ul>`,
          )}
          ${
            usual.length === 0
              ? nothing
              : html`<h3>The usual ones</h3>
                  <ul>
                    ${usual.map((name) => this.#entry(name, !opened && name === title, usualOf(name)?.says))}
                  </ul>`
          }
        </div>
      </nav>
      <article tabindex="0" aria-label=${title ?? 'No function'}>
        ${opened ? this.#page(opened) : title === undefined ? nothing : this.#usual(title, usualOf(title))}
      </article>`;
  }

  #opened(found: readonly FunctionDescription[]): FunctionDescription | undefined {
    return this.functions.get(this.function.toUpperCase()) ?? found[0];
  }

  #entry(name: string, isOpened: boolean, summary: string | undefined): TemplateResult {
    return html`<li>
      <button
        aria-current=${isOpened ? 'true' : nothing}
        title=${summary ?? nothing}
        @click=${() => (this.function = name)}
      >
        ${name}
      </button>
    </li>`;
  }

  #usual(name: string, usual: Usual | undefined): TemplateResult {
    return html`<h2>${name}(${usual?.takes})</h2>
      <p>${usual?.says ?? `${unfetched}: what is said of this function.`}</p>
      ${usual ? this.#example(usual.example) : nothing}
      ${/\[/.test(usual?.takes ?? '') ? html`<p>What stands in square brackets may be left out.</p>` : nothing}`;
  }

  #page(opened: FunctionDescription): TemplateResult {
    const { parameters, returns, words } = opened;
    return html`<h2>${signatureOf(opened)}</h2>
      <p>${words?.summary ?? `${unfetched}: what is said of this function.`}</p>
      <h3>What it takes</h3>
      <dl>
        ${Object.entries(parameters).map(
          ([name, parameter]) =>
            html`<div>
              <dt><code>${name}</code></dt>
              <dd>${parameter.summary}<small>${parameterWords(parameter)}</small></dd>
            </div>`,
        )}
      </dl>
      <h3>What it gives</h3>
      <p>${words?.gives}<small>${resultWords(returns)}</small></p>
      ${words ? this.#said(words) : nothing}`;
  }

  #example(example: string): TemplateResult {
    return html`<h3>Example</h3>
      <p class="example"><code>${example}</code></p>
      <button class="use" @click=${() => this.#use(example)}>Put it into the selected cell</button>`;
  }

  #said({ example, remarks, source }: FunctionWords): TemplateResult {
    return html`${this.#example(example)}
      ${
        remarks
          ? html`<h3>Remarks</h3>
              <p>${remarks}</p>`
          : nothing
      }
      <h3>Source</h3>
      <p>${source.title}; ${source.at}</p>`;
  }

  #seek(text: string): void {
    this.search = text;
    this.function = this.#words.find(text)[0]?.name ?? '';
  }

  /** The arrows go through what was found without leaving the search. */
  #step(event: KeyboardEvent, found: readonly FunctionDescription[]): void {
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const opened = this.#opened(found);
    const at = opened ? found.indexOf(opened) : -1;
    this.function = found[Math.max(0, Math.min(found.length - 1, at + by))]?.name ?? '';
  }

  #use(formula: string): void {
    this.dispatchEvent(new CustomEvent('use-example', { detail: { formula } }));
  }
}

/** The functions of one family together, families in the order of their first. */
function families(found: readonly FunctionDescription[]): readonly (readonly [string, FunctionDescription[]])[] {
  const all = new Map<string, FunctionDescription[]>();
  for (const each of found) {
    const family = each.name.split('.')[0] ?? each.name;
    const members = all.get(family);
    if (members) members.push(each);
    else all.set(family, [each]);
  }
  return [...all];
}

/** The functions that every sheet of numbers knows, as far as they say what is searched. */
const usualNames = (search: string): readonly string[] =>
  [...engineFunctions].filter((name) =>
    `${name} ${usualOf(name)?.says ?? ''}`.toLowerCase().includes(search.trim().toLowerCase()),
  );

declare global {
  interface HTMLElementTagNameMap {
    'function-guide': FunctionGuide;
  }
}
