import { childNamed, type FormulaNode } from './tree.ts';
import { fieldsOf } from '../../functions/values/fields.ts';
import { formatAddress, MOST_ROWS, parseAddress, type CellAddress } from './address.ts';
import { readRectangle, sizeOf } from './area.ts';
import { engineFunctions } from './engine-functions.ts';
import { type Compilation, type Part } from './part.ts';
import { nearest } from './nearest.ts';
import { either, numberIn, TEXT, UNKNOWN } from './type-of.ts';
import type { CellType, Scope } from './types.ts';

/** No more cells than this are asked for the type of a range; ranges that large hold one thing. */
const LOOKED_AT = 400;
/** The engine keeps each cell of a range: a million of them fill the memory of a page. */
const MOST_CELLS = 500_000;

/** Compiles `B4`, `B4:C18`, `Name`, `Name.field`, each with or without `Sheet!` before it. */
export function compileReference(node: FormulaNode, compilation: Compilation): Part {
  const sheet = sheetOf(node, compilation);
  if (sheet === undefined) return { text: '#REF!', type: UNKNOWN, node };
  if (node.name === 'Name') return compileName(node, sheet, compilation);
  const cells = node.children
    .filter((child) => child.name === 'Address')
    .map((child) => compilation.slice(child).toUpperCase())
    .join(':');
  return toCells(node, sheet, cells, compilation);
}

function sheetOf(node: FormulaNode, compilation: Compilation): string | undefined {
  const written = childNamed(node, 'Sheet');
  if (!written) return compilation.scope.sheet;
  const name = sheetName(compilation.slice(written));
  const id = compilation.scope.sheetNamed(name);
  if (id === undefined) compilation.report('error', written, `There is no sheet called “${name}”: check its name.`);
  return id;
}

/** A sheet's name as written before `!`, without its quotes. */
export const sheetName = (written: string): string =>
  written.startsWith("'") ? written.slice(1, -1).replaceAll("''", "'") : written;

function compileName(node: FormulaNode, sheet: string, compilation: Compilation): Part {
  const { scope } = compilation;
  const word = nameIn(compilation.slice(node));
  const whole = scope.cellsNamed(sheet, word);
  if (whole !== undefined) return toCells(node, sheet, fixed(whole), compilation);
  const dot = word.indexOf('.');
  const holder = dot > 0 ? recordCell(sheet, word.slice(0, dot), compilation) : undefined;
  if (holder !== undefined)
    return compileField(node, toCells(node, sheet, holder, compilation), word.slice(dot + 1), compilation);
  if (/^[A-Z]{1,3}\d{7,}$/i.test(word)) return beyond(word, node, compilation);
  const close = nearName(word, scope.namesOf(sheet));
  const advice =
    misread(word, scope) ?? (close && `did you mean ${close}?`) ?? 'give a cell that name, or write its address.';
  compilation.report('error', node, `No cell here is called “${word}”: ${advice}`, close);
  return { text: '#NAME?', type: UNKNOWN, node };
}

/** The name that was probably meant; of a part of a record, what stands before the point. */
function nearName(word: string, names: readonly string[]): string | undefined {
  const whole = nearest(word, names);
  const dot = word.indexOf('.');
  if (whole !== undefined || dot < 1) return whole;
  const holder = nearest(word.slice(0, dot), names);
  return holder && holder + word.slice(dot);
}

/** What a word is that was not meant as a name: a function without its brackets, or money with its sign in front. */
function misread(word: string, { functions }: Scope): string | undefined {
  const name = word === 'π' ? 'PI' : word.toUpperCase();
  if (name === 'PI') return 'the number is written PI().';
  if (functions.has(name) || engineFunctions.has(name)) return `the function is written ${name}(…).`;
  const money = /^([€$£¥¤])(\d[\d.]*)$/.exec(word);
  return money ? `money is written ${money[2]} ${money[1]}.` : undefined;
}

const nameIn = (written: string): string => written.slice(written.lastIndexOf('!') + 1);

