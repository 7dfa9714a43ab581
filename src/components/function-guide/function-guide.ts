import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { catalogue } from '../../../functions/index.ts';
import type { AnyFunction } from '../../../functions/define.ts';
import { sources } from '../../../functions/sources.ts';
import { parameterWords, resultWords, signatureOf } from './parameter-words.ts';
import { guideStyles } from './styles.ts';

const familyOf = (name: string): string => name.split('.')[0] ?? name;

/** Every function with all that its declaration says: what it takes and gives, where it comes from, an example.
 *  @fires use-example - The example is wanted in a cell; `detail.formula`. */
@customElement('function-guide')
export class FunctionGuide extends LitElement {
  static override styles = guideStyles;

  /** The function that is opened; without regard to case. */
  @property() function = '';
  @state() private search = '';

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('function')) this.renderRoot.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
  }

  protected override render(): TemplateResult {
    const found = this.#found;
    const opened = catalogue.find(({ name }) => name === this.function.toUpperCase()) ?? found[0];
    const families = [...new Set(found.map(({ name }) => familyOf(name)))];
    return html`<nav aria-label="Functions">
        <input
          type="search"
          aria-label="Search functions"
          placeholder="Search: port, resonance, pad"
          .value=${this.search}
          @input=${(event: Event) => this.#seek((event.target as HTMLInputElement).value)}
        />
        <p class="count" role="status">
          ${found.length === 0 ? 'No function says that: try another word.' : `${String(found.length)} functions`}
        </p>
        <div class="list" tabindex="-1">
          ${families.map(
            (family) =>
              html`<h3>${family}</h3>
                <ul>
                  ${found.filter(({ name }) => familyOf(name) === family).map((each) => this.#entry(each, opened))}
                </ul>`,
          )}
        </div>
      </nav>
      <article tabindex="0" aria-label=${opened ? opened.name : 'No function'}>
        ${opened ? this.#page(opened) : nothing}
      </article>`;
  }

  get #found(): readonly AnyFunction[] {
    const words = this.search.toLowerCase().split(/\s+/).filter(Boolean);
    return catalogue.filter((each) => {
      const text = `${each.name} ${each.summary} ${Object.values(each.parameters)
        .map(({ summary }) => summary)
        .join(' ')}`.toLowerCase();
      return words.every((word) => text.includes(word));
    });
  }

  #entry(each: AnyFunction, opened: AnyFunction | undefined): TemplateResult {
    return html`<li>
      <button
        aria-current=${each === opened ? 'true' : nothing}
        title=${each.summary}
        @click=${() => (this.function = each.name)}
      >
        ${each.name}
      </button>
    </li>`;
  }

  #page(opened: AnyFunction): TemplateResult {
    const { parameters, returns, source, example, remarks } = opened;
    return html`<h2>${signatureOf(opened)}</h2>
      <p>${opened.summary}</p>
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
      <p>${returns.summary}<small>${resultWords(returns)}</small></p>
      <h3>Example</h3>
      <p class="example"><code>${example.formula}</code></p>
      <button class="use" @click=${() => this.#use(example.formula)}>Put it into the selected cell</button>
      ${
        remarks
          ? html`<h3>Remarks</h3>
              <p>${remarks}</p>`
          : nothing
      }
      <h3>Source</h3>
      <p>${sources[source.source].title}${source.at ? html`; ${source.at}` : nothing}</p>`;
  }

  #seek(text: string): void {
    this.search = text;
    this.function = this.#found[0]?.name ?? '';
  }

  #use(formula: string): void {
    this.dispatchEvent(new CustomEvent('use-example', { detail: { formula } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'function-guide': FunctionGuide;
  }
}
