import { QuestionError } from '../analysis/place-error.ts';
import { settingText } from '../analysis/setting-text.ts';
import type { SetInput, Span, Watch } from '../analysis/subject-types.ts';
import type { Sweep } from '../analysis/sweep-types.ts';
import type { Analyst } from '../analysis/types.ts';
import type { Answer, Setting } from '../components/ask/data.ts';
import type { OctavoDocument } from '../document/types.ts';
import { parseQuantity } from '../units/parse.ts';
import { standingSaid } from './ask-drawn.ts';
import { emptyAnswer, rangeWords } from './ask-found.ts';
import { spanOf, type Asking } from './ask-question.ts';

/** So many values are tried over the range. */
const TRIED = 201;
const DIGITS = 4;

/** The values of one input at which every verdict of the document is good: of each stretch that is, the tried value nearest to the
 *  present one. Where there is none, the one with the fewest verdicts short of good. */
export async function everyVerdict(
  analyst: Analyst,
  asking: Asking,
  given: readonly SetInput[],
  watch: Watch,
  note: string,
): Promise<Answer> {
  const { subject } = asking;
  const verdicts = subject.results.filter(({ kind }) => kind === 'verdict');
  const [first] = verdicts;
  if (!first) throw new QuestionError('No cell of this document holds a verdict: ask for a number instead.');
  const document = withTexts(asking.document, given);
  const span: Span = { ...spanOf(asking, asking.wish.input), steps: TRIED };
  const swept = await analyst.sweep({ document, input: span, results: verdicts }, watch);
  const isGood = asking.wish.target === 'clear' ? ['good', 'caution'] : ['good'];
  const found = nearestGood(swept, (at) => isGood.includes(swept.worst[at] ?? 'problem'));
  const { input, values } = swept;
  const range = rangeWords(input, span.from, span.to, document.system);
  const sets = given.map(({ sheet, cell, label, text }) => ({ sheet, cell, label, text }));
  const settings: Setting[] = [];
  for (const at of found) {
    const value = values[at] ?? 0;
    const short = settingText(input, value, DIGITS);
    const rounded = parseQuantity(short)?.value ?? value;
    const checked = await analyst.sweep(
      {
        document,
        input: { ...span, from: rounded, to: rounded === span.to ? span.from : span.to, steps: 2 },
        results: verdicts,
      },
      watch,
    );
    // Where rounding would spoil it, all digits are typed.
    const text = isGood.includes(checked.worst[0] ?? 'problem') ? short : settingText(input, value);
    settings.push({ sheet: input.sheet, cell: input.cell, label: input.label, text });
  }
  const aim = asking.wish.target === 'clear' ? 'no verdict fails' : 'every verdict is good';
  return {
    ...emptyAnswer,
    said:
      found.length > 0
        ? `With ${settings.map(({ label, text }) => `${label} ${text}`).join(' or ')} ${aim}; ${TRIED} values tried, ${range}.`
        : `At none of ${TRIED} values, ${range}, it holds that ${aim}. ${bestSaid(swept)}`,
    found: settings.map((set, index) => ({
      words: `${set.label} ${set.text}`,
      consequence: standingSaid(swept, found[index] ?? 0),
      sets: [...sets, set],
    })),
    tables: [
      {
        table: {
          kind: 'table',
          title: 'Each verdict where it stands now',
          columns: [{ name: 'Verdict', quantity: 'text' }],
          rows: verdicts.map(({ label }) => [label]),
        },
        live: verdicts,
        isForSheet: true,
      },
    ],
    note,
  };
}

/** Of each stretch the place nearest to the present value. */
function nearestGood({ values, input }: Sweep, isGood: (at: number) => boolean): number[] {
  const present = typeof input.present === 'number' ? input.present : 0;
  const away = (at: number): number => Math.abs((values[at] ?? 0) - present);
  const nearest: number[] = [];
  for (const at of values.keys()) {
    if (!isGood(at)) continue;
    const last = nearest.at(-1);
    if (last === undefined || !isGood(at - 1)) nearest.push(at);
    else if (away(at) < away(last)) nearest[nearest.length - 1] = at;
  }
  return nearest;
}

/** The value at which the fewest verdicts are short of good. */
function bestSaid({ columns, values, input }: Sweep): string {
  const short = values.map((_, at) =>
    columns.filter(({ cells }) => {
      const cell = cells[at];
      return !(cell?.kind === 'record' && cell.record.kind === 'verdict' && cell.record.status === 'good');
    }),
  );
  const best = short.reduce((least, each, at) => (each.length < (short[least]?.length ?? 0) ? at : least), 0);
  const names = (short[best] ?? []).map(({ result }) => `“${result.label}”`).slice(0, 5);
  return `Nearest is ${settingText(input, values[best] ?? 0, DIGITS)}, where ${short[best]?.length ?? 0} are not good: ${names.join(', ')}.`;
}

const withTexts = (document: OctavoDocument, given: readonly SetInput[]): OctavoDocument => ({
  ...document,
  sheets: document.sheets.map((sheet) => {
    const here = given.filter((each) => each.sheet === sheet.id);
    if (here.length === 0) return sheet;
    const cells = new Map(sheet.cells);
    for (const { cell, text } of here) cells.set(cell, { ...cells.get(cell), text });
    return { ...sheet, cells };
  }),
});
