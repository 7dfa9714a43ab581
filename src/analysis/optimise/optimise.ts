import { frequencies } from '../../../functions/values/grid.ts';
import type { CellValue, Place } from '../../engine/types.ts';
import { parseQuantity } from '../../units/parse.ts';
import { BestRows } from '../best-rows.ts';
import { Breath } from '../breathe.ts';
import { setOf } from '../combine/combine.ts';
import { descended } from './descent.ts';
import type { Bound, Objective, OptimiseQuestion, Optimum } from './types.ts';
import { placeError, QuestionError } from '../subject/place-error.ts';
import { settingText } from '../subject/setting-text.ts';
import type { Runner, DocumentModel } from '../model/document-model.ts';
import { standingOf, standings, type Input, type Result, type Watch } from '../subject/types.ts';
import { inputAt, resultAt, worstOf } from '../sweep/sweep.ts';

/** More inputs than these leave too much unseen. */
const MOST_INPUTS = 6;
/** Looks along each input, by how many inputs there are. */
const GRID = {
  compiled: [0, 401, 51, 15, 8, 5, 4],
  engine: [0, 41, 13, 7, 5, 4, 3],
} as const;
/** So many of the best places of the grid are followed downhill. */
const STARTS = 4;
/** What a verdict that is not kept weighs against the objective, in multiples of its present size. */
const BROKEN = 1e6;
/** Digits with which values are typed, the fewest first that serve. */
const DIGITS = [3, 4, 6, 9, undefined] as const;
/** So near the best counts as reaching it, as a share; how far a curve moves need not be so exact. */
const NEAR = { number: 1e-3, flatness: 5e-3 } as const;

/** Finds where some inputs, within bounds, make a result as small, large or flat as can be while verdicts are kept: a grid over
 *  the bounds, and from its best places downhill. A valley narrower than a step of the grid can be missed. What is given as found
 *  has been typed into the sheet.
 *  @throws An error in words for the reader where a cell is no input or no result, or bounds are none. */
export async function optimise(model: DocumentModel, question: OptimiseQuestion, watch?: Watch): Promise<Optimum> {
  const inputs = question.inputs.map((place) => inputAt(model, place));
  const bounds = question.inputs.map(({ range }, index) => boundsOf(inputs[index], range));
  if (inputs.length === 0 || inputs.length > MOST_INPUTS)
    throw new QuestionError(`From one to ${MOST_INPUTS} inputs may vary, but ${inputs.length} are named.`);
  if (new Set(inputs).size < inputs.length) throw new QuestionError('An input varies twice: name each once.');
  const result = objectiveAt(model, question.objective.result);
  if (result.kind !== (question.objective.kind === 'flattest' ? 'curve' : 'number'))
    throw placeError(
      model.document,
      result,
      question.objective.kind === 'flattest'
        ? 'no curve: only a curve can be flat'
        : 'no number: name a result that is one',
    );
  const verdicts = question.keep ? model.verdicts : [];
  const limits = (question.limits ?? []).map(({ at, value, ...place }) => ({
    at,
    value,
    result: numberAt(model, resultAt(model, place)),
  }));
  const runner = await model.runner(inputs, [result, ...limits.map((limit) => limit.result), ...verdicts]);
  const found = await new Optimiser(question, inputs, bounds, result, limits, runner, new Breath(watch)).find();
  return { ...found, worstBefore: worstOf(verdicts.map(({ present }) => present)) };
}

function numberAt({ document }: DocumentModel, result: Result): Result {
  if (result.kind === 'number') return result;
  throw placeError(document, result, 'no number: only a number has a limit');
}

/** A result, or an input in the place of one. */
function objectiveAt(model: DocumentModel, place: Place): Result {
  const input = model.input(place);
  if (!input || typeof input.present !== 'number') return resultAt(model, place);
  const { sheet, cell, label, quantity, unit, present } = input;
  return { sheet, cell, label, quantity, unit, kind: 'number', present: { kind: 'number', value: present } };
}

