import {
  ArraySize,
  CellError,
  EmptyValue,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  SimpleRangeValue,
} from 'hyperformula';
import type { AnyFunction } from '../../functions/define.ts';
import { formatAddress } from '../formula/address.ts';
import { Refused } from './arguments.ts';
import {
  call,
  callable,
  readField,
  toldBy,
  type Callable,
  type Outcome,
  type RawDatum,
  type RawValue,
  type Site,
} from './call.ts';
import { ownMessage } from './problem-text.ts';
import type { RecordStore } from './record-store.ts';
import type { EngineAddress } from './spots.ts';

/** What the plugin needs of its engine; one object for the engine's whole life. */
export interface EngineContext {
  readonly store: RecordStore;
  /** Hears what is implausible in a call that stands in a formula, an empty list where nothing is. */
  doubt(at: EngineAddress, messages: readonly string[]): void;
  /** What a reader calls a sheet. */
  nameOf(sheet: number): string;
}

interface CallNode {
  readonly args: readonly ArgumentNode[];
}
interface ArgumentNode {
  readonly type: string;
  readonly reference?: { toSimpleCellAddress(base: EngineAddress): EngineAddress };
  readonly start?: { readonly row: number; readonly col: number };
  readonly end?: { readonly row: number; readonly col: number };
}
interface State {
  readonly formulaAddress: EngineAddress;
}

/** The names of the functions that are no part of the catalogue: parts of records, and formulas that cannot be right. */
export const ownNames = ['FIELD', 'UNSOUND'] as const;

/** Makes the engine know every function of the catalogue. Arguments are evaluated here and read by their declaration, so
 *  that a message can name argument, limit and value. */
export function pluginFor(definitions: readonly AnyFunction[]): typeof FunctionPlugin {
  class CataloguePlugin extends FunctionPlugin implements Site {
    static override implementedFunctions = {
      ...Object.fromEntries(definitions.map((definition) => [definition.name, metadata(definition)])),
      FIELD: { method: 'field', parameters: any(2) },
      UNSOUND: { method: 'unsound', parameters: any(2), repeatLastArgs: 1 },
    };

    /** The call that is being run. Its arguments are evaluated before, so that no other comes between. */
    #node: CallNode = { args: [] };
    #state: State | undefined;

    run(called: Callable, node: CallNode, state: State): unknown {
      const { store } = this.config.context as EngineContext;
      const given: (RawValue | undefined)[] = [];
      for (const argument of node.args) {
        const value = this.#value(argument, state);
        if (value instanceof CellError) return value;
        given.push(value);
      }
      this.#node = node;
      this.#state = state;
      return toEngine(call(called, given, toldBy(called, given), store, this));
    }

    cellOf(index: number): string | undefined {
      const { nameOf } = this.config.context as EngineContext;
      return this.#state && cellOf(this.#node.args[index], this.#state, nameOf);
    }

    doubt(messages: readonly string[]): void {
      if (this.#state) (this.config.context as EngineContext).doubt(this.#state.formulaAddress, messages);
    }

    field(node: CallNode, state: State): unknown {
      const [record, name] = node.args.map((argument) => this.#value(argument, state));
      if (record instanceof CellError) return record;
      const { store } = this.config.context as EngineContext;
      return toEngine(readField(scalar(record), scalar(name), store));
    }

    unsound(node: CallNode, state: State): unknown {
      const [message] = node.args.slice(0, 1).map((argument) => this.#value(argument, state));
      return new CellError(ErrorType.VALUE, ownMessage(typeof message === 'string' ? message : ''));
    }

    /** As many rows as the range has cells: the engine must know before it computes, and more would break it. */
    column(node: CallNode): ArraySize {
      const range = node.args.find(({ type }) => type === 'CELL_RANGE');
      const across = (way: 'row' | 'col'): number =>
        Math.abs((range?.end?.[way] ?? 0) - (range?.start?.[way] ?? 0)) + 1;
      return new ArraySize(1, across('row') * across('col'));
    }

    /** An argument's value; an error anywhere in it is the value. */
    #value(argument: ArgumentNode, state: State): RawValue | CellError | undefined {
      if (argument.type === 'EMPTY') return undefined;
      const value: unknown = this.evaluateAst(argument as never, state as never);
      if (value instanceof SimpleRangeValue) {
        const rows = value.data;
        const error = rows.flat().find((each) => each instanceof CellError);
        return error instanceof CellError ? error : rows.map((row) => row.map(plain));
      }
      return value instanceof CellError ? value : plain(value);
    }
  }

  for (const definition of definitions) {
    const called = callable(definition);
    Object.defineProperty(CataloguePlugin.prototype, methodOf(definition), {
      value(this: CataloguePlugin, node: CallNode, state: State): unknown {
        return this.run(called, node, state);
      },
    });
  }
  return CataloguePlugin;
}

const methodOf = ({ name }: AnyFunction): string => `call:${name}`;

/** Every argument may be left out and may be anything, as far as the engine is concerned. */
const any = (count: number): { argumentType: FunctionArgumentType; optionalArg: boolean }[] =>
  Array.from({ length: count }, () => ({ argumentType: FunctionArgumentType.ANY, optionalArg: true }));

function metadata(definition: AnyFunction): {
  method: string;
  parameters: ReturnType<typeof any>;
  repeatLastArgs: number;
  sizeOfResultArrayMethod?: string;
} {
  const isColumn = 'column' in definition.returns && definition.returns.column;
  return {
    method: methodOf(definition),
    parameters: any(Object.keys(definition.parameters).length + 1),
    repeatLastArgs: 1,
    ...(isColumn && { sizeOfResultArrayMethod: 'column' }),
  };
}

/** Numbers with a format are numbers, an empty cell is null. */
function plain(value: unknown): RawDatum {
  if (value === EmptyValue || value === undefined) return null;
  if (typeof value === 'object' && value !== null && 'val' in value) return Number(value.val);
  return value as RawDatum;
}

const scalar = (value: RawValue | CellError | undefined): RawDatum =>
  typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean' ? value : null;

function toEngine(outcome: Outcome): unknown {
  if (outcome instanceof Refused) return new CellError(ErrorType.VALUE, ownMessage(outcome.message));
  if (Array.isArray(outcome)) return SimpleRangeValue.onlyNumbers(outcome.map((value: number) => [value]));
  return outcome;
}

/** The address of an argument that is one cell; a cell of another sheet says which. */
function cellOf(
  argument: ArgumentNode | undefined,
  { formulaAddress }: State,
  nameOf: (sheet: number) => string,
): string | undefined {
  if (argument?.type !== 'CELL_REFERENCE' || !argument.reference) return undefined;
  const { sheet, row, col } = argument.reference.toSimpleCellAddress(formulaAddress);
  const cell = formatAddress({ row, column: col });
  return sheet === formulaAddress.sheet ? cell : `${nameOf(sheet)}!${cell}`;
}
