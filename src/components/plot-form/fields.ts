import { html, nothing, type TemplateResult } from 'lit';
import type { Offer, Remark } from './data.ts';

interface Field {
  /** The name of the field, as remarks have it. */
  readonly at: string;
  readonly label: string;
  readonly value: string;
  readonly remark: Remark | undefined;
  readonly change: (value: string) => void;
}

const idOf = (at: string): string => at.replaceAll('.', '-');

/** A short text, with cells that are offered for it. `list` is the id of the list. */
export const textField = (
  { at, label, value, remark, change }: Field,
  { list, placeholder = '' }: { readonly list?: string; readonly placeholder?: string } = {},
): TemplateResult =>
  html`<div class="field">
    <label for=${idOf(at)}>${label}</label>
    <input
      id=${idOf(at)}
      list=${list ?? nothing}
      placeholder=${placeholder || nothing}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${remark?.isWrong ? 'true' : nothing}
      aria-describedby=${remark ? `${idOf(at)}-said` : nothing}
      .value=${value}
      @input=${(event: Event) => change((event.target as HTMLInputElement).value)}
    />
    ${said(at, remark)}
  </div>`;

/** One of some words; `words` by what they stand for. */
export const wordField = (
  { at, label, value, remark, change }: Field,
  words: readonly (readonly [string, string])[],
  mark: unknown = nothing,
): TemplateResult =>
  html`<div class="field">
    <label for=${idOf(at)}>${label}${mark}</label>
    <select
      id=${idOf(at)}
      aria-invalid=${remark?.isWrong ? 'true' : nothing}
      aria-describedby=${remark ? `${idOf(at)}-said` : nothing}
      .value=${value}
      @change=${(event: Event) => change((event.target as HTMLSelectElement).value)}
    >
      ${words.map(([word, told]) => html`<option value=${word} ?selected=${word === value}>${told}</option>`)}
    </select>
    ${said(at, remark)}
  </div>`;

const said = (at: string, remark: Remark | undefined): TemplateResult | typeof nothing =>
  remark
    ? html`<small id=${`${idOf(at)}-said`} class=${remark.isWrong ? 'wrong' : 'note'}>${remark.text}</small>`
    : nothing;

/** The cells that some fields offer. */
export const offerList = (id: string, offers: readonly Offer[]): TemplateResult =>
  html`<datalist id=${id}>${offers.map(({ cell, words }) => html`<option value=${cell}>${words}</option>`)}</datalist>`;
