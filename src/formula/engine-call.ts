import type { FormulaNode } from './tree.ts';
import { quantities } from '../../functions/quantities.ts';
import { defaultUnit } from '../units/defaults.ts';
import { isPlain, quantityOf, sameDimension, symbolOf, times } from '../units/dimension.ts';
import { cellRows, type Cell } from './cell-rows.ts';
import { joinedInSi } from './operators.ts';
import { type Compilation, type Part, type Slot } from './part.ts';
import { ruleOf } from './engine-functions.ts';
import { either, isOpen, nounOf, RATIO, TEXT, TRUTH, UNKNOWN, type NumberType } from './type-of.ts';
import type { CellType } from './types.ts';

/** A call of a function that the engine brings itself. */
export function compileEngineCall(
  node: FormulaNode,
  name: string,
  slots: readonly Slot[],
  compilation: Compilation,
): Part {
  const parts = slots.map((slot) => slot && compilation.part(slot));
  const text = `${name}(${parts.map((part) => part?.text ?? '').join(',')})`;
  const present = parts.filter((part) => part !== undefined);
  return { text, type: typeOfCall(node, name, parts, present, compilation), node };
}

function typeOfCall(
  node: FormulaNode,
  name: string,
  parts: readonly (Part | undefined)[],
  present: readonly Part[],
  compilation: Compilation,
): CellType {
  if (name === 'SQRT') return raised(present[0], 0.5);
  if (name === 'POWER') return raised(present[0], present[1]?.constant);
  if (name === 'PRODUCT') return UNKNOWN;
  switch (ruleOf(name)) {
    case 'same':
      return common(name, present, compilation);
    case 'first':
      if (ROUNDING.has(name)) roundedInSi(node, name, present, compilation);
      return numeric(present[0]?.type ?? UNKNOWN);
    case 'plain':
      return plain(node, name, present, compilation);
    case 'truth':
      return TRUTH;
    case 'text':
      for (const part of present) joinedInSi(part, compilation);
      return TEXT;
    case 'branches':
      return branches(name, parts);
    case 'open':
      return UNKNOWN;
  }
}

const ROUNDING = new Set(['ROUND', 'ROUNDUP', 'ROUNDDOWN', 'INT', 'TRUNC', 'CEILING', 'FLOOR', 'MROUND']);

/** 12.4 L rounded to whole numbers would be 0: the engine rounds cubic metres. A step with the same unit is meant as such. */
function roundedInSi(
  node: FormulaNode,
  name: string,
  [number, step]: readonly Part[],
  { report, slice }: Compilation,
): void {
  if (number?.type.kind !== 'number' || isPlain(number.type.dimension)) return;
  const { dimension, quantity = quantityOf(dimension) } = number.type;
  if (step?.type.kind === 'number' && sameDimension(step.type.dimension, dimension)) return;
  const unit = quantity === undefined ? symbolOf(dimension) : defaultUnit(quantity, 'metric');
  const written = slice(number.node);
  const advice =
    quantity === undefined || quantity === 'temperature'
      ? ''
      : `: write ${name}((${written})/1 ${unit}${step ? `, ${slice(step.node)}` : ''})*1 ${unit}`;
  report('doubt', node, `${name} rounds ${written} in ${symbolOf(dimension)}, not in the unit shown${advice}.`);
}

const numeric = (type: CellType): CellType => (type.kind === 'number' ? type : type.kind === 'truth' ? RATIO : UNKNOWN);

function raised(part: Part | undefined, exponent: number | undefined): CellType {
  if (part?.type.kind !== 'number') return UNKNOWN;
  if (isPlain(part.type.dimension)) return RATIO;
  if (exponent === undefined) return UNKNOWN;
  const dimension = times({}, part.type.dimension, exponent);
  return { kind: 'number', dimension, quantity: quantityOf(dimension) };
}

/** The dimension that all arguments share; zeros and empty cells fit anywhere. */
function common(name: string, parts: readonly Part[], compilation: Compilation): CellType {
  let type: CellType = { kind: 'empty' };
  for (const part of parts) {
    const next = part.type.kind === 'unknown' ? numbersIn(name, part, compilation) : part.type;
    if (isOpen(next) || part.constant === 0) continue;
    if (next.kind !== 'number') {
      if (next.kind === 'record') {
        compilation.report(
          'error',
          part.node,
          `${name} wants numbers, but ${compilation.slice(part.node)} holds ${nounOf(next)}.`,
        );
      }
      return UNKNOWN;
    }
    if (type.kind === 'number' && !sameDimension(type.dimension, next.dimension)) {
      const message = `${name} cannot mix ${nounOf(type)} and ${nounOf(next)}: give all arguments in one kind of unit.`;
      compilation.report('error', part.node, message);
      return type;
    }
    type = type.kind === 'empty' ? next : either(type, next);
  }
  return type.kind === 'empty' ? (parts.some((part) => part.constant === 0) ? RATIO : UNKNOWN) : type;
}

