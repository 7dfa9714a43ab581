import { define, type CellDatum } from '../define.ts';
import type { Leg, Network } from '../values/network.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { capacitance, coilResistance, inductance, resistance } from './parameters.ts';

const places = new Map<string, Leg['place']>(
  Object.entries({
    series: 'series',
    'in series': 'series',
    shunt: 'shunt',
    across: 'shunt',
  } as const),
);
const forms = new Map<string, Leg['form']>(
  Object.entries({
    '': 'chain',
    chain: 'chain',
    'parts in series': 'chain',
    tank: 'tank',
    'parts in parallel': 'tank',
  } as const),
);

/** The parts of a row after place and form, with what counts as a value of each. */
const columns = [
  { key: 'resistance', noun: 'resistor', quantity: 'resistance', min: 1e-3, max: 1e6 },
  { key: 'inductance', noun: 'coil', quantity: 'inductance', min: 1e-9, max: 10 },
  { key: 'coilResistance', noun: 'coil resistance', quantity: 'resistance', min: 0, max: 1e6 },
  { key: 'capacitance', noun: 'capacitor', quantity: 'capacitance', min: 1e-12, max: 1 },
] as const;
type Values = Partial<Record<(typeof columns)[number]['key'], number>>;
const labelColumn = 2 + columns.length;

const isEmpty = (cell: CellDatum | undefined): boolean => cell === undefined || cell === null || cell === '';
const word = (cell: CellDatum | undefined): string => (typeof cell === 'string' ? cell.trim().toLowerCase() : '');
const wrong = (message: ReturnType<typeof say>): Problem => new Problem(message, 'parts');

function valuesOf(row: readonly CellDatum[], line: string): Values | Problem {
  const values: Values = {};
  for (const [index, { key, noun, quantity, min, max }] of columns.entries()) {
    const cell = row[index + 2];
    if (isEmpty(cell) || (cell === 0 && key !== 'coilResistance')) continue;
    if (typeof cell !== 'number' || !(cell >= min && cell <= max))
      return wrong(
        say`The ${noun} in row ${line} must be a number from ${measured(min, quantity)} to ${measured(max, quantity)}; correct it or leave the cell empty.`,
      );
    if (cell !== 0) values[key] = cell;
  }
  return values;
}

function legOf(row: readonly CellDatum[], line: string): Leg | Problem {
  const place = places.get(word(row[0]));
  if (place === undefined)
    return wrong(say`Row ${line} begins with “${word(row[0])}”; write “series” or “across” there.`);
  const form = forms.get(word(row[1]));
  if (form === undefined)
    return wrong(
      say`The second cell of row ${line} is “${word(row[1])}”; write “chain” for parts in series, “tank” for parts side by side, or leave it empty.`,
    );
  const values = valuesOf(row, line);
  if (values instanceof Problem) return values;
  if (values.coilResistance !== undefined && values.inductance === undefined)
    return wrong(say`Row ${line} has a coil resistance without a coil; put it into the column of resistors.`);
  if (Object.keys(values).length === 0)
    return wrong(say`Row ${line} has no part; give a resistor, a coil or a capacitor, or empty the row.`);
  const label = row[labelColumn];
  return { place, form, ...values, ...(typeof label === 'string' && label !== '' ? { label } : {}) };
}

export const networkOf = define({
  name: 'NETWORK.OF',
  summary: 'A filter read from a table of its parts, a row a leg, from the amplifier to the driver.',
  parameters: {
    parts: {
      table: true,
      columns: [null, null, ...columns.map(({ quantity }) => quantity)],
      summary:
        'columns: series or across; chain or tank; resistor; coil; coil resistance; capacitor; and, if wanted, a label',
    },
    title: { text: true, default: 'Filter', summary: 'what it is called' },
  },
  returns: { record: 'network', summary: 'the filter' },
  source: { source: 'own', at: 'legs of a ladder, solved part by part' },
  example: { formula: '=NETWORK.OF("", "Nothing yet")', gives: { name: 'Nothing yet', legs: 0 } },
  remarks:
    'Chain: the parts of the row one after another; tank: side by side. Empty cells and zeros are parts that are not there. Empty rows are left out; a table without parts is a wire. A row reads for instance: series, chain, nothing, 1.06 mH, 0.3 Ω, nothing.',
  compute: (given): Network | Problem => {
    const legs: Leg[] = [];
    for (const [index, row] of given.parts.entries()) {
      if (row.every((cell) => isEmpty(cell))) continue;
      const leg = legOf(row, String(index + 1));
      if (leg instanceof Problem) return leg;
      legs.push(leg);
    }
    return { kind: 'network', name: given.title, legs };
  },
});

const maybe = { optional: true } as const;

export const networkLeg = define({
  name: 'NETWORK.LEG',
  summary: 'One leg of a filter with any parts: in series or across, one after another or side by side.',
  parameters: {
    place: { choice: ['series', 'across'], summary: 'in the way of the signal, or across what follows' },
    form: { choice: ['chain', 'tank'], summary: 'parts one after another, or side by side' },
    resistor: { ...resistance, ...maybe, summary: 'resistor; none when left out' },
    coil: { ...inductance, ...maybe, summary: 'coil; none when left out' },
    coilResistance,
    capacitor: { ...capacitance, ...maybe, summary: 'capacitor; none when left out' },
  },
  returns: { record: 'network', summary: 'piece of a filter, for NETWORK.JOIN' },
  source: { source: 'own', at: 'legs of a ladder, solved part by part' },
  example: {
    formula: '=NETWORK.LEG("series", "chain", , "1.06 mH", "0.3 ohm")',
    gives: { name: 'Leg', legs: 1, coils: 1, resistors: 0 },
  },
  compute: (given): Network | Problem => {
    const row = [given.place, given.form, given.resistor, given.coil, given.coilResistance, given.capacitor];
    const leg = legOf(
      row.map((cell, index) => (index === 4 && given.coil === undefined ? null : (cell ?? null))),
      '1',
    );
    return leg instanceof Problem
      ? new Problem(say`A leg needs a resistor, a coil or a capacitor; give at least one.`, 'resistor')
      : { kind: 'network', name: 'Leg', legs: [leg] };
  },
});
