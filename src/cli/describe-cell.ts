import { quantities, type Dimension } from '../../functions/quantities.ts';
import type { CellRecord } from '../../functions/values/record.ts';
import { frequencies } from '../../functions/values/grid.ts';
import type { Sentence } from '../../functions/values/say.ts';
import type { CellState } from '../engine/types.ts';
import { shownText } from '../document/show-cell.ts';
import type { ShownCell } from '../document/shown.ts';
import type { UnitSystem } from '../document/types.ts';
import { speak } from '../units/show.ts';

type Described = Readonly<Record<string, unknown>>;

/** A cell for programs: numbers in SI with the symbol of their SI unit, the text as shown, what kind of thing it is; for
 *  a problem its message; for a record its fields. */
export function describeCell(state: CellState | undefined, shown: ShownCell, system: UnitSystem): Described {
  const text = shownText(shown);
  const doubts = (state?.findings ?? []).filter(({ level }) => level === 'doubt').map(({ message }) => message);
  const rest = doubts.length > 0 ? { text, doubts } : { text };
  const value = state?.value;
  switch (value?.kind) {
    case 'number':
      return { kind: 'number', value: value.value, unit: unitOf(state), ...rest };
    case 'text':
      return { kind: 'text', value: value.text, unit: '', ...rest };
    case 'truth':
      return { kind: 'truth', value: value.truth, unit: '', ...rest };
    case 'record':
      return {
        kind: value.record.kind,
        value: plainRecord(value.record, system),
        unit: recordUnit(value.record),
        ...rest,
      };
    case 'problem':
      return { kind: 'problem', value: null, unit: '', ...rest, message: value.message };
    default:
      return { kind: 'empty', value: null, unit: '', ...rest };
  }
}

function unitOf(state: CellState | undefined): string {
  if (state?.type.kind !== 'number') return '';
  const { quantity, dimension } = state.type;
  return quantity ? quantities[quantity].si : unitOfDimension(dimension);
}

/** The SI symbol of a dimension: that of a quantity where one has it, else its base units, as `kg·m²`. */
function unitOfDimension(dimension: Dimension): string {
  const written = (of: Dimension): string =>
    Object.entries(of)
      .filter(([, exponent]) => exponent !== 0)
      .map(([base, exponent]) => (exponent === 1 ? base : `${base}^${exponent}`))
      .sort()
      .join('·');
  const wanted = written(dimension);
  return Object.values(quantities).find((each) => written(each.dimension) === wanted)?.si ?? wanted;
}

const recordUnit = (record: CellRecord): string => (record.kind === 'curve' ? quantities[record.quantity].si : '');

/** The fields of a record with its sentences spoken; a curve lists its frequencies beside its values. */
function plainRecord(record: CellRecord, system: UnitSystem): Described {
  const fields = record.kind === 'curve' ? { ...record, frequencies } : record;
  return plainFields(fields, system);
}

function plainFields(record: object, system: UnitSystem): Described {
  return Object.fromEntries(
    Object.entries(record).flatMap(([name, value]) => (name === 'kind' ? [] : [[name, plain(name, value, system)]])),
  );
}

const sentences = new Set(['reason', 'note']);

function plain(name: string, value: unknown, system: UnitSystem): unknown {
  if (value instanceof Float64Array) return Array.from(value);
  if (sentences.has(name)) return speak(value as Sentence, system);
  if (name === 'doubts') return (value as readonly Sentence[]).map((doubt) => speak(doubt, system));
  if (Array.isArray(value)) return value.map((each) => plain('', each, system));
  if (typeof value === 'object' && value !== null) return plainFields(value, system);
  return value;
}
