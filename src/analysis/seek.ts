import type { CellValue } from '../engine/types.ts';
import { Breath } from './breathe.ts';
import { gridOver } from './scan.ts';
import type { Found, Seek, SeekQuestion, Target } from './seek-types.ts';
import { seekSentence } from './seek-sentence.ts';
import { settingText } from './setting-text.ts';
import type { Runner, SheetModel } from './sheet-model.ts';
import { NEAR, solutionsIn, type Point } from './solutions.ts';
import { standingOf, type Input, type Result, type Setting, type Watch } from './subject-types.ts';
import { placeError } from './place-error.ts';
import { stretchesIn } from './stretches.ts';

/** So many values are looked at first, fewer where the engine must be asked for each. */
const POINTS = { compiled: 241, engine: 81 } as const;
/** Digits with which a value is typed, the fewest first that serve. */
const DIGITS = [3, 4, 6, 9, undefined] as const;

/** Finds every value of an input in a range that brings a result to a target. What is given as found has been typed into
 *  the sheet, and the sheet itself gave the target.
 *  @throws An error in words for the reader where a cell is no input or no result. */
export async function seek(model: SheetModel, question: SeekQuestion, watch?: Watch): Promise<Seek> {
  const input = model.input(question.input);
  const result = model.result(question.result);
  if (!input) throw placeError(model.document, question.input, 'no input: type a number there first');
  if (!result) throw placeError(model.document, question.result, 'no result: it holds no formula');
  const given = question.given ?? [];
  const runner = await model.runner([input, ...given], [result]);
  const fixed = given.map(({ value }) => value);
  const range = question.range ?? input.range;
  const seeker = new Seeker(input, result, question.target, range, (x) => [x, ...fixed], runner, new Breath(watch));
  const answer =
    input.choices && typeof input.present === 'string' ? await seeker.choices(input.choices) : await seeker.numbers();
  return { ...answer, sentence: seekSentence(answer, model.document.system) };
}

type Answer = Omit<Seek, 'sentence'>;

class Seeker {
  readonly #input: Input;
  readonly #result: Result;
  readonly #target: Target;
  readonly #range: readonly [number, number];
  readonly #settings: (x: Setting) => readonly Setting[];
  readonly #runner: Runner;
  readonly #breath: Breath;
  #done = 0;

  constructor(
    input: Input,
    result: Result,
    target: Target,
    range: readonly [number, number],
    settings: (x: Setting) => readonly Setting[],
    runner: Runner,
    breath: Breath,
  ) {
    this.#input = input;
    this.#result = result;
    this.#target = target;
    this.#range = range;
    this.#settings = settings;
    this.#runner = runner;
    this.#breath = breath;
  }

  async numbers(): Promise<Answer> {
    const xs = this.#grid();
    return this.#target.kind === 'number' ? this.#toNumber(xs, this.#target.value) : this.#toGood(xs);
  }

