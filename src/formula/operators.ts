import type { FormulaNode } from './tree.ts';
import { quantities } from '../../functions/quantities.ts';
import { fieldsOf } from '../../functions/values/fields.ts';
import type { RecordKind } from '../../functions/values/record.ts';
import { currencyOf } from '../units/currency.ts';
import { isPlain, quantityOf, sameDimension, symbolOf, times } from '../units/dimension.ts';
import { defaultUnit } from '../units/defaults.ts';
import { parseQuantity } from '../units/parse.ts';
import { unitNamed } from '../units/table.ts';
import { engineNumber } from './numbers.ts';
import { type Compilation, type Part } from './part.ts';
import { isOpen, isPlainNumber, nounOf, numberOf, RATIO, TEXT, TRUTH, UNKNOWN, type NumberType } from './type-of.ts';
import type { CellType } from './types.ts';

export function signed(node: FormulaNode, compilation: Compilation): Part {
  const [sign, operand] = node.children;
  if (!sign || !operand) return { text: '', type: UNKNOWN, node };
  const isMinus = compilation.slice(sign) !== '+';
  const below = isMinus ? belowZero(node, operand, compilation) : undefined;
  if (below) return below;
  const part = compilation.part(operand);
  const constant = part.constant === undefined ? {} : { constant: isMinus ? -part.constant : part.constant };
  return { text: `${isMinus ? '-' : '+'}${part.text}`, type: numeric(part, compilation), ...constant, node };
}

/** `-5 °C` is five degrees below zero, and no temperature taken negative. */
function belowZero(node: FormulaNode, operand: FormulaNode, compilation: Compilation): Part | undefined {
  if (operand.name !== 'Quantity') return undefined;
  const read = parseQuantity(`-${compilation.slice(operand)}`);
  if (unitNamed(read?.unit ?? '')?.offset === undefined || !read) return undefined;
  return { text: engineNumber(read.value), type: numberOf(read.quantity), constant: read.value, node };
}

export function percent(node: FormulaNode, compilation: Compilation): Part {
  const part = compilation.part(node.children[0] ?? node);
  // The engine takes one sign at a time.
  const text = part.node.name === 'Percent' ? `(${part.text})%` : `${part.text}%`;
  const constant = part.constant === undefined ? {} : { constant: part.constant / 100 };
  return { text, type: numeric(part, compilation), ...constant, node };
}

export function binary(node: FormulaNode, compilation: Compilation): Part {
  const [leftNode, operatorNode, rightNode] = node.children;
  if (!leftNode || !operatorNode || !rightNode) return { text: '', type: UNKNOWN, node };
  const left = compilation.part(leftNode);
  const right = compilation.part(rightNode);
  const operator = compilation.slice(operatorNode).replace('\u2212', '-');
  if (operator === '/') {
    overPower(node, leftNode, rightNode, compilation);
    partOfUnit(node, leftNode, rightNode, compilation);
  }
  const constant = folded(operator, left.constant, right.constant);
  return {
    text: `${left.text}${operator}${right.text}`,
    type: typeOfBinary(node, operator, left, right, compilation),
    ...(constant !== undefined && { constant }),
    node,
  };
}

/** `1/2 in` is 1 divided by 2 in; as on a rule, half an inch is meant. */
function partOfUnit(node: FormulaNode, left: FormulaNode, right: FormulaNode, { slice, report }: Compilation): void {
  const written = slice(node);
  if (left.name !== 'Number' || right.name !== 'Quantity' || !parseQuantity(written)) return;
  const fix = `${slice(left)}/${slice(right).replace(/(?<=\d)\s*(?=[^\d.])/, '*1 ')}`;
  report(
    'doubt',
    node,
    `${written} is ${slice(left)} divided by ${slice(right)}: write ${fix} if a part of one is meant.`,
    fix,
  );
}

/** `20 m/s2` reads as 20 m over the cell S2; written in one go and in small letters it is meant as a unit. */
function overPower(node: FormulaNode, left: FormulaNode, right: FormulaNode, { slice, report }: Compilation): void {
  const [, symbol = '', power] = (right.name === 'Cell' && /^([a-z]+)([23])$/.exec(slice(right))) || [];
  let above = left;
  for (let last = above.children.at(-1); above.name === 'Binary' && last; last = above.children.at(-1)) above = last;
  if (above.name !== 'Quantity' || right.from !== above.to + 1 || !unitNamed(symbol)) return;
  const unit = `${slice(above)}${`/1 ${symbol}`.repeat(Number(power))}`;
  const message = `${slice(above)}/${slice(right)} divides by the cell ${slice(right).toUpperCase()}: write ${unit} for the unit, or ${slice(above)} / ${slice(right).toUpperCase()} for the cell.`;
  report('error', node, message, unit);
}