/** What the numbers of a range share: its texts and typed zeros do not count. Reports the first cell that holds another kind of number
 *  than one before it. */
function numbersIn(name: string, part: Part, compilation: Compilation): CellType {
  const { scope, report } = compilation;
  let first: { readonly cell: string; readonly type: NumberType } | undefined;
  let shared: CellType = { kind: 'empty' };
  let isKnown = true;
  for (const { sheet, cell } of cellRows(part, compilation).flat()) {
    const type = scope.typeOf(sheet, cell);
    if (type.kind === 'unknown' || type.kind === 'record') isKnown = false;
    if (type.kind !== 'number' || scope.textOf(sheet, cell) === '0') continue;
    first ??= { cell, type };
    if (!sameDimension(first.type.dimension, type.dimension)) {
      const message = `${name} cannot mix ${nounOf(first.type)} and ${nounOf(type)}: ${first.cell} holds ${nounOf(first.type)}, ${cell} ${nounOf(type)}. Give all of them one kind of unit.`;
      report('error', part.node, message);
      return UNKNOWN;
    }
    shared = either(shared, type);
  }
  return isKnown ? shared : UNKNOWN;
}

const ANGLES = new Set(['SIN', 'COS', 'TAN']);
const ARGUMENTS_IN_PLAIN = new Set([
  'LOG',
  'LOG10',
  'LN',
  'EXP',
  'SIN',
  'COS',
  'TAN',
  'ASIN',
  'ACOS',
  'ATAN',
  'SINH',
  'COSH',
  'TANH',
]);
const ARC = new Set(['ASIN', 'ACOS', 'ATAN', 'ATAN2']);

function plain(node: FormulaNode, name: string, parts: readonly Part[], compilation: Compilation): CellType {
  const [first] = parts;
  if (name === 'COUNTIF' && first && cellRows(first, compilation).flat().some(isVerdict(compilation)))
    compilation.report('doubt', node, 'COUNTIF does not look into verdicts: CHECK.COUNT("good", …) counts them.');
  const type = first?.type;
  if (ARGUMENTS_IN_PLAIN.has(name) && type?.kind === 'number' && !isPlain(type.dimension)) {
    const isAngle = ANGLES.has(name) && sameDimension(type.dimension, quantities.angle.dimension);
    if (!isAngle)
      compilation.report(
        'error',
        first?.node ?? node,
        `${name} wants a plain number, but this is ${nounOf(type)}: divide by one of its kind first.`,
      );
  }
  return ARC.has(name) ? { kind: 'number', dimension: quantities.angle.dimension, quantity: 'angle' } : RATIO;
}

const isVerdict =
  ({ scope }: Compilation) =>
  ({ sheet, cell }: Cell): boolean => {
    const type = scope.typeOf(sheet, cell);
    return type.kind === 'record' && type.record === 'verdict';
  };

/** What the branches of a choice share. A text beside numbers, as in `IF(x, "none", 1 mH)`, takes no unit from them. */
function branches(name: string, parts: readonly (Part | undefined)[]): CellType {
  const given = pick(name, parts).filter((part) => part !== undefined && part.text !== '""');
  const counted = given.filter((part) => part?.node.name !== 'Text');
  const candidates = counted.length > 0 ? counted : given;
  return candidates.reduce<CellType>((type, part) => (!part || part.constant === 0 ? type : either(type, part.type)), {
    kind: 'empty',
  });
}

function pick(name: string, parts: readonly (Part | undefined)[]): readonly (Part | undefined)[] {
  switch (name) {
    case 'IF':
    case 'CHOOSE':
      return parts.slice(1);
    case 'IFS':
      return parts.filter((_, index) => index % 2 === 1);
    case 'SWITCH':
      return parts.filter(
        (_, index) => index > 0 && (index % 2 === 0 || (index === parts.length - 1 && parts.length % 2 === 0)),
      );
    default:
      return parts;
  }
}
