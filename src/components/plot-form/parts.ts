import { html, nothing, svg, type TemplateResult } from 'lit';
import type { BetterEnd, Line } from '../../document/types.ts';
import { kinds, lineWords, type Offers, type PlotDraft, type Remark, type SeriesDraft } from './data.ts';
import { textField, wordField } from './fields.ts';

export type PartList = 'series' | 'limits' | 'marks';

/** A form being filled. */
export interface Filling {
  readonly draft: PlotDraft;
  readonly offers: Offers;
  /** What is said at a field by now. */
  remark(at: string): Remark | undefined;
  change(change: Partial<PlotDraft>): void;
  add(list: PartList): void;
  leaveOut(list: PartList, index: number): void;
}

const lines = Object.entries(lineWords);
const sample = (line: string): TemplateResult =>
  html`<svg viewBox="0 0 36 8" aria-hidden="true">${svg`<path class="curve ${line}" d="M0 4H36" />`}</svg>`;

/** One thing that is drawn: where it stands, what it is called, how its line looks. */
export function seriesFields(filling: Filling, index: number): TemplateResult {
  const { draft, offers, remark } = filling;
  const fields = kinds[draft.kind];
  const series = draft.series[index];
  if (!series) return html``;
  const table = offers.columns[index];
  const at = `series.${String(index)}`;
  const change = (part: Partial<SeriesDraft>): void =>
    filling.change({ series: draft.series.with(index, { ...series, ...part }) });
  const field = (name: 'cell' | 'label' | 'across' | 'names' | 'column' | 'line', label: string) => ({
    at: `${at}.${name}`,
    label,
    value: series[name],
    remark: remark(`${at}.${name}`),
    change: (value: string) => change({ [name]: value }),
  });
  const column = (name: 'column' | 'across' | 'names', label: string, words: readonly string[], without: string) =>
    wordField(field(name, label), [['', without], ...words.map((word) => [word, word] as const)]);
  return html`<fieldset class="rows">
    ${
      fields.several
        ? html`<legend>${draft.series.length > 1 ? `${fields.series} ${String(index + 1)}` : fields.series}</legend>`
        : nothing
    }
    ${textField(field('cell', fields.area ? 'Cells' : 'Cell'), { list: 'offered-series' })}
    ${fields.labels ? textField(field('label', 'Name beside it'), { placeholder: offers.labels.get(`${at}.label`) ?? '' }) : nothing}
    ${fields.lines ? wordField(field('line', 'Style'), lines, sample(series.line)) : nothing}
    ${
      table
        ? html`${
            draft.kind === 'shapes'
              ? column('column', 'Lies on ground number', table.numbers, 'All on one')
              : column('column', 'Values', table.numbers, 'Choose…')
          }
          ${fields.across ? column('across', 'Along the bottom', table.numbers, 'Choose…') : nothing}
          ${fields.names ? column('names', 'Names', table.words, 'None') : nothing}`
        : html`${fields.across ? textField(field('across', 'Along the bottom'), { list: 'offered-beside' }) : nothing}
          ${fields.names ? textField(field('names', 'Their names'), { list: 'offered-beside' }) : nothing}`
    }
    ${draft.series.length > 1 ? leaveOut(filling, 'series', index, `${fields.series} ${String(index + 1)}`) : nothing}
  </fieldset>`;
}

export function limitFields(filling: Filling): TemplateResult {
  const { draft } = filling;
  return html`<h3>Limits</h3>
    ${draft.limits.map((limit, index) => {
      const change = (part: Partial<typeof limit>): void =>
        filling.change({ limits: draft.limits.with(index, { ...limit, ...part }) });
      return html`<fieldset class="rows">
        <legend>Limit ${index + 1}</legend>
        ${markedFields(filling, 'limits', index, change)}
        ${wordField(
          {
            at: `limits.${String(index)}.forbidden`,
            label: 'Forbidden',
            value: limit.forbidden,
            remark: undefined,
            change: (forbidden) => change({ forbidden: forbidden === 'below' ? 'below' : 'above' }),
          },
          [
            ['above', 'above it'],
            ['below', 'below it'],
          ],
        )}
        ${leaveOut(filling, 'limits', index, `limit ${String(index + 1)}`)}
      </fieldset>`;
    })}
    ${addButton(filling, 'limits', 'Add a limit', 'A cell with a number that is not to be passed: a red line, hatched on its forbidden side.')}`;
}

