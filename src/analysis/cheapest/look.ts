import { namedDrivers } from '../../document/take-over/drivers.ts';
import { keyOf } from '../../engine/cell-index.ts';
import type { CellValue, Place, Writing } from '../../engine/types.ts';
import type { Change } from './types.ts';
import type { Runner, DocumentModel } from '../model/document-model.ts';
import type { Input } from '../subject/types.ts';

/** Everything that a set of changes types. */
export const textsOf = (set: readonly Change[]): Writing[] => set.flatMap(({ texts }) => texts);

/** What some cells hold after a set of changes: compiled where that gives what the engine gives, else by the engine. */
export class Look {
  readonly #model: DocumentModel;
  readonly #places: readonly Place[];
  readonly #runner: Runner;
  readonly #inputs: ReadonlyMap<string, Input>;
  /** No verdict hangs on what a driver is called. */
  readonly #names: ReadonlySet<string>;

  private constructor(model: DocumentModel, places: readonly Place[], runner: Runner) {
    this.#model = model;
    this.#places = places;
    this.#runner = runner;
    this.#inputs = new Map(runner.inputs.map((input) => [keyOf(input), input]));
    const blocks = model.document.sheets.flatMap((sheet) => namedDrivers(sheet).map(([, block]) => block));
    this.#names = new Set(
      blocks.flatMap(({ sheet, rows }) =>
        rows.filter(({ meaning }) => meaning === 'name').map(({ cell }) => keyOf({ sheet, cell })),
      ),
    );
  }

  /** @param changes - All that may be made. */
  static async over(model: DocumentModel, changes: readonly Change[], places: readonly Place[]): Promise<Look> {
    const touched = new Map(textsOf(changes).map((writing) => [keyOf(writing), writing]));
    const inputs = [...touched.values()].filter((place) => model.input(place));
    return new Look(model, places, await model.runner(inputs, places));
  }

  /** At once; nothing where the engine must be asked. */
  quick(set: readonly Change[]): readonly CellValue[] | undefined {
    const texts = new Map(textsOf(set).map((writing) => [keyOf(writing), writing.text]));
    for (const key of texts.keys()) if (!this.#inputs.has(key) && !this.#names.has(key)) return undefined;
    return this.#runner.quick([...this.#inputs].map(([key, { present }]) => texts.get(key) ?? present));
  }

  /** As the sheet itself gives it. */
  exact(set: readonly Change[]): Promise<readonly CellValue[]> {
    return this.#model.read(textsOf(set), this.#places);
  }
}
