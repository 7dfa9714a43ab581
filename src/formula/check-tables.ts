import type { FunctionDescription, TableParameter } from '../../functions/define.ts';
import { labelOf } from '../../functions/driver/labels.ts';
import { quantities, type QuantityName } from '../../functions/quantities.ts';
import { defaultUnit } from '../units/defaults.ts';
import { isPlain, quantityOf, sameDimension } from '../units/dimension.ts';
import { cellRows, type Cell } from './cell-rows.ts';
import type { Money } from './money.ts';
import type { Compilation, Part } from './part.ts';
import { nounOf } from './type-of.ts';

/** Reports every cell of the tables of a call whose number is of another quantity than its parameter, its column or the label of its row says.
 *  @param tables - What is given for the table parameters, by their names.
 *  @param money - That of the other numbers of the call. */
export function checkTables(
  { name, parameters }: FunctionDescription,
  tables: ReadonlyMap<string, Part>,
  money: Money,
  compilation: Compilation,
): void {
  const { scope } = compilation;
  for (const [parameter, part] of tables) {
    const declared = parameters[parameter] as TableParameter;
    for (const [{ sheet, cell }, wanted, row] of expected(declared, parameter, tables, compilation)) {
      const type = scope.typeOf(sheet, cell);
      if (type.kind !== 'number' || isPlain(type.dimension)) continue;
      const { dimension, noun } = quantities[wanted];
      const mixed = money.heed(type, cell);
      if (mixed !== undefined) compilation.report('error', part.node, `${name}, ${parameter}: ${mixed}`);
      if (sameDimension(type.dimension, dimension)) continue;
      const unit = defaultUnit(wanted, 'metric');
      const at = row === undefined ? cell : `${cell}, “${row}”,`;
      compilation.report(
        'error',
        part.node,
        `${name}, ${parameter}: ${nounOf(type)} in the place of ${noun}; ${at} holds ${nounOf(type)}. Type ${unit === '' ? 'a plain number' : `a number in ${unit}`} there.`,
      );
    }
  }
}

type Expected = readonly [cell: Cell, wanted: QuantityName, row?: string];

function expected(
  { of, columns, labels }: TableParameter,
  parameter: string,
  tables: ReadonlyMap<string, Part>,
  compilation: Compilation,
): readonly Expected[] {
  const rows = cellRows(tables.get(parameter), compilation);
  if (of !== undefined) return rows.flat().map((cell) => [cell, of]);
  if (columns !== undefined)
    return rows.flatMap((row) =>
      row.flatMap((cell, index): Expected[] => {
        const wanted = columns[index];
        return wanted ? [[cell, wanted]] : [];
      }),
    );
  return labelled(parameter, tables, compilation, labels).flatMap(([cell, row]): Expected[] => {
    const meant = labelOf(row);
    return typeof meant === 'object' ? [[cell, meant.quantity, row.trim()]] : [];
  });
}

/** What the cell of the level basis in a table of labels holds: as numbers, 1 V and 1 W are the same. */
export function quantityOfBasis(
  { parameters }: FunctionDescription,
  tables: ReadonlyMap<string, Part>,
  compilation: Compilation,
): QuantityName | undefined {
  for (const parameter of tables.keys()) {
    const { labels } = parameters[parameter] as TableParameter;
    const basis = labelled(parameter, tables, compilation, labels).find(([, row]) => labelOf(row) === 'basis');
    const type = basis && compilation.scope.typeOf(basis[0].sheet, basis[0].cell);
    if (type?.kind === 'number') return type.quantity ?? quantityOf(type.dimension);
  }
  return undefined;
}

/** The cells of a table with what the labels say beside them. */
function labelled(
  parameter: string,
  tables: ReadonlyMap<string, Part>,
  compilation: Compilation,
  labels: string | undefined,
): readonly (readonly [cell: Cell, label: string])[] {
  if (labels === undefined) return [];
  const rows = cellRows(tables.get(parameter), compilation);
  const isBeside = labels === parameter;
  const names = cellRows(tables.get(labels), compilation).flatMap((row) => (isBeside ? row.slice(0, 1) : row));
  const values = isBeside ? rows.flatMap((row) => row.slice(1, 2)) : rows.flat();
  return values.flatMap((cell, index) => {
    const label = names[index];
    return label ? [[cell, compilation.scope.textOf(label.sheet, label.cell)] as const] : [];
  });
}
