import { childNamed, type FormulaNode } from './tree.ts';
import {
  wantsQuantity,
  type FunctionDescription,
  type NumberParameter,
  type Parameter,
  type RecordResult,
} from '../../functions/define.ts';
import { quantities, type QuantityName } from '../../functions/quantities.ts';
import { defaultUnit } from '../units/defaults.ts';
import { isPlain, quantityOf, sameDimension } from '../units/dimension.ts';
import { parseQuantity, valueAs } from '../units/parse.ts';
import { checkTables, quantityOfBasis } from './check-tables.ts';
import { Money } from './money.ts';
import { type Compilation, type Part, type Slot } from './part.ts';
import { nearest } from './nearest.ts';
import { engineNumber } from './numbers.ts';
import { isOpen, nounOf, numberIn, numberOf, TEXT, TRUTH, UNKNOWN } from './type-of.ts';
import type { CellType } from './types.ts';

/** A call of a function of the catalogue, checked against its declaration. Functions that must be told a quantity get its name
 *  and the sign of their prices as a last text. */
export function compileOwnCall(
  node: FormulaNode,
  definition: FunctionDescription,
  slots: readonly Slot[],
  compilation: Compilation,
): Part {
  const parameters = parametersOf(definition);
  checkCount(node, definition, slots, compilation);
  const own = new OwnCall(definition, compilation);
  const texts = slots.map((slot, index) => {
    const [name, parameter] = parameters[Math.min(index, parameters.length - 1)] ?? [];
    if (!slot || !name || !parameter || (index >= parameters.length && !parameter.many)) return '';
    return own.argument(slot, name, parameter);
  });
  checkTables(definition, own.tables, own.money, compilation);
  if (wantsQuantity(definition.parameters))
    texts.push(`"${own.any ?? quantityOfBasis(definition, own.tables, compilation) ?? 'ratio'}${own.money.told}"`);
  return { text: `${definition.name}(${texts.join(',')})`, type: own.result(), node };
}

type Listed = readonly (readonly [name: string, parameter: Parameter])[];

const known = new WeakMap<FunctionDescription['parameters'], Listed>();

/** In order, and listed once: one function stands in many formulas. */
function parametersOf({ parameters }: FunctionDescription): Listed {
  const listed = known.get(parameters) ?? Object.entries(parameters);
  known.set(parameters, listed);
  return listed;
}

function checkCount(
  node: FormulaNode,
  definition: FunctionDescription,
  slots: readonly Slot[],
  compilation: Compilation,
): void {
  const parameters = parametersOf(definition);
  const missing = parameters.findIndex(
    ([, parameter], index) =>
      slots[index] === undefined && !parameter.optional && !('default' in parameter && parameter.default !== undefined),
  );
  const lacking = parameters[missing];
  if (lacking) {
    const [name, { summary }] = lacking;
    compilation.report(
      'error',
      node,
      `${definition.name} lacks its argument ${String(missing + 1)}, ${name}: ${lower(summary)}.`,
    );
  }
  if (slots.length > parameters.length && !parameters.at(-1)?.[1].many) {
    const most = parameters.length === 1 ? 'one argument' : `${String(parameters.length)} arguments`;
    compilation.report(
      'error',
      node,
      `${definition.name} takes at most ${most}, but ${String(slots.length)} are given.${commaAdvice(node, compilation)}`,
    );
  }
}

/** Who parts arguments with semicolons writes decimals with commas. */
function commaAdvice(node: FormulaNode, compilation: Compilation): string {
  const separators = childNamed(node, 'Arguments')?.children.filter(({ name }) => name === 'Separator') ?? [];
  return new Set(separators.map((each) => compilation.slice(each))).size > 1
    ? ' A comma parts arguments as a semicolon does: write a decimal mark as a point.'
    : '';
}

/** Checks the arguments of one call, and remembers what they say about the result. */
class OwnCall {
  any: QuantityName | undefined;
  /** What is given for tables, by the names of their parameters. */
  readonly tables = new Map<string, Part>();
  readonly money = new Money();
  #anyType: CellType | undefined;
  #curve: QuantityName | undefined;
  #hasCurve = false;
  /** The word given for the first choice, `unknown` where it stands in another cell. */
  #chosen: string | undefined;
  readonly #definition: FunctionDescription;
  readonly #compilation: Compilation;

