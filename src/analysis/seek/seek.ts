import type { CellValue } from '../../engine/types.ts';
import { Breath } from '../breathe.ts';
import { gridOver, isWide, refined } from './scan.ts';
import { EVERY, type Found, type Seek, type SeekQuestion, type Target } from './types.ts';
import { searchedSentence, seekSentence } from './sentence.ts';
import { settingText } from '../subject/setting-text.ts';
import type { Runner, DocumentModel } from '../model/document-model.ts';
import { mayCross, NEAR, solutionsIn, type Point } from './solutions.ts';
import { standingOf, standings, type Input, type Result, type Setting, type Watch } from '../subject/types.ts';
import { placeError, QuestionError } from '../subject/place-error.ts';
import { finer, stretchesIn } from './stretches.ts';

/** So many values are looked at first, fewer where the engine must be asked for each. */
const POINTS = { compiled: 241, engine: 81 } as const;
/** So often what lies between two values is halved where a number bends towards its target, or verdicts change. */
const ROUNDS = { number: 5, verdict: 12 } as const;
/** Digits with which a value is typed, the fewest first that serve. */
const DIGITS = [3, 4, 6, 9, undefined] as const;

/** Finds every value of an input in a range that brings a result to a target. What is given as found has been typed into
 *  the sheet, and the sheet itself gave the target.
 *  @throws An error in words for the reader where a cell is no input or no result. */
export async function seek(model: DocumentModel, question: SeekQuestion, watch?: Watch): Promise<Seek> {
  const input = model.input(question.input);
  if (!input) throw placeError(model.document, question.input, 'no input: type a number there first');
  const results = resultsOf(model, question.result);
  const given = question.given ?? [];
  const runner = await model.runner([input, ...given], results);
  const fixed = given.map(({ value }) => value);
  const range = question.range ?? input.range;
  const seeker = new Seeker(input, results, question.target, range, (x) => [x, ...fixed], runner, new Breath(watch));
  const answer =
    input.choices && typeof input.present === 'string' ? await seeker.choices(input.choices) : await seeker.numbers();
  const { system } = model.document;
  return { ...answer, sentence: seekSentence(answer, system), searched: searchedSentence(answer, system) };
}

function resultsOf(model: DocumentModel, wanted: SeekQuestion['result']): readonly Result[] {
  if (wanted === EVERY) {
    if (model.verdicts.length > 0) return model.verdicts;
    throw new QuestionError('No cell of this document holds a verdict: ask for a number instead.');
  }
  const result = model.result(wanted);
  if (!result) throw placeError(model.document, wanted, 'no result: it holds no formula');
  return [result];
}

/** Stands for all verdicts together. */
const together = (verdicts: readonly Result[]): Result => ({
  sheet: '',
  cell: '',
  label: EVERY,
  kind: 'verdict',
  present: worstIn(verdicts.map(({ present }) => present)),
});

const rankOf = (value: CellValue): number => standings.indexOf(standingOf(value));
const worstIn = (values: readonly CellValue[]): CellValue =>
  values.reduce((worst, value) => (rankOf(value) > rankOf(worst) ? value : worst), values[0] ?? { kind: 'empty' });

type Answer = Omit<Seek, 'sentence' | 'searched'>;
type Values = readonly CellValue[];

class Seeker {
  readonly #input: Input;
  readonly #results: readonly Result[];
  readonly #target: Target;
  readonly #range: readonly [number, number];
  readonly #settings: (x: Setting) => readonly Setting[];
  readonly #runner: Runner;
  readonly #breath: Breath;
  /** What was looked at. */
  readonly #known = new Map<number, Values>();
  #grid: readonly number[] = [];

  constructor(
    input: Input,
    results: readonly Result[],
    target: Target,
    range: readonly [number, number],
    settings: (x: Setting) => readonly Setting[],
    runner: Runner,
    breath: Breath,
  ) {
    this.#input = input;
    this.#results = results;
    this.#target = target;
    this.#range = range;
    this.#settings = settings;
    this.#runner = runner;
    this.#breath = breath;
  }