/** What stands in a formula as numbers is a number, as the third in `Vb^(1/3)`. */
function folded(operator: string, left: number | undefined, right: number | undefined): number | undefined {
  if (left === undefined || right === undefined) return undefined;
  const results: Readonly<Record<string, number>> = {
    '+': left + right,
    '-': left - right,
    '*': left * right,
    '/': left / right,
    '^': left ** right,
  };
  const result = results[operator];
  return Number.isFinite(result) ? result : undefined;
}

function typeOfBinary(
  node: FormulaNode,
  operator: string,
  left: Part,
  right: Part,
  compilation: Compilation,
): CellType {
  switch (operator) {
    case '&':
      for (const part of [left, right]) joinedInSi(part, compilation);
      return TEXT;
    case '*':
      return product(numeric(left, compilation), numeric(right, compilation), 1);
    case '/':
      return product(numeric(left, compilation), numeric(right, compilation), -1);
    case '^':
      return power(node, left, right, compilation);
    case '+':
    case '-':
      return sum(node, operator, left, right, compilation);
    default:
      compare(node, left, right, compilation);
      return TRUTH;
  }
}

/** A number joined to a text loses its unit: 12 L would read 0.012. */
export function joinedInSi(part: Part, compilation: Compilation): void {
  const { type } = part;
  if (type.kind !== 'number' || isPlain(type.dimension)) return;
  const written = compilation.slice(part.node);
  const unit = unitFor(type);
  const example = unitNamed(unit)?.offset === undefined ? `: write ROUND((${written})/1 ${unit}, 2) & " ${unit}"` : '';
  compilation.report(
    'doubt',
    part.node,
    `${written} is ${nounOf(type)} and joins a text as a bare number in ${symbolOf(type.dimension)}${example}.`,
  );
}

/** The type of a part where a number is wanted; records and texts are refused. */
function numeric(part: Part, compilation: Compilation): CellType {
  const { type } = part;
  if (type.kind === 'record') {
    compilation.report(
      'error',
      part.node,
      `${compilation.slice(part.node)} holds a ${type.record}, not a number: ${adviceFor(part, type.record, compilation)}.`,
    );
    return UNKNOWN;
  }
  if (type.kind === 'text' && part.node.name === 'Text') {
    const text = compilation.slice(part.node).slice(1, -1);
    const advice = parseQuantity(text) ? `write ${text} without the quotes, or QTY("${text}")` : 'write a number there';
    compilation.report('error', part.node, `A text cannot be calculated with: ${advice}.`);
    return UNKNOWN;
  }
  if (type.kind === 'text') {
    compilation.report(
      'error',
      part.node,
      `${compilation.slice(part.node)} holds a text, not a number: type a number with its unit there.`,
    );
    return UNKNOWN;
  }
  return type.kind === 'truth' ? RATIO : type;
}

/** What to do with a record where a number is wanted. */
function adviceFor({ node }: Part, record: RecordKind, { slice }: Compilation): string {
  if (record === 'curve') return 'read a number off it with CURVE.AT, or combine curves with CURVE.ADD';
  const part = record === 'driver' ? 'fs' : fieldsOf(record).find(({ quantity }) => quantity !== 'text')?.name;
  if (part === undefined) return 'refer to a number';
  const written = slice(node);
  return `take a part of it, such as ${node.name === 'Call' ? `FIELD(${written}, "${part}")` : `${written}.${part}`}`;
}

function product(a: CellType, b: CellType, sign: 1 | -1): CellType {
  if (a.kind !== 'number' || b.kind !== 'number') return UNKNOWN;
  const dimension = times(a.dimension, b.dimension, sign);
  if (isPlain(b.dimension)) return { ...a, dimension };
  if (sign === 1 && isPlain(a.dimension)) return { ...b, dimension };
  // Twenty decibels over 20 is an exponent; levels over levels are ratios anyway.
  return { kind: 'number', dimension, quantity: quantityOf(dimension) };
}

function power(node: FormulaNode, left: Part, right: Part, compilation: Compilation): CellType {
  const base = numeric(left, compilation);
  const exponent = numeric(right, compilation);
  if (base.kind !== 'number') return UNKNOWN;
  // 10^(L/20): the decibels of an exponent are taken as the pure number they are.
  const isLevel = exponent.kind === 'number' && sameDimension(exponent.dimension, quantities.level.dimension);
  if (exponent.kind === 'number' && !isPlain(exponent.dimension) && !isLevel) {
    compilation.report('error', right.node, `An exponent is a plain number, but this is ${nounOf(exponent)}.`);
    return UNKNOWN;
  }
  if (isPlain(base.dimension)) return RATIO;
  if (right.constant === undefined) {
    compilation.report(
      'error',
      node,
      `${capital(nounOf(base))} can only be raised to a number that stands in the formula.`,
    );
    return UNKNOWN;
  }
  const dimension = times({}, base.dimension, right.constant);
  return { kind: 'number', dimension, quantity: quantityOf(dimension) };
}

