import { define, type CellDatum, type Table } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';

interface Line {
  readonly item: string;
  readonly group: string;
  readonly count: number;
  readonly each: number;
  readonly total: number;
}

const column = (summary: string) => ({ table: true, summary }) as const;
const items = column('names, a column');
const counts = { ...column('how many of each, a column'), of: 'ratio' } as const;
const prices = { ...column('price of one, a column'), of: 'price' } as const;
const spares = {
  quantity: 'ratio',
  min: 0,
  max: 1,
  default: 0,
  summary: 'share bought in reserve, rounded up to whole pieces on every line',
} as const;
const groups = { table: true, optional: true, summary: 'group of each, a column' } as const;
const owned = {
  table: true,
  optional: true,
  summary: 'yes or TRUE for what is there already, a column; it costs nothing',
} as const;

const single = (table: Table): readonly CellDatum[] => table.flat();

/** What a cell says in words; nothing where it is empty or holds a thing. */
const wordsOf = (cell: CellDatum | undefined): string =>
  cell === undefined || typeof cell === 'object' ? '' : String(cell);

interface Given {
  readonly items: Table;
  readonly counts: Table;
  readonly prices: Table;
  readonly groups?: Table | undefined;
  readonly owned?: Table | undefined;
  readonly spares: number;
}

/** The lines of a basket; a row without a name is left out, one with a name must have its numbers. */
function linesOf(given: Given): readonly Line[] | Problem {
  const names = single(given.items);
  const lines: Line[] = [];
  for (const [row, name] of names.entries()) {
    if (name === null || name === '') continue;
    if (typeof name === 'object')
      return new Problem(
        say`Row ${String(row + 1)} of the basket has a ${name.kind} for its name. Type a text.`,
        'items',
      );
    const item = String(name);
    const count = single(given.counts)[row] ?? 0;
    const each = single(given.prices)[row] ?? 0;
    for (const [what, value] of [
      ['counts', count],
      ['prices', each],
    ] as const)
      if (typeof value !== 'number' || value < 0)
        return new Problem(
          say`Row ${String(row + 1)} of the basket, ${item}, has ${typeof value === 'number' ? 'a negative number' : 'no number'} among its ${what}. Type a number of 0 or more.`,
          what,
        );
    const isOwned = /^(true|yes)$/i.test(wordsOf(single(given.owned ?? [])[row]));
    const bought = isOwned ? 0 : Math.ceil((count as number) * (1 + given.spares) - 1e-9);
    const group = wordsOf(single(given.groups ?? [])[row]);
    lines.push({ item, group, count: bought, each: each as number, total: bought * (each as number) });
  }
  return lines;
}

const sum = (lines: readonly Line[]): number => lines.reduce((total, line) => total + line.total, 0);
const counting = { source: 'own', at: 'count times price, line by line' } as const;
const shipping = { quantity: 'price', min: 0, max: 1e9, default: 0, summary: 'shipping, once' } as const;

export const basketTotal = define({
  name: 'BASKET.TOTAL',
  summary: 'What a list of parts costs in all.',
  parameters: { items, counts, prices, shipping, spares, owned },
  returns: { quantity: 'price', summary: 'sum over all lines and the shipping' },
  source: counting,
  example: { formula: '=BASKET.TOTAL("Woofer", 2, QTY("62 ¤"), "9 ¤")', gives: 133 },
  remarks: 'Coils, wire, terminals, filling, finish and shipping are soon forgotten. Spares are whole pieces.',
  compute(given) {
    const lines = linesOf(given);
    return lines instanceof Problem ? lines : sum(lines) + given.shipping;
  },
});

export const basketShare = define({
  name: 'BASKET.SHARE',
  summary: 'The share of one group in what the parts cost.',
  parameters: {
    group: { text: true, summary: 'name of the group' },
    items,
    counts,
    prices,
    groups: column('group of each, a column'),
    spares,
    owned,
  },
  returns: { quantity: 'ratio', summary: 'share between 0 and 1' },
  source: counting,
  example: { formula: '=BASKET.SHARE("Drivers", "Woofer", 2, QTY("62 ¤"), "Drivers")', gives: 1 },
  compute(given) {
    const lines = linesOf(given);
    if (lines instanceof Problem) return lines;
    const wanted = given.group.toLowerCase();
    const all = sum(lines);
    return all === 0 ? 0 : sum(lines.filter(({ group }) => group.toLowerCase() === wanted)) / all;
  },
});

export const basketTable = define({
  name: 'BASKET.TABLE',
  summary: 'The shopping list with what each line costs and its share.',
  parameters: { items, counts, prices, groups, spares, owned },
  returns: { record: 'table', summary: 'item, group, count, price each, price, share' },
  source: counting,
  example: { formula: '=BASKET.TABLE("Woofer", 2, QTY("62 ¤"))', gives: { rows: 1 } },
  compute(given): TableRecord | Problem {
    const lines = linesOf(given);
    if (lines instanceof Problem) return lines;
    const all = sum(lines);
    return {
      kind: 'table',
      title: 'Basket',
      columns: [
        { name: 'Item', quantity: 'text' },
        { name: 'Group', quantity: 'text' },
        { name: 'Count', quantity: 'ratio' },
        { name: 'Each', quantity: 'price' },
        { name: 'Price', quantity: 'price' },
        { name: 'Share', quantity: 'ratio' },
      ],
      rows: lines.map(({ item, group, count, each, total }) => [
        item,
        group,
        count,
        each,
        total,
        all === 0 ? 0 : total / all,
      ]),
    };
  },
});