  async numbers(): Promise<Answer> {
    this.#grid = this.#firstGrid();
    return this.#target.kind === 'number' ? this.#toNumber(this.#target.value) : this.#toGood();
  }

  async choices(words: readonly string[]): Promise<Answer> {
    const found: Found[] = [];
    for (const word of words) {
      const values = await this.#typed(word);
      if (this.#reaches(values)) found.push(this.#foundAt(word, values));
    }
    return this.#answer(found, []);
  }

  #firstGrid(): number[] {
    const points = this.#runner.isCompiled ? POINTS.compiled : POINTS.engine;
    const xs = new Set(gridOver(this.#range, points));
    const { present } = this.#input;
    if (typeof present === 'number' && present > this.#range[0] && present < this.#range[1]) xs.add(present);
    return [...xs].sort((a, b) => a - b);
  }

  async #toNumber(target: number): Promise<Answer> {
    const read = async (x: number): Promise<number> => {
      const [value] = await this.#at(x);
      return value?.kind === 'number' ? value.value - target : Number.NaN;
    };
    const look = async (x: number): Promise<Point> => ({ x, miss: await read(x) });
    const grid: Point[] = [];
    for (const x of this.#grid) grid.push(await look(x));
    const points = await refined(grid, look, mayCross, ROUNDS.number);
    const size = this.#sizeOf(points, target);
    const found: Found[] = [];
    for (const x of await solutionsIn(read, points, size)) {
      const checked = await this.#checked(x, ([value]) => isNumberNear(value, target, size));
      if (checked) found.push(checked);
    }
    if (found.length > 0) return this.#answer(found, []);
    const least = leastBy(
      points.filter(({ miss }) => !Number.isNaN(miss)),
      ({ miss }) => Math.abs(miss),
    );
    return this.#answer([], [], least && (await this.#foundTyped(least.x)));
  }

  /** How large the result is near its target. A target of zero is measured by how far the result moves. */
  #sizeOf(points: readonly Point[], target: number): number {
    if (target !== 0) return Math.abs(target);
    return points.reduce((most, { miss }) => (Number.isNaN(miss) ? most : Math.max(most, Math.abs(miss))), 0);
  }

  async #toGood(): Promise<Answer> {
    const isGood = async (x: number): Promise<boolean> => this.#reaches(await this.#at(x));
    let stretches: Seek['stretches'] = [];
    for (const grid of [this.#grid, finer(this.#grid)]) {
      this.#grid = grid;
      stretches = await stretchesIn(isGood, await this.#betweenChanges());
      if (stretches.length > 0) break;
    }
    const found: Found[] = [];
    for (const [from, to] of stretches) {
      const nearest = Math.min(Math.max(Number(this.#input.present), from), to);
      const checked = await this.#checked(nearest, (values, x) => this.#reaches(values) && x >= from && x <= to, [
        from,
        to,
      ]);
      if (checked) found.push(checked);
    }
    if (found.length > 0) return this.#answer(found, stretches);
    return this.#answer([], stretches, await this.#leastBad());
  }

  /** The grid, finer where verdicts change and none of two neighbours is good: one may have become so before another ceased to. */
  async #betweenChanges(): Promise<number[]> {
    const look = async (x: number) => {
      const values = await this.#at(x);
      return { x, isGood: this.#reaches(values), ranks: values.map(rankOf).join('') };
    };
    const grid: Awaited<ReturnType<typeof look>>[] = [];
    for (const x of this.#grid) grid.push(await look(x));
    const points = await refined(
      grid,
      look,
      (left, right) => !left.isGood && !right.isGood && left.ranks !== right.ranks,
      ROUNDS.verdict,
    );
    return points.map(({ x }) => x);
  }

  /** A caution is nearer than a failure, and few of them nearer than many; among equals the value nearest to the present one. */
  async #leastBad(): Promise<Found | undefined> {
    const weighed: { readonly x: number; readonly weight: number }[] = [];
    for (const [x, values] of this.#known) {
      if (values.some((value) => standingOf(value) !== 'problem'))
        weighed.push({ x, weight: values.reduce((sum, value) => sum + rankOf(value), 0) });
    }
    const best = Math.min(...weighed.map(({ weight }) => weight));
    const present = Number(this.#input.present);
    const least = leastBy(
      weighed.filter(({ weight }) => weight === best),
      ({ x }) => Math.abs(x - present),
    );
    return least && this.#foundTyped(least.x);
  }

  /** Types the value with as few digits as serve and asks the sheet itself. Nothing where even all digits do not serve. */
  async #checked(
    x: number,
    serves: (values: Values, x: number) => boolean,
    within: readonly [number, number] = [-Infinity, Infinity],
  ): Promise<Found | undefined> {
    for (const digits of DIGITS) {
      for (const candidate of digits === undefined ? [x] : this.#roundings(x, digits, within)) {
        const values = await this.#typed(candidate, digits);
        if (serves(values, candidate)) return this.#foundAt(candidate, values, digits);
      }
    }
    return undefined;
  }

  /** A value rounded to some digits of its unit; for an edge also one digit further in. */
  #roundings(x: number, digits: number, [from, to]: readonly [number, number]): number[] {
    const step = 10 ** (Math.floor(Math.log10(Math.abs(x) || 1)) - digits + 1);
    return [x, x + step, x - step].filter(
      (each, index) => index === 0 || (Number.isFinite(from) && each >= from && each <= to),
    );
  }

  async #foundTyped(x: number): Promise<Found> {
    return this.#foundAt(x, await this.#typed(x, 4), 4);
  }

  #foundAt(value: Setting, values: Values, digits?: number): Found {
    const { sheet, cell, label } = this.#input;
    return {
      set: { sheet, cell, label, value, text: settingText(this.#input, value, digits) },
      result: worstIn(values),
      short: this.#results.filter((_, index) => !this.#reaches(values.slice(index, index + 1))),
    };
  }

  async #typed(value: Setting, digits?: number): Promise<Values> {
    this.#breath.check();
    const values = await this.#runner.exact(this.#settings(value), digits);
    await this.#breath.take();
    return values;
  }

  async #at(x: number): Promise<Values> {
    const known = this.#known.get(x);
    if (known) return known;
    const of = this.#grid.length;
    if (this.#breath.isDue) await this.#breath.take({ done: Math.min(this.#known.size, of), of });
    else this.#breath.check();
    const values = await this.#runner.at(this.#settings(x));
    this.#known.set(x, values);
    return values;
  }

  #reaches(values: Values): boolean {
    const target = this.#target;
    return values.every((value) =>
      target.kind === 'number'
        ? isNumberNear(value, target.value, Math.abs(target.value))
        : rankOf(value) <= (target.orCaution ? 1 : 0),
    );
  }

  #answer(found: readonly Found[], stretches: Seek['stretches'], nearest?: Found): Answer {
    return {
      input: this.#input,
      result: (this.#results.length === 1 && this.#results[0]) || together(this.#results),
      target: this.#target,
      range: this.#range,
      found: [...found].sort((a, b) => Number(a.set.value) - Number(b.set.value)),
      stretches,
      ...(nearest && { nearest }),
      looked: this.#known.size,
      gap: gapOf(this.#grid, isWide(this.#range)),
    };
  }
}

/** The widest step of a grid, as a ratio where it is one of equal ratios. */
function gapOf(grid: readonly number[], inRatios: boolean): Seek['gap'] {
  const steps = grid.slice(1).map((x, index) => {
    const before = grid[index] ?? x;
    return inRatios ? x / before - 1 : x - before;
  });
  return { of: inRatios ? 'share' : 'input', size: Math.max(0, ...steps) };
}

const isNumberNear = (value: CellValue | undefined, target: number, size: number): boolean =>
  value?.kind === 'number' && Math.abs(value.value - target) <= NEAR * size;

function leastBy<T>(all: readonly T[], measure: (each: T) => number): T | undefined {
  const [first, ...rest] = all;
  return first && rest.reduce((least, each) => (measure(each) < measure(least) ? each : least), first);
}