  constructor(definition: FunctionDescription, compilation: Compilation) {
    this.#definition = definition;
    this.#compilation = compilation;
  }

  argument(slot: FormulaNode, name: string, parameter: Parameter): string {
    const what = `${this.#definition.name}, ${name}`;
    if ('quantity' in parameter) return this.#number(slot, what, parameter);
    if ('choice' in parameter) this.#chosen ??= slot.name === 'Text' ? this.#slice(slot).slice(1, -1) : 'unknown';
    if ('choice' in parameter && slot.name === 'Text') return this.#choice(slot, what, parameter.choice);
    const part = this.#compilation.part(slot);
    if ('choice' in parameter && part.type.kind === 'empty') this.#meantAsWord(slot, what, parameter.choice);
    if ('record' in parameter) this.#record(part, what, parameter.record);
    if ('table' in parameter) this.tables.set(name, part);
    return part.text;
  }

  #number(slot: FormulaNode, what: string, parameter: NumberParameter): string {
    if (slot.name === 'Text') return this.#quantityText(slot, what, parameter);
    const part = this.#compilation.part(slot);
    const { type } = part;
    if (type.kind === 'record') {
      this.#report(
        'error',
        slot,
        `${what} wants ${this.#wanted(parameter)}, but ${this.#slice(slot)} holds a ${type.record}.`,
      );
    } else if (type.kind === 'number') this.#check(part, type, what, parameter);
    const typed = parameter.quantity === 'warming' ? parseQuantity(this.#slice(slot)) : undefined;
    return typed === undefined ? part.text : engineNumber(valueAs(typed, 'warming'));
  }

  /** A text in quotes that stands for a quantity. */
  #quantityText(slot: FormulaNode, what: string, parameter: NumberParameter): string {
    const text = this.#slice(slot).slice(1, -1);
    const read = parseQuantity(text);
    if (!read) {
      this.#report(
        'error',
        slot,
        `${what}: “${text}” is no quantity; type ${this.#wanted(parameter)}, such as ${this.#sample(parameter)}.`,
      );
      return this.#slice(slot);
    }
    const constant = read.value;
    this.#check(
      { text, type: numberIn(read.unit, read.quantity), constant, node: slot },
      numberIn(read.unit, read.quantity),
      what,
      parameter,
    );
    return engineNumber(valueAs(read, parameter.quantity === 'any' ? read.quantity : parameter.quantity));
  }

  #check(part: Part, type: Extract<CellType, { kind: 'number' }>, what: string, parameter: NumberParameter): void {
    const mixed = this.money.heed(type, this.#slice(part.node));
    if (mixed !== undefined) return this.#report('error', part.node, `${what}: ${mixed}`);
    if (parameter.quantity === 'any') {
      this.#agree(part, type, what);
      return;
    }
    const { dimension } = quantities[parameter.quantity];
    if (sameDimension(type.dimension, dimension) || part.constant === 0) return;
    const { quantity } = parameter;
    if (isPlain(type.dimension)) {
      const shown = this.#slice(part.node);
      const fix =
        part.constant === undefined ? undefined : `${String(part.constant)} ${defaultUnit(quantity, 'metric')}`;
      const advice = fix ? `write ${fix} if that is meant` : 'give it a unit';
      this.#report(
        'doubt',
        part.node,
        `${what}: ${shown} has no unit and is taken in ${quantities[quantity].si}: ${advice}.`,
        fix,
      );
      return;
    }
    const written = this.#slice(part.node);
    const meant = part.node.name === 'Binary' ? parseQuantity(written) : undefined;
    const fix = meant && sameDimension(quantities[meant.quantity].dimension, dimension) ? `"${written}"` : undefined;
    this.#report(
      'error',
      part.node,
      `${what}: ${nounOf(type)} in the place of ${this.#wanted(parameter)}; ${written} ${part.constant === undefined ? 'holds' : 'is'} ${nounOf(type)}.${fix === undefined ? '' : ` Write ${fix} if that is meant.`}`,
      fix,
    );
  }

  /** All arguments of any quantity have one. */
  #agree(part: Part, type: Extract<CellType, { kind: 'number' }>, what: string): void {
    if (part.constant === 0 && isPlain(type.dimension)) return;
    const held = this.#anyType;
    if (held?.kind !== 'number') {
      this.#anyType = type;
      this.any = type.quantity ?? quantityOf(type.dimension);
      return;
    }
    if (sameDimension(held.dimension, type.dimension)) return;
    this.#report(
      'error',
      part.node,
      `${what}: ${nounOf(type)} in the place of ${nounOf(held)}, unlike the other numbers of this call.`,
    );
  }

  #record(part: Part, what: string, wanted: string): void {
    const { type } = part;
    if (type.kind === 'record') {
      this.money.sign ??= type.money;
      if ((type.record === 'curve' || type.record === 'sample') && !this.#hasCurve) {
        this.#hasCurve = true;
        this.#curve = type.quantity;
      }
      if (wanted !== 'any' && type.record !== wanted) {
        this.#report(
          'error',
          part.node,
          `${what}: a ${wanted} is wanted, but ${this.#slice(part.node)} holds a ${type.record}.`,
        );
      }
    } else if (!isOpen(type)) {
      this.#report(
        'error',
        part.node,
        `${what}: a ${wanted === 'any' ? 'record' : wanted} is wanted, but ${this.#slice(part.node)} is ${nounOf(type)}.`,
      );
    }
  }

  /** `LR4` and `E12` are cells too; an empty one is none that anybody means. */
  #meantAsWord(slot: FormulaNode, what: string, words: readonly string[]): void {
    const written = this.#slice(slot);
    const word = words.find((each) => each.toLowerCase() === written.toLowerCase());
    if (word !== undefined)
      this.#report('error', slot, `${what}: ${written} is an empty cell: write "${word}" for the word.`, `"${word}"`);
  }

  #choice(slot: FormulaNode, what: string, words: readonly string[]): string {
    const text = this.#slice(slot).slice(1, -1);
    if (!words.some((word) => word.toLowerCase() === text.toLowerCase())) {
      const close = nearest(text, words);
      const question = close === undefined ? '' : ` Did you mean ${close}?`;
      const message = `${what}: “${text}” is no choice there.${question} Choose one of ${words.join(', ')}.`;
      this.#report('error', slot, message, close && `"${close}"`);
    }
    return this.#slice(slot);
  }

  /** What the call gives. */
  result(): CellType {
    const { returns } = this.#definition;
    if ('record' in returns) {
      const of = this.#contents(returns.of);
      const money = returns.record === 'driver' ? this.money.sign : undefined;
      return { kind: 'record', record: returns.record, ...(of && { quantity: of }), ...(money && { money }) };
    }
    if ('text' in returns) return TEXT;
    if ('truth' in returns) return TRUTH;
    if (returns.quantity === 'any') return this.#anyType ?? UNKNOWN;
    if (returns.quantity === 'curve') return this.#curve ? numberOf(this.#curve) : UNKNOWN;
    return numberIn(this.money.sign ?? '', returns.quantity);
  }

  /** The quantity of the values in a curve or sample that is given. */
  #contents(of: RecordResult['of']): QuantityName | undefined {
    if (of === 'curve') return this.#curve;
    if (of === 'any') return this.any;
    if (of !== 'choice') return of;
    const [choice] = Object.values(this.#definition.parameters).filter((parameter) => 'choice' in parameter);
    const word = this.#chosen ?? choice?.default;
    return word !== undefined && word in quantities ? (word as QuantityName) : undefined;
  }

  #slice(node: FormulaNode): string {
    return this.#compilation.slice(node);
  }

  #report(level: 'error' | 'doubt', node: FormulaNode, message: string, fix?: string): void {
    this.#compilation.report(level, node, message, fix);
  }

  #wanted({ quantity }: NumberParameter): string {
    return quantity === 'any' ? 'a number' : quantities[quantity].noun;
  }

  #sample({ quantity }: NumberParameter): string {
    return quantity === 'any' ? '12' : `12 ${defaultUnit(quantity, 'metric')}`.trim();
  }
}

const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
