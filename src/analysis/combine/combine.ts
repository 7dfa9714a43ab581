import type { CellValue } from '../../engine/types.ts';
import { parseQuantity } from '../../units/parse.ts';
import { BestRows } from '../best-rows.ts';
import { Breath } from '../breathe.ts';
import type { Combination, Combine, CombineQuestion } from './types.ts';
import { QuestionError } from '../subject/place-error.ts';
import { settingText } from '../subject/setting-text.ts';
import type { DocumentModel } from '../model/document-model.ts';
import type { Input, SetInput, Setting, Standing, Watch } from '../subject/types.ts';
import { inputAt, resultAt, worstOf } from '../sweep/sweep.ts';

/** So many combinations are computed at most. */
const MOST = 1_000_000;

/** Computes every combination of the values of some inputs, everything else as it stands.
 *  @throws An error in words for the reader where a cell is no input or no result, or there are too many. */
export async function combine(model: DocumentModel, question: CombineQuestion, watch?: Watch): Promise<Combine> {
  const inputs = question.inputs.map((place) => inputAt(model, place));
  const results = question.results.map((place) => resultAt(model, place));
  const { order } = question;
  const ordering = order ? resultAt(model, order.result) : undefined;
  const sizes = question.inputs.map(({ values }) => values.length);
  const of = sizes.reduce((product, size) => product * size, 1);
  if (inputs.length === 0 || of === 0) throw new QuestionError('Nothing varies: name an input and give it values.');
  if (new Set(inputs).size < inputs.length) throw new QuestionError('An input varies twice: name each once.');
  if (of > MOST)
    throw new QuestionError(`These are ${of} combinations, and at most ${MOST} are computed: take fewer values.`);
  if (!Number.isInteger(question.most) || question.most < 1)
    throw new QuestionError('At least one combination must be asked for.');

  const read = [...results, ...(ordering ? [ordering] : []), ...model.verdicts];
  const judgedFrom = read.length - model.verdicts.length;
  const runner = await model.runner(inputs, read);
  const breath = new Breath(watch);
  const best = new BestRows(question.most);
  const counts: Record<Standing, number> = { good: 0, caution: 0, fail: 0, problem: 0 };
  const settingsOf = (id: number): Setting[] => settingsAt(question, sizes, id);
  for (let id = 0; id < of; id++) {
    if (breath.isDue) await breath.take({ done: id, of });
    const settings = settingsOf(id);
    const values = runner.quick(settings) ?? (await runner.exact(settings));
    const worst = worstOf(values.slice(judgedFrom));
    counts[worst]++;
    if (question.works && (worst === 'fail' || worst === 'problem')) continue;
    best.offer(order ? scoreOf(values[results.length], order.by) : -id, id);
  }
  const rows: Combination[] = [];
  for (const { id } of best.sorted()) {
    breath.check();
    const settings = settingsOf(id);
    const values = await runner.exact(settings);
    const set = inputs.map((input, index) => setOf(input, settings[index] ?? ''));
    rows.push({ set, results: values.slice(0, results.length), worst: worstOf(values.slice(judgedFrom)) });
    await breath.take();
  }
  return { inputs, results, of, counts, rows };
}

/** The last input varies fastest. */
function settingsAt({ inputs }: CombineQuestion, sizes: readonly number[], id: number): Setting[] {
  const settings: Setting[] = [];
  let rest = id;
  for (let index = inputs.length - 1; index >= 0; index--) {
    const size = sizes[index] ?? 1;
    settings.unshift(inputs[index]?.values[rest % size] ?? '');
    rest = Math.floor(rest / size);
  }
  return settings;
}

/** What has no number is never listed. */
const scoreOf = (value: CellValue | undefined, by: 'least' | 'most'): number =>
  value?.kind === 'number' ? (by === 'most' ? value.value : -value.value) : Number.NaN;

/** An input with what would be typed into it, and the value that this text has. */
export function setOf(input: Input, value: Setting, digits?: number): SetInput {
  const { sheet, cell, label } = input;
  const text = settingText(input, value, digits);
  const typed = typeof value === 'number' && digits !== undefined ? parseQuantity(text)?.value : undefined;
  return { sheet, cell, label, value: typed ?? value, text };
}
