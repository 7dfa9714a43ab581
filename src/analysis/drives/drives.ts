import { labelOf } from '../../document/labels.ts';
import { sheetOf } from '../../document/sheets.ts';
import { keyOf, placeOf } from '../../engine/cell-index.ts';
import { Breath } from '../breathe.ts';
import type { Branch, Drives, DrivesQuestion, Follows, FollowsQuestion } from './types.ts';
import { effectsPerPercent } from './sensitivity.ts';
import type { DocumentModel } from '../model/document-model.ts';
import type { Input, Watch } from '../subject/types.ts';
import { inputAt, resultAt } from '../sweep/sweep.ts';

/** An effect so small beside the largest is rounding of numbers far larger than the result, such as levels that cancel. */
const NEGLIGIBLE = 1e-9;

/** What a result depends on, as a tree, with what each input does to it; the biggest effect first.
 *  @throws An error in words for the reader where the cell holds no formula. */
export async function drives(model: DocumentModel, { at }: DrivesQuestion, watch?: Watch): Promise<Drives> {
  const result = resultAt(model, at);
  const breath = new Breath(watch);
  const behind = model.graph.ancestors([keyOf(at)]);
  const inputs = model.subject.inputs.filter((input) => behind.has(keyOf(input)));
  await breath.take({ done: 0, of: inputs.length });
  const effects = await effectsPerPercent(model, inputs, [result]);
  breath.check();
  const sized = sizedFrom(inputs, effects);
  const perPercent = new Map(sized.map((each) => [keyOf(each.input), each.perPercent]));
  const grower = new TreeGrower(model, perPercent);
  return {
    result,
    tree: grower.grow(keyOf(at)),
    inputs: sized
      .filter((each) => Math.abs(each.perPercent) > 0)
      .sort((a, b) => Math.abs(b.perPercent) - Math.abs(a.perPercent)),
    still: sized.filter((each) => each.perPercent === 0).map(({ input }) => input),
  };
}

function sizedFrom(inputs: readonly Input[], effects: readonly (readonly number[])[]): Drives['inputs'] {
  const all = inputs.map((_, index) => effects[index]?.[0] ?? Number.NaN);
  const most = all.reduce((so, each) => Math.max(so, Math.abs(each) || 0), 0);
  return inputs.map((input, index) => {
    const perPercent = all[index] ?? Number.NaN;
    return { input, perPercent: Math.abs(perPercent) < most * NEGLIGIBLE ? 0 : perPercent };
  });
}

class TreeGrower {
  readonly #model: DocumentModel;
  readonly #perPercent: ReadonlyMap<string, number>;
  readonly #grown = new Map<string, Branch>();
  readonly #open = new Set<string>();

  constructor(model: DocumentModel, perPercent: ReadonlyMap<string, number>) {
    this.#model = model;
    this.#perPercent = perPercent;
  }

  /** A cell that was met before, or that depends on itself, is told once with its branches, and then only named. */
  grow(key: string): Branch {
    const known = this.#grown.get(key);
    if (known || this.#open.has(key)) return { ...(known ?? this.#leaf(key)), branches: [], isRepeated: true };
    this.#open.add(key);
    const leaf = this.#leaf(key);
    const branches = this.#model.graph
      .before(key)
      .filter((each) => this.#isTelling(each))
      .map((each) => this.grow(each))
      .sort((a, b) => b.weight - a.weight);
    const weight = branches.reduce((most, branch) => Math.max(most, branch.weight), leaf.weight);
    const branch: Branch = { ...leaf, weight, branches };
    this.#open.delete(key);
    this.#grown.set(key, branch);
    return branch;
  }

  /** Labels that a range takes in are no part of what drives a result. */
  #isTelling(key: string): boolean {
    const place = placeOf(key);
    return (
      this.#model.graph.before(key).length > 0 || this.#perPercent.has(key) || this.#model.result(place) !== undefined
    );
  }

  #leaf(key: string): Branch {
    const place = placeOf(key);
    const { document } = this.#model;
    const perPercent = this.#perPercent.get(key);
    const isKnown = perPercent !== undefined && !Number.isNaN(perPercent);
    return {
      ...place,
      label:
        this.#model.input(place)?.label ??
        this.#model.result(place)?.label ??
        labelOf(sheetOf(document, place.sheet), place.cell),
      isInput: this.#perPercent.has(key),
      value: this.#model.present(place),
      ...(isKnown && { perPercent }),
      weight: isKnown ? Math.abs(perPercent) : 0,
      branches: [],
    };
  }
}

/** All that follows from an input, with what one per cent more of it does to each number. */
export async function follows(model: DocumentModel, { at }: FollowsQuestion, watch?: Watch): Promise<Follows> {
  const input: Input = inputAt(model, at);
  new Breath(watch).check();
  const keys = model.graph.following(new Set([keyOf(at)]), model.subject.results.map(keyOf));
  const results = model.subject.results.filter((result) => keys.has(keyOf(result)));
  const [effects = []] = await effectsPerPercent(model, [input], results);
  return {
    input,
    results: results.map((result, index) => {
      const perPercent = effects[index] ?? Number.NaN;
      return Number.isNaN(perPercent) ? { result } : { result, perPercent };
    }),
  };
}