export function markFields(filling: Filling): TemplateResult {
  const { draft } = filling;
  return html`<h3>Marks</h3>
    ${draft.marks.map(
      (mark, index) =>
        html`<fieldset class="rows">
          <legend>Mark ${index + 1}</legend>
          ${markedFields(filling, 'marks', index, (part) => filling.change({ marks: draft.marks.with(index, { ...mark, ...part }) }))}
          ${leaveOut(filling, 'marks', index, `mark ${String(index + 1)}`)}
        </fieldset>`,
    )}
    ${addButton(
      filling,
      'marks',
      'Add a mark',
      `A cell with ${kinds[draft.kind].across ? 'a number of the axis along the bottom' : 'a frequency'}: an upright line.`,
    )}`;
}

function markedFields(
  { draft, offers, remark }: Filling,
  list: 'limits' | 'marks',
  index: number,
  change: (part: { readonly cell?: string; readonly label?: string }) => void,
): TemplateResult {
  const at = `${list}.${String(index)}`;
  const field = (name: 'cell' | 'label', label: string) => ({
    at: `${at}.${name}`,
    label,
    value: draft[list][index]?.[name] ?? '',
    remark: remark(`${at}.${name}`),
    change: (value: string) => change({ [name]: value }),
  });
  return html`${textField(field('cell', 'Cell'), { list: `offered-${list}` })}
  ${textField(field('label', 'Name beside it'), { placeholder: offers.labels.get(`${at}.label`) ?? '' })}`;
}

/** Width and height of what shapes lie on. */
export const groundFields = (filling: Filling): TemplateResult =>
  html`<h3>What they lie on</h3>
    <p class="hint quiet">Two cells: how wide and how high the panel or the sheet of wood is.</p>
    <div class="pairs">${pair(filling, 'ground', ['Width, a cell', 'Height, a cell'], 'offered-sizes')}</div>`;

/** The ends of the axes and, for points, which ends are the better ones. */
export function axisFields(filling: Filling): TemplateResult | typeof nothing {
  const { draft, offers, remark } = filling;
  const fields = kinds[draft.kind];
  if (!fields.horizontal) return nothing;
  const better = (index: 0 | 1, label: string): TemplateResult =>
    wordField(
      {
        at: `best.${String(index)}`,
        label,
        value: draft.best[index],
        remark: remark(`best.${String(index)}`),
        change: (end) => {
          const [across, up] = draft.best;
          const typed = end as BetterEnd | '';
          filling.change({ best: index === 0 ? [typed, up] : [across, typed] });
        },
      },
      [
        ['', 'not said'],
        ['low', 'less is better'],
        ['high', 'more is better'],
      ],
    );
  return html`<h3>Axes</h3>
    <p class="hint quiet">Ends left empty are found from what is drawn.</p>
    <div class="pairs axes">
      ${pair(filling, 'horizontal', ['Bottom, from', 'to'], undefined, offers.horizontal)}
      ${fields.vertical ? pair(filling, 'vertical', ['Up, from', 'to']) : nothing}
      ${fields.best ? html`${better(0, 'Along the bottom')} ${better(1, 'Upwards')}` : nothing}
    </div>`;
}

const pair = (
  { draft, remark, change }: Filling,
  name: 'ground' | 'horizontal' | 'vertical',
  labels: readonly [string, string],
  list?: string,
  found: readonly [string, string] = ['', ''],
): TemplateResult[] =>
  ([0, 1] as const).map((end) =>
    textField(
      {
        at: `${name}.${String(end)}`,
        label: labels[end],
        value: draft[name][end],
        remark: remark(`${name}.${String(end)}`),
        change: (value) => {
          const [first, second] = draft[name];
          change({ [name]: end === 0 ? [value, second] : [first, value] });
        },
      },
      { ...(list && { list }), placeholder: found[end] },
    ),
  );

export const addButton = ({ add }: Filling, list: PartList, words: string, hint: string): TemplateResult =>
  html`<div class="bar">
    <button type="button" id=${`add-${list}`} @click=${() => add(list)}>${words}</button>
    <p class="hint quiet">${hint}</p>
  </div>`;

const leaveOut = (filling: Filling, list: PartList, index: number, what: string): TemplateResult =>
  html`<button
    type="button"
    class="out"
    aria-label=${`Leave out ${what}`}
    @click=${() => filling.leaveOut(list, index)}
  >
    Leave out
  </button>`;

/** A further series looks unlike those there are. */
export const nextLine = (series: readonly SeriesDraft[]): Line =>
  (Object.keys(lineWords) as Line[]).find((line) => series.every((each) => each.line !== line)) ?? 'other';