  async choices(words: readonly string[]): Promise<Answer> {
    const found: Found[] = [];
    for (const word of words) {
      const value = await this.#typed(word);
      if (this.#reaches(value)) found.push(this.#foundAt(word, value));
    }
    return this.#answer(found, []);
  }

  #grid(): number[] {
    const points = this.#runner.isCompiled ? POINTS.compiled : POINTS.engine;
    const xs = new Set(gridOver(this.#range, points));
    const { present } = this.#input;
    if (typeof present === 'number' && present > this.#range[0] && present < this.#range[1]) xs.add(present);
    return [...xs].sort((a, b) => a - b);
  }

  async #toNumber(xs: readonly number[], target: number): Promise<Answer> {
    const read = async (x: number): Promise<number> => {
      const value = await this.#at(x, xs.length);
      return value.kind === 'number' ? value.value - target : Number.NaN;
    };
    const points: Point[] = [];
    for (const x of xs) points.push({ x, miss: await read(x) });
    const size = this.#sizeOf(points, target);
    const found: Found[] = [];
    for (const x of await solutionsIn(read, points, size)) {
      const checked = await this.#checked(x, (value) => isNumberNear(value, target, size));
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

  async #toGood(xs: readonly number[]): Promise<Answer> {
    const isGood = async (x: number): Promise<boolean> => this.#reaches(await this.#at(x, xs.length));
    const stretches = await stretchesIn(isGood, xs);
    const found: Found[] = [];
    for (const [from, to] of stretches) {
      const nearest = Math.min(Math.max(Number(this.#input.present), from), to);
      const checked = await this.#checked(nearest, (value, x) => this.#reaches(value) && x >= from && x <= to, [
        from,
        to,
      ]);
      if (checked) found.push(checked);
    }
    if (found.length > 0) return this.#answer(found, stretches);
    const nearest = await this.#leastBad(xs);
    return this.#answer([], stretches, nearest);
  }

  /** A caution is nearer than a failure; among equals the value nearest to the present one. */
  async #leastBad(xs: readonly number[]): Promise<Found | undefined> {
    const order = { good: 0, caution: 1, fail: 2, problem: 3 } as const;
    const standings: { readonly x: number; readonly standing: number }[] = [];
    for (const x of xs) standings.push({ x, standing: order[standingOf(await this.#at(x, xs.length))] });
    const best = Math.min(...standings.map(({ standing }) => standing));
    if (best === order.problem) return undefined;
    const present = Number(this.#input.present);
    const least = leastBy(
      standings.filter(({ standing }) => standing === best),
      ({ x }) => Math.abs(x - present),
    );
    return least && this.#foundTyped(least.x);
  }

  /** Types the value with as few digits as serve and asks the sheet itself. Nothing where even all digits do not serve. */
  async #checked(
    x: number,
    serves: (value: CellValue, x: number) => boolean,
    within: readonly [number, number] = [-Infinity, Infinity],
  ): Promise<Found | undefined> {
    for (const digits of DIGITS) {
      for (const candidate of digits === undefined ? [x] : this.#roundings(x, digits, within)) {
        const value = await this.#typed(candidate, digits);
        if (serves(value, candidate)) return this.#foundAt(candidate, value, digits);
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

  #foundAt(value: Setting, result: CellValue, digits?: number): Found {
    const { sheet, cell, label } = this.#input;
    return { set: { sheet, cell, label, value, text: settingText(this.#input, value, digits) }, result };
  }

  async #typed(value: Setting, digits?: number): Promise<CellValue> {
    this.#breath.check();
    const [result] = await this.#runner.exact(this.#settings(value), digits);
    await this.#breath.take();
    return result ?? { kind: 'empty' };
  }

  async #at(x: number, of: number): Promise<CellValue> {
    this.#done = Math.min(this.#done + 1, of);
    if (this.#breath.isDue) await this.#breath.take({ done: this.#done, of });
    else this.#breath.check();
    const [result] = await this.#runner.at(this.#settings(x));
    return result ?? { kind: 'empty' };
  }

  #reaches(value: CellValue): boolean {
    if (this.#target.kind === 'number') return isNumberNear(value, this.#target.value, Math.abs(this.#target.value));
    const standing = standingOf(value);
    return standing === 'good' || (standing === 'caution' && this.#target.orCaution === true);
  }

  #answer(found: readonly Found[], stretches: Seek['stretches'], nearest?: Found): Answer {
    return {
      input: this.#input,
      result: this.#result,
      target: this.#target,
      range: this.#range,
      found: [...found].sort((a, b) => Number(a.set.value) - Number(b.set.value)),
      stretches,
      ...(nearest && { nearest }),
    };
  }
}

const isNumberNear = (value: CellValue, target: number, size: number): boolean =>
  value.kind === 'number' && Math.abs(value.value - target) <= NEAR * size;

function leastBy<T>(all: readonly T[], measure: (each: T) => number): T | undefined {
  const [first, ...rest] = all;
  return first && rest.reduce((least, each) => (measure(each) < measure(least) ? each : least), first);
}
