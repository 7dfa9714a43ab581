import { UNKNOWN } from '../formula/type-of.ts';
import { keyOf, placeOf, type CellIndex } from './cell-index.ts';
import { EMPTY, findingsOf, problem, titleOf } from './cell-state.ts';
import type { Loops } from './loops.ts';
import { loopText, originOf, problemText, type EngineError } from './problem-text.ts';
import { RecordStore } from './record-store.ts';
import type { Spot } from './spots.ts';
import type { CellState, CellValue, Place } from './types.ts';

/** A value as the engine holds it. */
type Raw = number | string | boolean | null | undefined | EngineError;

const NO_WORDS: readonly string[] = [];

/** Puts what the engine calculated into our own terms: records for handles, sentences for its errors. */
export class CellReader {
  readonly #store: RecordStore;
  readonly #index: CellIndex;
  readonly #loops: Loops;
  readonly #nameOf: (sheet: string) => string;

  constructor(store: RecordStore, index: CellIndex, loops: Loops, nameOf: (sheet: string) => string) {
    this.#store = store;
    this.#index = index;
    this.#loops = loops;
    this.#nameOf = nameOf;
  }

  stateAt(spot: Spot, raw: Raw): CellState {
    const { place, key } = spot;
    const entry = this.#index.get(key);
    spot.isTyped = entry !== undefined;
    if (typeof raw === 'string') spot.handles = RecordStore.handlesIn(raw);
    else if (spot.handles.length > 0) spot.handles = NO_WORDS;
    const value = this.read(raw, place);
    const type = entry?.type ?? (value.kind === 'empty' ? EMPTY : (this.#index.ownerOf(key)?.type ?? UNKNOWN));
    const findings = findingsOf(entry, spot, value);
    const unit = entry?.content.kind === 'quantity' ? entry.content.unit : undefined;
    return unit === undefined
      ? { sheet: place.sheet, cell: place.cell, value, type, findings }
      : { sheet: place.sheet, cell: place.cell, value, type, findings, unit };
  }

  read(value: Raw, place: Place): CellValue {
    if (typeof value === 'number') return { kind: 'number', value };
    if (value === null || value === undefined) return { kind: 'empty' };
    if (typeof value === 'object') return this.#problem(value, place);
    if (typeof value === 'boolean') return { kind: 'truth', truth: value };
    const record = RecordStore.isHandle(value) ? this.#store.record(value) : undefined;
    if (record) return { kind: 'record', record };
    return { kind: 'text', text: this.#store.readable(value, titleOf) };
  }

  #problem({ type, message, address }: EngineError, place: Place): CellValue {
    const at = originOf({ type, message, address });
    const origin = at && keyOf(at) !== keyOf(place) ? { origin: at } : {};
    if (type !== 'CYCLE') return { ...problem(problemText({ type, message })), ...origin };
    const loop = this.#loops.of(keyOf(at ?? place)).map(placeOf);
    const text = loopText(loop, place.sheet, 'origin' in origin, this.#nameOf);
    return { ...problem(text), ...origin };
  }
}