function boundsOf(input: Input | undefined, range = input?.range): readonly [number, number] {
  if (!input || typeof input.present !== 'number')
    throw new QuestionError(`${input?.label ?? ''} takes words, and words have no bounds.`);
  const [from, to] = range ?? [0, 0];
  if (!(Number.isFinite(from) && Number.isFinite(to) && from < to))
    throw new QuestionError(`The bounds of ${input.label} must be two numbers, the lower first.`);
  return [from, to];
}

class Optimiser {
  readonly #question: OptimiseQuestion;
  readonly #inputs: readonly Input[];
  readonly #bounds: readonly (readonly [number, number])[];
  readonly #result: Result;
  readonly #limits: Optimum['limits'];
  readonly #runner: Runner;
  readonly #breath: Breath;
  readonly #before: number;
  readonly #scale: number;
  #looked = 0;

  constructor(
    question: OptimiseQuestion,
    inputs: readonly Input[],
    bounds: readonly (readonly [number, number])[],
    result: Result,
    limits: Optimum['limits'],
    runner: Runner,
    breath: Breath,
  ) {
    this.#question = question;
    this.#inputs = inputs;
    this.#bounds = bounds;
    this.#result = result;
    this.#limits = limits;
    this.#runner = runner;
    this.#breath = breath;
    this.#before = valueOf(result.present, question.objective);
    this.#scale = Math.abs(question.objective.kind === 'nearest' ? question.objective.target : this.#before) || 1;
  }

  async find(): Promise<Omit<Optimum, 'worstBefore'>> {
    let lowest = Infinity;
    let place: readonly number[] = [];
    for (const start of await this.#starts()) {
      const end = await descended((at) => this.#cost(at), start);
      const cost = await this.#cost(end);
      if (cost < lowest) [lowest, place] = [cost, end];
    }
    const found = await this.#typed(this.#valuesAt(place));
    return {
      inputs: this.#inputs,
      result: this.#result,
      bounds: this.#bounds,
      limits: this.#limits,
      before: this.#before,
      looked: this.#looked,
      ...(found && { found }),
    };
  }

  /** The best places of a grid, ends included. */
  async #starts(): Promise<readonly (readonly number[])[]> {
    const count = this.#inputs.length;
    const steps = GRID[this.#runner.isCompiled ? 'compiled' : 'engine'][count] ?? 3;
    const placeAt = (id: number): number[] =>
      this.#inputs.map((_, index) => (Math.floor(id / steps ** index) % steps) / (steps - 1));
    const best = new BestRows(STARTS);
    const of = steps ** count;
    for (let id = 0; id < of; id++) {
      if (this.#breath.isDue) await this.#breath.take({ done: id, of });
      best.offer(-(await this.#cost(placeAt(id))), id);
    }
    return best.sorted().map(({ id }) => placeAt(id));
  }

  #valuesAt(place: readonly number[]): number[] {
    return this.#bounds.map(([from, to], index) => {
      const share = place[index] ?? 0;
      return share <= 0 ? from : share >= 1 ? to : from + share * (to - from);
    });
  }

  /** At once where the sheet is compiled and nobody waits to be heard. */
  #cost(place: readonly number[]): number | Promise<number> {
    this.#breath.check();
    this.#looked++;
    const values = this.#valuesAt(place);
    const quick = this.#breath.isDue ? undefined : this.#runner.quick(values);
    return quick ? this.#weigh(quick) : this.#waited(values);
  }

