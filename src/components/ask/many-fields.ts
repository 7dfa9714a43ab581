import { html, nothing, type TemplateResult } from 'lit';
import { aims, variedIn, type Choices, type LimitWish, type Varied, type Wish } from './data.ts';
import {
  addField,
  cellField,
  endFields,
  givenField,
  resultField,
  targetField,
  textField,
  tickField,
  wordField,
  type Change,
} from './fields.ts';

/** What a form of several inputs needs.
 *  `vary` takes a further input in. */
export interface Many {
  readonly wish: Wish;
  readonly choices: Choices;
  readonly change: Change;
  readonly vary: (id: string) => void;
}

/** Several inputs within bounds, and what is to be best. */
export const bestFields = (many: Many): TemplateResult => {
  const { wish, choices, change } = many;
  const { aim, band, keep } = wish;
  const bandTo = (at: 0 | 1) => (text: string) => change({ band: at === 0 ? [text, band[1]] : [band[0], text] });
  return html`${wordField('Wanted is', aims, aim, (word) => change({ aim: word }))}
  ${resultField('Of', choices, wish, change)} ${aim === 'nearest' ? targetField(choices, wish, change) : nothing}
  ${
    aim === 'flattest'
      ? html`${textField('between', band[0], bandTo(0), 'Flat between')}
        ${textField('and', band[1], bandTo(1), 'Flat between, and')}`
      : nothing
  }
  ${wordField(
    'While',
    { good: 'every verdict is good', clear: 'no verdict fails', any: 'verdicts are left aside' },
    keep,
    (word) => change({ keep: word }),
  )}
  ${limitRows(many)} ${variedRows(many, 'May move', (varied, type) => html`${endFields(varied.label, varied, type)}`)}
  ${givenField(wish, change)}`;
};

/** A row for each result that is to be kept above or below something, and a choice of one more. */
function limitRows({ wish: { limits }, choices, change }: Many): TemplateResult {
  return html`${limits.map((each) => {
    const type = (part: Partial<LimitWish>): void =>
      change({ limits: limits.map((other) => (other === each ? { ...each, ...part } : other)) });
    return html`<fieldset>
      <legend>Kept: ${each.label}</legend>
      <div class="bar">
        ${wordField('stays', { least: 'at least', most: 'at most' }, each.at, (at) => type({ at }))}
        ${textField('so much', each.text, (text) => type({ text }), `${each.label} stays so much`)}
        <button
          type="button"
          aria-label=${`Leave out ${each.label}`}
          @click=${() => change({ limits: limits.filter((other) => other !== each) })}
        >
          Leave out
        </button>
      </div>
    </fieldset>`;
  })}
  ${addField(
    'Keep a result too',
    choices.numbers.filter(({ id }) => !limits.some((each) => each.id === id)),
    (id) => {
      const label = choices.numbers.find((each) => each.id === id)?.label ?? '';
      change({ limits: [...limits, { id, label, at: 'most', text: '' }] });
    },
  )}`;
}

/** Every combination of some values, ranked. */
export const combineFields = (many: Many): TemplateResult => {
  const { wish, choices, change } = many;
  const { listed, order, keep, rows } = wish;
  return html`${variedRows(many, 'Varies', valuesField)} ${resultField('Ranked by', choices, wish, change)}
  ${wordField('Order', { least: 'least first', most: 'most first', typed: 'as the values stand' }, order, (word) =>
    change({ order: word }),
  )}
  ${textField('Rows', rows, (value) => change({ rows: value }))}
  ${tickField('only where no verdict fails', keep !== 'any', (isTicked) => change({ keep: isTicked ? 'clear' : 'any' }))}
  ${listed.map((id) => {
    const label = choices.results.find((each) => each.id === id)?.label ?? '';
    return html`<span class="bar"
      >shows ${label}
      <button
        type="button"
        aria-label=${`Leave out ${label}`}
        @click=${() => change({ listed: listed.filter((each) => each !== id) })}
      >
        Leave out
      </button></span
    >`;
  })}
  ${addField('Show too', choices.listed, (id) => change({ listed: [...listed, id] }))}`;
};

/** What may be changed so that nothing fails, and what counts. */
export const cheapestFields = (many: Many): TemplateResult => {
  const { wish, choices, change } = many;
  const { drivers, changes, cost, keep } = wish;
  return html`${
    choices.drivers.length === 0
      ? nothing
      : html`<fieldset>
            <legend>Drivers that may be changed</legend>
            <div class="bar">
              ${choices.drivers.map((name) =>
                tickField(name, drivers.includes(name), (isTicked) =>
                  change({ drivers: isTicked ? [...drivers, name] : drivers.filter((each) => each !== name) }),
                ),
              )}
            </div>
          </fieldset>
          ${wordField(
            'For one from',
            { whole: 'the whole shelf', own: 'your own drivers' },
            wish.isOwnShelf ? 'own' : 'whole',
            (word) => change({ isOwnShelf: word === 'own' }),
          )}`
  }
  ${cellField('Least of', choices.costs, cost, (id) => change({ cost: id }))}
  ${wordField(
    'Changes at once',
    { '1': 'one', '2': 'up to two', '3': 'up to three', '4': 'up to four' },
    changes as '1' | '2' | '3' | '4',
    (word) => change({ changes: word }),
  )}
  ${wordField(
    'What fails shall be',
    { good: 'good', clear: 'clear of failure' },
    keep === 'clear' ? 'clear' : 'good',
    (word) => change({ keep: word }),
  )}
  ${variedRows(
    many,
    'May be set',
    (varied, type) => html`${valuesField(varied, type)} ${cost === 'money' ? priceField(varied, type) : nothing}`,
  )}
  ${givenField(wish, change)}`;
};

const priceField = ({ label, price = '', unit = '' }: Varied, type: (part: Partial<Varied>) => void): TemplateResult =>
  textField(
    `one costs, by value${unit === '' ? '' : ` in ${unit}`}`,
    price,
    (text) => type({ price: text }),
    `What one of ${label} costs, by value${unit === '' ? '' : ` in ${unit}`}`,
    'values',
  );

const valuesField = ({ label, values }: Varied, type: (part: Partial<Varied>) => void): TemplateResult =>
  textField('to one of', values, (text) => type({ values: text }), `${label} to one of`, 'values');

/** A row for each input that may be set, and a choice of one more. */
function variedRows(
  { wish, choices, change, vary }: Many,
  label: string,
  fields: (varied: Varied, type: (part: Partial<Varied>) => void) => TemplateResult,
): TemplateResult {
  const list = variedIn(wish.kind);
  const varied = wish[list];
  return html`${varied.map((each) => {
    const type = (part: Partial<Varied>): void =>
      change({ [list]: varied.map((other) => (other.id === each.id ? { ...each, ...part } : other)) });
    return html`<fieldset>
      <legend>${label}: ${each.label}</legend>
      <div class="bar">
        ${fields(each, type)}
        <button
          type="button"
          aria-label=${`Leave out ${each.label}`}
          @click=${() => change({ [list]: varied.filter(({ id }) => id !== each.id) })}
        >
          Leave out
        </button>
      </div>
    </fieldset>`;
  })}
  ${addField(varied.length === 0 ? label : `${label} too`, choices.varied, vary)}`;
}