/** The cell of `Woofer` in `Woofer.fs`; an address serves as well as a name. */
function recordCell(sheet: string, word: string, { scope }: Compilation): string | undefined {
  const named = scope.cellsNamed(sheet, word);
  if (named !== undefined) return fixed(named);
  return parseAddress(word) && word.toUpperCase();
}

/** A name means the same cells wherever it is written. */
const fixed = (cells: string): string => cells.replaceAll(/[A-Z]+|\d+/g, '$$$&');

/** A field of a record, as an own call of the engine. */
export function compileField(node: FormulaNode, record: Part, name: string, compilation: Compilation): Part {
  const text = `FIELD(${record.text},"${name.toLowerCase()}")`;
  const { type } = record;
  if (type.kind === 'unknown') return { text, type: UNKNOWN, node };
  if (type.kind !== 'record') {
    compilation.report(
      'error',
      node,
      `“.${name}” asks for a part of a record, but ${compilation.slice(node).split('.')[0] ?? ''} holds none: refer to a driver, a box, a curve, a window or a verdict.`,
    );
    return { text, type: UNKNOWN, node };
  }
  const fields = fieldsOf(type.record);
  const field = fields.find((each) => each.name.toLowerCase() === name.toLowerCase());
  if (!field) {
    const names = fields.map((each) => each.name);
    const close = nearest(name, names);
    compilation.report(
      'error',
      node,
      `A ${type.record} has no part “${name}”: ${close ? `did you mean ${close}?` : `it has ${names.join(', ')}.`}`,
    );
    return { text, type: UNKNOWN, node };
  }
  return {
    text: `FIELD(${record.text},"${field.name}")`,
    type: field.quantity === 'text' ? TEXT : numberIn(type.money ?? '', field.quantity),
    node,
  };
}

/** @param written - As the formula says it, with a `$` before what does not count from its own cell. */
function toCells(node: FormulaNode, sheet: string, written: string, compilation: Compilation): Part {
  const cells = written.replaceAll('$', '');
  const [first = '', last = first] = cells.split(':');
  const far = [first, last].find((cell) => (parseAddress(cell)?.row ?? 0) >= MOST_ROWS);
  if (far !== undefined) return beyond(far, node, compilation);
  const area = first === last ? undefined : readRectangle(cells);
  const size = area ? sizeOf(area) : 1;
  if (size > MOST_CELLS)
    return unusable(
      `${cells} is ${size} cells, but a range holds at most ${MOST_CELLS}: refer to fewer.`,
      node,
      compilation,
    );
  compilation.references.push({ sheet, cells });
  const prefix = sheet === compilation.scope.sheet ? '' : `'${sheet}'!`;
  const type = first === last ? compilation.scope.typeOf(sheet, first) : typeOfRange(sheet, first, last, compilation);
  return { text: prefix + written, type, node };
}

const beyond = (cell: string, node: FormulaNode, compilation: Compilation): Part =>
  unusable(`${cell} lies beyond the last row of a sheet, ${MOST_ROWS}: refer to a cell above it.`, node, compilation);

function unusable(message: string, node: FormulaNode, { report }: Compilation): Part {
  report('error', node, message);
  return { text: '#REF!', type: UNKNOWN, node };
}

function typeOfRange(sheet: string, first: string, last: string, { scope }: Compilation): CellType {
  const a = parseAddress(first);
  const b = parseAddress(last);
  if (!a || !b) return UNKNOWN;
  let type: CellType = { kind: 'empty' };
  for (const cell of cellsBetween(a, b)) {
    const next = scope.typeOf(sheet, formatAddress(cell));
    if (next.kind === 'unknown') return UNKNOWN;
    type = either(type, next);
    if (type.kind === 'unknown') return UNKNOWN;
  }
  return type;
}

function* cellsBetween(a: CellAddress, b: CellAddress): Generator<CellAddress> {
  let left = LOOKED_AT;
  for (let row = Math.min(a.row, b.row); row <= Math.max(a.row, b.row); row++) {
    for (let column = Math.min(a.column, b.column); column <= Math.max(a.column, b.column); column++) {
      if (left-- === 0) return;
      yield { row, column };
    }
  }
}