  async #waited(values: readonly number[]): Promise<number> {
    await this.#breath.take();
    return this.#weigh(await this.#runner.at(values));
  }

  /** Finite everywhere: each verdict that is not kept weighs more than any objective, and a limit the more the further it is missed. */
  #weigh([result = { kind: 'empty' }, ...others]: readonly CellValue[]): number {
    const value = valueOf(result, this.#question.objective);
    const verdicts = others.slice(this.#limits.length);
    const broken =
      verdicts.filter((verdict) => !this.#isKept(verdict)).length +
      this.#limits.reduce((sum, limit, index) => sum + missed(limit, others[index]), 0) +
      (Number.isNaN(value) ? 1 : 0);
    const sense = this.#question.objective.kind === 'most' ? -1 : 1;
    return (
      broken * BROKEN +
      (Number.isNaN(value) ? 0 : Math.max(-BROKEN / 2, Math.min(BROKEN / 2, (sense * value) / this.#scale)))
    );
  }

  #isKept(verdict: CellValue): boolean {
    return standings.indexOf(standingOf(verdict)) <= (this.#question.keep === 'good' ? 0 : 1);
  }

  /** Types the values with as few digits as serve and asks the sheet itself. Nothing where something would be broken. */
  async #typed(values: readonly number[]): Promise<Optimum['found']> {
    const limit = this.#weigh(await this.#runner.exact(values));
    if (limit >= BROKEN / 2) return undefined;
    const near = this.#question.objective.kind === 'flattest' ? NEAR.flatness : NEAR.number;
    for (const digits of DIGITS) {
      for (const candidate of digits === undefined ? [values] : this.#roundings(values, digits)) {
        const read = await this.#runner.exact(candidate, digits);
        if (this.#weigh(read) > limit + near * Math.max(Math.abs(limit), near)) continue;
        const [result = { kind: 'empty' }, ...others] = read;
        const count = this.#limits.length;
        return {
          set: this.#inputs.map((input, index) => setOf(input, candidate[index] ?? 0, digits)),
          result,
          value: valueOf(result, this.#question.objective),
          worst: worstOf(others.slice(count)),
          limited: others.slice(0, count),
        };
      }
    }
    return undefined;
  }

  /** Whether a value still lies within its bounds when typed with so many digits. */
  #isWithin(index: number, value: number, digits: number): boolean {
    const [input, bounds] = [this.#inputs[index], this.#bounds[index]];
    const typed = input && parseQuantity(settingText(input, value, digits))?.value;
    return bounds !== undefined && typed !== undefined && typed >= bounds[0] && typed <= bounds[1];
  }

  /** The values themselves, and each a digit further to either side, within bounds. */
  #roundings(values: readonly number[], digits: number): number[][] {
    return values.reduce<number[][]>(
      (all, value, index) => {
        const step = 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - digits + 1);
        const near = [value, value + step, value - step].filter((each) => this.#isWithin(index, each, digits));
        return all.flatMap((begun) => near.map((each) => [...begun, each]));
      },
      [[]],
    );
  }
}

/** From 1 to 2 where a limit is missed, by how far; 0 where it is kept. */
function missed({ at, value: limit }: Pick<Bound, 'at' | 'value'>, held: CellValue | undefined): number {
  if (held?.kind !== 'number' || Number.isNaN(held.value)) return 2;
  const by = at === 'least' ? limit - held.value : held.value - limit;
  return by > 0 ? 1 + by / (by + (Math.abs(limit) || 1)) : 0;
}

function valueOf(value: CellValue, objective: Objective): number {
  if (objective.kind !== 'flattest') {
    const number = value.kind === 'number' ? value.value : Number.NaN;
    return objective.kind === 'nearest' ? Math.abs(number - objective.target) : number;
  }
  if (value.kind !== 'record' || value.record.kind !== 'curve') return Number.NaN;
  let [lowest, highest] = [Infinity, -Infinity];
  for (const [index, y] of value.record.y.entries()) {
    const frequency = frequencies[index] ?? 0;
    if (frequency < objective.from || frequency > objective.to || !Number.isFinite(y)) continue;
    lowest = Math.min(lowest, y);
    highest = Math.max(highest, y);
  }
  return highest >= lowest ? highest - lowest : Number.NaN;
}
