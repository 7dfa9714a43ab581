import { QuestionError } from '../analysis/place-error.ts';
import { settingText } from '../analysis/setting-text.ts';
import { standingOf, type SetInput, type Span, type Watch } from '../analysis/subject-types.ts';
import type { Sweep } from '../analysis/sweep-types.ts';
import type { Analyst } from '../analysis/types.ts';
import type { Answer, Setting } from '../components/ask/data.ts';
import { withText } from '../document/sheets.ts';
import { parseQuantity } from '../units/parse.ts';
import { standingSaid } from './ask-sweep.ts';
import { emptyAnswer, givenSaid, rangeWords, setWords, textTable } from './ask-found.ts';
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
  const document = given.reduce((made, each) => withText(made, each, each.text), asking.document);
  const span: Span = { ...spanOf(asking, asking.wish.input), steps: TRIED };
  const swept = await analyst.sweep({ document, input: span, results: verdicts }, watch);
  const isGood = asking.wish.target === 'clear' ? ['good', 'caution'] : ['good'];
  const found = nearestGood(swept, (at) => isGood.includes(swept.worst[at] ?? 'problem'));
  const { input, values } = swept;
  const nearest = fewestShort(swept);
  const range = rangeWords(input, span.from, span.to, document.system);
  const settings: Setting[] = [];
  const listed = found.length > 0 ? found : [nearest.at];
  for (const at of listed) {
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
    const text =
      found.length === 0 || isGood.includes(checked.worst[0] ?? 'problem') ? short : settingText(input, value);
    settings.push({ sheet: input.sheet, cell: input.cell, label: input.label, text });
  }
  const aim = asking.wish.target === 'clear' ? 'no verdict fails' : 'every verdict is good';
  const answered =
    found.length > 0
      ? `With ${settings.map(({ label, text }) => `${label} ${text}`).join(' or ')} ${aim}; ${TRIED} values tried, ${range}.`
      : `At none of ${TRIED} values, ${range}, it holds that ${aim}. Nearest is ${settingText(input, values[nearest.at] ?? 0, DIGITS)}: ${named(nearest.labels)}.`;
  return {
    ...emptyAnswer,
    said: `${givenSaid(given)} ${answered}`.trim(),
    found: settings.map((set, index) => ({
      words: setWords([...given, set]),
      consequence: found.length > 0 ? standingSaid(swept, listed[index] ?? 0) : `Nearest: ${named(nearest.labels)}`,
      sets: [...given, set],
    })),
    tables: [
      {
        table: textTable(
          'Each verdict where it stands now',
          ['Verdict'],
          verdicts.map(({ label }) => [label]),
        ),
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

/** The place with the fewest verdicts short of good, of several the one nearest to the present value; and which verdicts those are. */
function fewestShort({ columns, values, input }: Sweep): { readonly at: number; readonly labels: readonly string[] } {
  const present = typeof input.present === 'number' ? input.present : 0;
  const short = values.map((value, at) => ({
    at,
    away: Math.abs(value - present),
    labels: columns
      .filter(({ cells }) => standingOf(cells[at] ?? { kind: 'empty' }) !== 'good')
      .map(({ result }) => result.label),
  }));
  const [best] = short.toSorted((a, b) => a.labels.length - b.labels.length || a.away - b.away);
  return best ?? { at: 0, labels: [] };
}

const named = (labels: readonly string[]): string =>
  `${labels.length} not good: ${labels
    .slice(0, 4)
    .map((label) => `“${label}”`)
    .join(', ')}${labels.length > 4 ? ', …' : ''}`;
