import { html, nothing, type TemplateResult } from 'lit';
import type { CellChoice, Choices, Moved, Wish } from './data.ts';

/** Tells what changed in the form. */
export type Change = (change: Partial<Wish>) => void;

const valueOf = (event: Event): string => (event.target as HTMLInputElement | HTMLSelectElement).value;

/** A short text.
 *  @param spoken - What it is called where the label alone does not say it. */
export const textField = (
  label: string,
  value: string,
  type: (value: string) => void,
  spoken = label,
  width = 'short',
): TemplateResult =>
  html`<label class=${width}
    >${label}
    <input autocomplete="off" aria-label=${spoken} .value=${value} @change=${(event: Event) => type(valueOf(event))}
  /></label>`;

/** One of some cells, under the headings of their groups. */
export function cellField(
  label: string,
  options: readonly CellChoice[],
  present: string,
  choose: (id: string, field: HTMLSelectElement) => void,
): TemplateResult {
  const groups = [...new Set(options.map(({ group }) => group))];
  return html`<label
    >${label}
    <select @change=${(event: Event) => choose(valueOf(event), event.target as HTMLSelectElement)}>
      ${groups.map(
        (group) =>
          html`<optgroup label=${group}>
            ${options
              .filter((each) => each.group === group)
              .map(({ id, label: words }) => html`<option value=${id} ?selected=${id === present}>${words}</option>`)}
          </optgroup>`,
      )}
    </select></label
  >`;
}

/** Takes one more cell into a list, and is ready for the next. */
export const addField = (label: string, options: readonly CellChoice[], add: (id: string) => void): TemplateResult =>
  cellField(label, [{ id: '', label: 'Choose…', group: 'Add' }, ...options], '', (id, field) => {
    field.value = '';
    if (id !== '') add(id);
  });

/** One of a few words. */
export const wordField = <T extends string>(
  label: string,
  words: Readonly<Record<T, string>>,
  present: T,
  choose: (word: T) => void,
): TemplateResult =>
  html`<label
    >${label}
    <select @change=${(event: Event) => choose(valueOf(event) as T)}>
      ${Object.entries<string>(words).map(
        ([word, said]) => html`<option value=${word} ?selected=${word === present}>${said}</option>`,
      )}
    </select></label
  >`;

export const tickField = (label: string, isTicked: boolean, tick: (isTicked: boolean) => void): TemplateResult =>
  html`<label class="tick"
    ><input
      type="checkbox"
      .checked=${isTicked}
      @change=${(event: Event) => tick((event.target as HTMLInputElement).checked)}
    />
    ${label}</label
  >`;

/** The two ends between which something moves. */
export const endFields = (label: string, moved: Moved, type: (end: Partial<Moved>) => void): TemplateResult[] =>
  (['from', 'to'] as const).map((end) =>
    textField(end, moved[end], (value) => type({ [end]: value }), `${label}, ${end}`),
  );

export const resultField = (label: string, choices: Choices, { result }: Wish, change: Change): TemplateResult =>
  cellField(label, choices.results, result, (id) => change({ result: id, target: '' }));

export const targetField = (choices: Choices, { target }: Wish, change: Change): TemplateResult =>
  textField(choices.unit === '' ? 'Shall be' : `Shall be, in ${choices.unit}`, target, (value) =>
    change({ target: value }),
  );

/** Inputs that are set to something else first. */
export const givenField = ({ given }: Wish, change: Change): TemplateResult | typeof nothing =>
  given === ''
    ? nothing
    : html`<span class="bar"
        >with ${given} <button type="button" @click=${() => change({ given: '' })}>Leave that out</button></span
      >`;
