import { define, type CellDatum, type Table } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';

interface Given {
  readonly candidates: Table;
  readonly steps: Table;
  readonly values: Table;
}

interface Regret {
  readonly name: string;
  readonly regret: number;
  /** Which of the criteria it comes from, from 0. */
  readonly by: number;
}

const isNumber = (cell: CellDatum | undefined): cell is number => typeof cell === 'number' && Number.isFinite(cell);
const nameOf = (cell: CellDatum, index: number): string =>
  typeof cell === 'string' && cell !== '' ? cell : `candidate ${index + 1}`;

/** The regret of each candidate: how far it is behind the best one where it is furthest behind, in steps. */
function regretsOf({ candidates, steps, values }: Given): readonly Regret[] | Problem {
  const names = candidates.flat().map(nameOf);
  const scales = steps.flat();
  if (values.length !== names.length)
    return new Problem(
      say`There are ${String(values.length)} rows of values for ${String(names.length)} candidates; give one row for each.`,
      'values',
    );
  if (scales.length === 0) return new Problem(say`There is no step; give one for each column of values.`, 'steps');
  const odd = values.find((row) => row.length !== scales.length);
  if (odd)
    return new Problem(
      say`There are ${String(scales.length)} steps and ${String(odd.length)} columns of values; give one step for each column.`,
      'steps',
    );
  const badStep = scales.findIndex((scale) => !isNumber(scale) || scale === 0);
  if (badStep !== -1)
    return new Problem(
      say`Step ${String(badStep + 1)} is no number other than 0; say how much of it counts as one step, negative when less is better.`,
      'steps',
    );
  for (const [row, cells] of values.entries()) {
    const bad = cells.findIndex((cell) => !isNumber(cell));
    if (bad !== -1)
      return new Problem(
        say`${names[row]!} has no number in column ${String(bad + 1)}; fill it or leave the candidate out.`,
        'values',
      );
  }
  const behind = scales.map((scale, column) => {
    const scaled = values.map((row) => (row[column] as number) / (scale as number));
    const best = Math.max(...scaled);
    return scaled.map((value) => best - value);
  });
  return names.map((name, row) => {
    const each = behind.map((column) => column[row]!);
    const regret = Math.max(...each);
    return { name, regret, by: each.indexOf(regret) };
  });
}

const parameters = {
  candidates: { table: true, summary: 'names, one below the other' },
  steps: {
    table: true,
    summary: 'for each column how much counts as one step, negative when less is better: 0.5 oct, 3 dB, −20 of a price',
  },
  values: { table: true, summary: 'values, a row for each candidate and a column for each criterion' },
} as const;
const source = { source: 'savage1951', at: 'least of the largest regrets' } as const;
const cells = {
  A1: 'M-1',
  A2: 'M-2',
  A3: 'M-3',
  B1: '0.2',
  B2: '0.9',
  B3: '1.4',
  C1: '1.2',
  C2: '0.8',
  C3: '0.1',
  D1: '0.5',
  E1: '0.5',
} as const;
const range = 'A1:A3, D1:E1, B1:C3';

export const rankRegret = define({
  name: 'RANK.REGRET',
  summary: 'How far each candidate is behind the best one where it is furthest behind, in steps.',
  parameters,
  returns: { quantity: 'ratio', column: true, summary: 'one regret beside each candidate' },
  source,
  example: { formula: `=MIN(RANK.REGRET(${range}))`, cells, gives: 1.0 },
  remarks:
    'The candidate with the smallest regret disappoints least wherever one looks: for a midrange give both windows and the level. The steps are yours and weigh the criteria: halve a step to make it count twice. One step is what you would call a real difference.',
  compute(given) {
    const regrets = regretsOf(given);
    return regrets instanceof Problem ? regrets : regrets.map(({ regret }) => regret);
  },
});

export const rankBest = define({
  name: 'RANK.BEST',
  summary: 'The name of the candidate with the smallest regret.',
  parameters,
  returns: { text: true, summary: 'name; the first of equals' },
  source,
  example: { formula: `=RANK.BEST(${range})`, cells, gives: 'M-2' },
  compute(given) {
    const regrets = regretsOf(given);
    if (regrets instanceof Problem) return regrets;
    const [first, ...rest] = regrets;
    if (!first) return new Problem(say`There is no candidate; give at least one.`, 'candidates');
    return rest.reduce((one, other) => (other.regret < one.regret ? other : one), first).name;
  },
});

export const rankTable = define({
  name: 'RANK.TABLE',
  summary: 'The candidates by their regret, the smallest first, and which column costs each the most.',
  parameters,
  returns: { record: 'table', summary: 'place, candidate, regret and the column it comes from' },
  source,
  example: { formula: `=RANK.TABLE(${range})`, cells, gives: { title: 'Ranking' } },
  remarks: 'Equals share a place. A small list of thirty rows is ranked as readily as three.',
  compute(given): TableRecord | Problem {
    const regrets = regretsOf(given);
    if (regrets instanceof Problem) return regrets;
    const sorted = regrets.toSorted((one, other) => one.regret - other.regret);
    return {
      kind: 'table',
      title: 'Ranking',
      columns: [
        { name: 'Place', quantity: 'ratio' },
        { name: 'Candidate', quantity: 'text' },
        { name: 'Regret', quantity: 'ratio' },
        { name: 'Column', quantity: 'ratio' },
      ],
      rows: sorted.map(({ name, regret, by }) => [
        1 + sorted.filter((other) => other.regret < regret).length,
        name,
        regret,
        by + 1,
      ]),
    };
  },
});
