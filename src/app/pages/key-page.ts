import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { gridKeys } from '../../components/grid/keys.ts';
import { keyBindings } from '../key-bindings.ts';
import { actionWords, gridWords } from './key-words.ts';

interface KeyRow {
  readonly key: string;
  readonly control?: true;
  readonly alt?: true;
  readonly shift?: true;
  readonly words: string;
}

/** What the grid and the formula line do with plain typing, which no table of keys holds. */
const typing: readonly KeyRow[] = [
  { key: 'Any letter or digit', words: 'Types over the cell; then an arrow keeps it and goes on' },
  { key: '=', words: 'Begins a formula' },
  { key: 'Enter', words: 'The cell below; with Shift the one above' },
  { key: 'Tab', words: 'The next cell; with Shift the one before' },
  { key: 'Any arrow', shift: true, words: 'Selects more or less' },
];

const line: readonly KeyRow[] = [
  { key: 'Enter', words: 'Keep what is written and go down; with Shift up' },
  { key: 'Tab', words: 'Keep it and go right, or take the word offered; with Shift left' },
  { key: 'Escape', words: 'Put back what was there, or close the list' },
  { key: 'ArrowUp', words: 'The word before in the list' },
  { key: 'ArrowDown', words: 'The next word in the list' },
  {
    key: 'Any arrow',
    words: 'After = or a sign: point at a cell; with Shift at several, with Ctrl to the edge of data',
  },
  { key: 'F4', words: 'Pin the reference, whole or by half, so that copies keep it' },
  { key: 'Space', control: true, words: 'Offer functions, names and cells' },
  { key: 'F1', words: 'The guide at the function being written' },
];

const gridRows = gridKeys.flatMap((each) => {
  const does = each.step ?? each.act;
  return does ? [{ ...each, words: gridWords[does] }] : [];
});

const groups: readonly { readonly title: string; readonly rows: readonly KeyRow[] }[] = [
  { title: 'Everywhere', rows: keyBindings.map((each) => ({ ...each, words: actionWords[each.action] })) },
  { title: 'In the sheet', rows: [...gridRows, ...typing] },
  { title: 'In the formula line', rows: line },
  {
    title: 'On the rule of a number',
    rows: [
      { key: 'ArrowLeft', words: 'A step down; with Shift ten' },
      { key: 'ArrowRight', words: 'A step up; with Shift ten' },
      { key: 'Escape', words: 'Put back' },
    ],
  },
];

const symbols: Readonly<Record<string, string>> = {
  ArrowUp: '↑',
  ArrowDown: '↓',
  ArrowLeft: '←',
  ArrowRight: '→',
  PageUp: 'Page up',
  PageDown: 'Page down',
  ContextMenu: 'Menu key',
};

const nameOf = (key: string): string => symbols[key] ?? (key.length === 1 ? key.toUpperCase() : key);

const pressed = ({ key, control, alt, shift }: KeyRow): readonly string[] => [
  ...(control ? ['Ctrl'] : []),
  ...(alt ? ['Alt'] : []),
  ...(shift ? ['Shift'] : []),
  key,
];

/** All keys, in groups; those that do the same stand in one row. */
@customElement('key-page')
export class KeyPage extends LitElement {
  static override styles = css`
    :host {
      display: block;
      columns: 2 300px;
      column-gap: 32px;
    }
    section {
      break-inside: avoid-column;
      margin-bottom: 16px;
    }
    section:nth-of-type(2) {
      break-inside: auto;
    }
    h3 {
      margin: 0 0 4px;
      font-size: 15px;
      line-height: 20px;
      font-weight: 600;
    }
    dl {
      margin: 0;
    }
    div {
      display: grid;
      grid-template-columns: 128px 1fr;
      gap: 10px;
      padding: 4px 0;
      border-bottom: 1px solid var(--line);
      break-inside: avoid;
    }
    dt {
      color: var(--ink2);
      font-size: 12.5px;
    }
    dd {
      margin: 0;
    }
    kbd {
      display: inline-block;
      padding: 0 5px;
      border: 1px solid var(--line2);
      border-radius: 4px;
      background: var(--panel);
      color: var(--ink);
      font: 12px/18px var(--sans);
    }
  `;

  protected override render(): TemplateResult[] {
    return groups.map(
      ({ title, rows }) =>
        html`<section>
          <h3>${title}</h3>
          <dl>
            ${[...new Set(rows.map(({ words }) => words))].map((words) => {
              const alike = rows.filter((row) => row.words === words);
              return html`<div>
                <dt>${alike.map((row, index) => html`${index > 0 ? 'or ' : ''}${keysOf(row)}`)}</dt>
                <dd>${words}</dd>
              </div>`;
            })}
          </dl>
        </section>`,
    );
  }
}

const keysOf = (row: KeyRow): TemplateResult[] => pressed(row).map((key) => html`<kbd>${nameOf(key)}</kbd> `);

declare global {
  interface HTMLElementTagNameMap {
    'key-page': KeyPage;
  }
}
