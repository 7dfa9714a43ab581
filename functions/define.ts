import type { Currency, QuantityName } from './quantities.ts';
import type { Problem } from './values/problem.ts';
import type { CellRecord, RecordKind, RecordOf } from './values/record.ts';
import type { SourceKey } from './sources.ts';

interface Described {
  /** What the argument means, a noun phrase without a full stop. */
  readonly summary: string;
  /** Only the last parameter: takes any number of further arguments, given as an array. */
  readonly many?: true;
  /** May be left out; `undefined` then. A parameter with a default may always be left out. */
  readonly optional?: true;
}

/** A number, in SI when it reaches compute. */
export interface NumberParameter extends Described {
  /** `any` takes every quantity; all `any` parameters of a function must agree, and compute is told which. */
  readonly quantity: QuantityName | 'any';
  readonly above?: number;
  readonly below?: number;
  readonly min?: number;
  readonly max?: number;
  readonly default?: number;
  /** A count: nothing between whole numbers is one. What a calculation missed by rounding is rounded. */
  readonly whole?: true;
  /** Plausible range, SI: outside it the value is questioned, not refused. */
  readonly typical?: readonly [number, number];
}

export interface RecordParameter extends Described {
  readonly record: RecordKind | 'any';
}

/** One word of a closed list, compared without regard to case. */
export interface ChoiceParameter extends Described {
  readonly choice: readonly string[];
  readonly default?: string;
}

export interface TextParameter extends Described {
  readonly text: true;
  readonly default?: string;
}

export interface TruthParameter extends Described {
  readonly truth: true;
  readonly default?: boolean;
}

/** A range of cells as it stands: rows of numbers (SI), texts, truths, records; `null` for empty cells. */
export interface TableParameter extends Described {
  readonly table: true;
  /** What all its numbers are. */
  readonly of?: QuantityName;
  /** The parameter that holds a label of a driver parameter for each of its numbers: that says what the number is. Its own name, where
   *  labels and numbers are its two columns. */
  readonly labels?: string;
  /** What the numbers of each of its columns are; `null` for a column of words. */
  readonly columns?: readonly (QuantityName | null)[];
}

export type Parameter =
  NumberParameter | RecordParameter | ChoiceParameter | TextParameter | TruthParameter | TableParameter;

export type CellDatum = number | string | boolean | null | CellRecord;
export type Table = readonly (readonly CellDatum[])[];

export type Parameters = Readonly<Record<string, Parameter>>;

type Single<P extends Parameter> = P extends NumberParameter
  ? number
  : P extends { readonly record: infer K }
    ? K extends RecordKind
      ? RecordOf<K>
      : CellRecord
    : P extends ChoiceParameter
      ? P['choice'][number]
      : P extends TextParameter
        ? string
        : P extends TruthParameter
          ? boolean
          : Table;

type Whole<P extends Parameter> = P extends { many: true } ? readonly Single<P>[] : Single<P>;

export type ArgumentOf<P extends Parameter> = P extends { default: unknown }
  ? Whole<P>
  : P extends { optional: true }
    ? Whole<P> | undefined
    : Whole<P>;

export type Arguments<P extends Parameters> = { readonly [K in keyof P]: ArgumentOf<P[K]> };

export interface RecordResult {
  readonly record: RecordKind;
  readonly summary: string;
  readonly of?: QuantityName | 'curve' | 'any' | 'choice';
}

/** What a function gives. `any` is the quantity of its `any` parameters, `curve` that of the values of its first curve or sample;
 *  `of` says the quantity of the values of a curve or sample, `choice` that its first choice names it. `column` spills downwards from the cell,
 *  as many rows as its first table parameter has cells. */
export type Result =
  | { readonly quantity: QuantityName | 'any' | 'curve'; readonly summary: string; readonly column?: true }
  | RecordResult
  | { readonly text: true; readonly summary: string }
  | { readonly truth: true; readonly summary: string };

type ResultValue<R extends Result> = R extends { quantity: unknown; column: true }
  ? readonly number[]
  : R extends { quantity: unknown }
    ? number
    : R extends { record: infer K extends RecordKind }
      ? RecordOf<K>
      : R extends { text: true }
        ? string
        : boolean;

/** What compute is told beside its arguments. */
export interface Context {
  /** The quantity of the `any` arguments, or of the level basis in a table of labels, as the formula's units show; `ratio` for plain numbers. */
  readonly quantity: QuantityName;
  /** The sign of the prices among the arguments, where they have one. */
  readonly money?: Currency | undefined;
}

export interface Citation {
  readonly source: SourceKey;
  /** Equation, table or page inside the source. */
  readonly at: string;
}

/** An argument of a worked example, as one would type it: `0.386`, `28.52 L` (a text), `LR4`, or a call giving a record. */
export interface Example {
  /** A whole formula that stands on its own, or beside its cells: `=CLOSED.QTC(0.386, "28.52 L", "12.1 L")`. */
  readonly formula: string;
  /** Cells that the formula reads, where it needs a table: address and what is typed there. */
  readonly cells?: Readonly<Record<string, string>>;
  /** SI value, the text, or for records the fields that must hold (`{ qtc: 0.707 }`). Numbers to half a unit of the last digit given. */
  readonly gives: number | string | boolean | Readonly<Record<string, number | string>>;
}

/** The whole contract of a sheet function; everything else that shows or runs it is derived from this. */
export interface SheetFunction<P extends Parameters = Parameters, R extends Result = Result> {
  /** FAMILY.NOUN, upper case. */
  readonly name: string;
  /** One sentence with a full stop. */
  readonly summary: string;
  readonly parameters: P;
  readonly returns: R;
  readonly source: Citation;
  readonly example: Example;
  /** Validity, convention, common mistakes: a few sentences for the guide. */
  readonly remarks?: string;
  /** Pure. Arguments have been checked against the declared ranges; anything else is refused with a Problem. */
  compute(given: Arguments<P>, context: Context): ResultValue<R> | Problem;
}

/** Declares a sheet function and lets the compiler check compute against its parameters. */
export const define = <const P extends Parameters, const R extends Result>(
  definition: SheetFunction<P, R>,
): SheetFunction<P, R> => definition;

/** What is said of a function to people; no formula needs it. */
export interface FunctionWords {
  readonly summary: string;
  /** What it gives. */
  readonly gives: string;
  readonly source: Citation & { readonly title: string };
  /** The formula of its worked example. */
  readonly example: string;
  readonly remarks?: string;
}

type Unsaid<R> = R extends unknown ? Omit<R, 'summary'> : never;

/** What a formula must know of a function, without its compute: plain data. */
export interface FunctionDescription {
  readonly name: string;
  readonly parameters: Parameters;
  readonly returns: Unsaid<Result>;
  /** Absent before it is known. */
  readonly words?: FunctionWords;
}

/** Whether compute must be told a quantity that it cannot see from its arguments. */
export const wantsQuantity = (parameters: Parameters): boolean =>
  Object.values(parameters).some(
    (parameter) => ('quantity' in parameter && parameter.quantity === 'any') || 'labels' in parameter,
  );

/** A definition with its parameter types forgotten, as the catalogue holds it. */
export interface AnyFunction extends Omit<SheetFunction, 'compute'> {
  compute(given: Readonly<Record<string, unknown>>, context: Context): unknown;
}