function sum(node: FormulaNode, operator: string, left: Part, right: Part, compilation: Compilation): CellType {
  const a = numeric(left, compilation);
  const b = numeric(right, compilation);
  const type = agree(node, operator === '+' ? 'added to' : 'taken from', [left, a], [right, b], compilation);
  return ofTemperatures(operator, a, b, type, /\d\s*K$/.test(compilation.slice(right.node)));
}

/** From one temperature to another is a difference; a temperature and a difference are a temperature again. Kelvins that
 *  are taken away as such are a difference already. */
function ofTemperatures(operator: string, a: CellType, b: CellType, type: CellType, isKelvins: boolean): CellType {
  if (type.kind !== 'number' || a.kind !== 'number' || b.kind !== 'number') return type;
  if (operator === '-' && a.quantity === 'temperature' && b.quantity === 'temperature' && !isKelvins)
    return { ...type, quantity: 'warming' };
  return a.quantity === 'warming' && b.quantity === 'temperature' && !isKelvins
    ? { ...type, quantity: 'temperature' }
    : type;
}

function compare(node: FormulaNode, left: Part, right: Part, compilation: Compilation): void {
  if (left.type.kind === 'number' && right.type.kind === 'number') {
    agree(node, 'compared with', [left, left.type], [right, right.type], compilation);
  }
  for (const [part, other] of [
    [left, right],
    [right, left],
  ] as const)
    neverEqual(part, other, compilation);
}

/** Comparisons that come out alike whatever is compared: of a whole record with a number or a word, of a word without its
 *  quotes that is a cell as well, of a number with a quantity in quotes. Whether anything is there at all, `=""` tells. */
function neverEqual({ node, type }: Part, other: Part, compilation: Compilation): void {
  const { slice, report } = compilation;
  const written = slice(node);
  const isWord = other.node.name === 'Text' && other.text !== '""';
  if (type.kind === 'record' && (isWord || other.type.kind === 'number')) {
    const fields = fieldsOf(type.record);
    const { name } = fields.find(({ quantity }) => (quantity === 'text') === isWord) ?? fields[0] ?? {};
    report(
      'error',
      node,
      `${written} holds a ${type.record}: compare a part of it, such as ${written}.${String(name)}.`,
    );
  } else if (other.type.kind === 'text' && type.kind === 'empty' && /^[a-z]{2,}\d+$/i.test(written)) {
    report('doubt', node, `${written} is an empty cell: write "${written}" if the word is meant.`, `"${written}"`);
  } else if (node.name === 'Text' && other.type.kind === 'number' && parseQuantity(written.slice(1, -1)))
    numeric({ text: '', node, type }, compilation);
}

/** The common type of two numbers, with a finding where they have none. Zero agrees with everything. A result of LOG10
 *  times a constant agrees with decibels: that is how they are made. */
function agree(
  node: FormulaNode,
  verb: string,
  [left, a]: readonly [Part, CellType],
  [right, b]: readonly [Part, CellType],
  compilation: Compilation,
): CellType {
  if (isOpen(a) || isOpen(b) || a.kind !== 'number' || b.kind !== 'number')
    return a.kind === 'number' ? a : b.kind === 'number' ? b : UNKNOWN;
  if (sameDimension(a.dimension, b.dimension))
    return { ...(currencyOf(a.dimension) ? a : b), quantity: a.quantity ?? b.quantity };
  if (right.constant === 0 && isPlain(b.dimension)) return a;
  if (left.constant === 0 && isPlain(a.dimension)) return b;
  if (isPlainLogarithm(left, a, b, compilation)) return b;
  if (isPlainLogarithm(right, b, a, compilation)) return a;
  const [plain, other] = isPlainNumber(a) ? [left, b] : [right, a];
  const isConstant = plain.node.name === 'Number' && isPlainNumber(plain.type);
  const fix = isConstant ? `${compilation.slice(plain.node)} ${unitFor(other)}` : undefined;
  const remedy = fix === undefined ? 'convert one of them' : `write ${fix}`;
  compilation.report('error', node, `${capital(nounOf(b))} cannot be ${verb} ${nounOf(a)}: ${remedy}.`, fix);
  return a;
}

const isPlainLogarithm = (part: Part, own: NumberType, other: NumberType, compilation: Compilation): boolean =>
  isPlain(own.dimension) &&
  sameDimension(other.dimension, quantities.level.dimension) &&
  /\bLOG(10)?\(/i.test(compilation.slice(part.node));

const unitFor = (type: NumberType): string => {
  const quantity = type.quantity ?? quantityOf(type.dimension);
  return currencyOf(type.dimension) ?? (quantity ? defaultUnit(quantity, 'metric') : symbolOf(type.dimension));
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
