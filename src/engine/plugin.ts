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
import type { QuantityName } from '../../functions/quantities.ts';
import { formatAddress } from '../formula/address.ts';
import { Refused } from './arguments.ts';
import { call, readField, type Outcome, type RawArgument, type RawDatum, type RawValue } from './call.ts';
import type { RecordStore } from './record-store.ts';

/** What the plugin needs of its engine; one object for the engine's whole life. */
export interface EngineContext {
  readonly store: RecordStore;
  /** Hears whether an argument is implausible; `cell` is the formula's place, `sheet` the engine's own number. */
  doubt(
    at: { readonly sheet: number; readonly row: number; readonly col: number },
    topic: string,
    message: string | undefined,
  ): void;
}

type Node = Parameters<FunctionPlugin['evaluateAst' & keyof FunctionPlugin]>[0];
interface CallNode {
  readonly args: readonly ArgumentNode[];
}
interface ArgumentNode {
  readonly type: string;
  readonly reference?: { toSimpleCellAddress(base: Address): Address };
  readonly start?: { readonly row: number };
  readonly end?: { readonly row: number };
}
interface Address {
  readonly sheet: number;
  readonly row: number;
  readonly col: number;
}
interface State {
  readonly formulaAddress: Address;
}

/** The names of the functions that are no part of the catalogue: parts of records, and formulas that cannot be right. */
export const ownNames = ['FIELD', 'UNSOUND'] as const;

/** Makes the engine know every function of the catalogue. Arguments are evaluated here and read by their declaration, so
 *  that a message can name argument, limit and value. */
export function pluginFor(definitions: readonly AnyFunction[]): typeof FunctionPlugin {
  class CataloguePlugin extends FunctionPlugin {
    static override implementedFunctions = {
      ...Object.fromEntries(definitions.map((definition) => [definition.name, metadata(definition)])),
      FIELD: { method: 'field', parameters: any(2) },
      UNSOUND: { method: 'unsound', parameters: any(1) },
    };

    run(definition: AnyFunction, node: CallNode, state: State): unknown {
      const { store, doubt } = this.config.context as EngineContext;
      const given: RawArgument[] = [];
      for (const argument of node.args) {
        const value = this.#value(argument, state);
        if (value instanceof CellError) return value;
        given.push({ value, cell: cellOf(argument, state) });
      }
      const isGeneric = Object.values(definition.parameters).some(
        (each) => 'quantity' in each && each.quantity === 'any',
      );
      const quantity = isGeneric ? (given.pop()?.value as QuantityName) : 'ratio';
      const outcome = call(definition, given, quantity, store, (name, message) =>
        doubt(state.formulaAddress, `${definition.name}.${name}`, message),
      );
      return toEngine(outcome);
    }

    field(node: CallNode, state: State): unknown {
      const [record, name] = node.args.map((argument) => this.#value(argument, state));
      if (record instanceof CellError) return record;
      const { store } = this.config.context as EngineContext;
      return toEngine(readField(scalar(record), scalar(name), store));
    }

    unsound(node: CallNode, state: State): unknown {
      const [message] = node.args.map((argument) => this.#value(argument, state));
      return new CellError(ErrorType.VALUE, String(message));
    }

    column(node: CallNode): ArraySize {
      const range = node.args.find(({ type }) => type === 'CELL_RANGE');
      return new ArraySize(1, Math.abs((range?.end?.row ?? 0) - (range?.start?.row ?? 0)) + 1);
    }

    /** An argument's value; an error anywhere in it is the value. */
    #value(argument: ArgumentNode, state: State): RawValue | CellError | undefined {
      if (argument.type === 'EMPTY') return undefined;
      const value: unknown = this.evaluateAst(argument as unknown as Node, state as never);
      if (value instanceof SimpleRangeValue) {
        const rows = value.data;
        const error = rows.flat().find((each) => each instanceof CellError);
        return error instanceof CellError ? error : rows.map((row) => row.map(plain));
      }
      return value instanceof CellError ? value : plain(value);
    }
  }

  for (const definition of definitions) {
    Object.defineProperty(CataloguePlugin.prototype, methodOf(definition), {
      value(this: CataloguePlugin, node: CallNode, state: State): unknown {
        return this.run(definition, node, state);
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
  if (outcome instanceof Refused) return new CellError(ErrorType.VALUE, outcome.message);
  if (Array.isArray(outcome)) return SimpleRangeValue.onlyNumbers(outcome.map((value: number) => [value]));
  return outcome;
}

function cellOf(argument: ArgumentNode, state: State): string | undefined {
  if (argument.type !== 'CELL_REFERENCE' || !argument.reference) return undefined;
  const { row, col } = argument.reference.toSimpleCellAddress(state.formulaAddress);
  return formatAddress({ row, column: col });
}
