import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { measured, say, type Sentence } from '../values/say.ts';
import { basisOf, fromWatt } from './basis.ts';
import { completeDriver } from './complete-driver.ts';
import type { GivenNumbers } from './parameters.ts';
import { readRows, rowsOf, type DriverRows } from './read-rows.ts';
import { determined } from './relations.ts';
import { usual } from '../usual.ts';

/** The printed level brought to 2.83 V, and how it was understood. */
function levelAtVolts({
  numbers,
  basis,
}: DriverRows): { level?: number; basis?: string; doubts: Sentence[] } | Problem {
  const level = numbers.level;
  if (level === undefined) return { doubts: [] };
  if (basis === undefined) {
    return {
      level,
      basis: '2.83 V',
      doubts: [say`The level has no basis: 2.83 V is assumed. Add a row “Level basis”.`],
    };
  }
  const read = basisOf(basis);
  if (read === undefined) {
    return new Problem(say`The level basis “${basis}” is not known: write 2.83 V, 1 W or 1 W in Re.`, 'values');
  }
  if (read === '2.83 V') return { level, basis: read, doubts: [] };
  const ohms = read === '1 W' ? numbers.nominal : (numbers.re ?? determined('re', numbers));
  if (ohms === undefined) {
    return new Problem(
      say`A level for ${read} needs the ${read === '1 W' ? 'nominal ohms' : 'voice-coil resistance Re'}.`,
      'labels',
    );
  }
  const doubts =
    read === '1 W' && numbers.re !== undefined && numbers.re > ohms
      ? [say`Re of ${measured(numbers.re, 'resistance')} is above the nominal ${measured(ohms, 'resistance')}.`]
      : [];
  return { level: fromWatt(level, ohms), basis: read, doubts };
}

export const driverFromTable = define({
  name: 'DRIVER',
  summary:
    'A driver from the rows of its datasheet, with the missing parameters computed and contradictions pointed out.',
  parameters: {
    labels: {
      table: true,
      labels: 'labels',
      summary: 'the column of row labels, such as Fs, Qts, Cone area Sd; or two columns, labels and values',
    },
    values: { table: true, labels: 'labels', optional: true, summary: 'the column of values beside the labels' },
    name: { text: true, optional: true, summary: 'the name of the driver, when no row gives it' },
  },
  returns: { record: 'driver', summary: 'the driver' },
  source: { source: 'small1972direct', at: 'definitions of the small-signal parameters' },
  example: {
    formula: '=DRIVER(A1:A4, B1:B4, "W-165 A")',
    cells: { A1: 'Fs', B1: '38 Hz', A2: 'Qms', B2: '4.8', A3: 'Qes', B3: '0.42', A4: 'Re', B4: '5.8 ohm' },
    gives: { qts: 0.386 },
  },
  remarks:
    'Labels are read by symbol or plain name, in any case. The level is kept at 2.83 V; a level for 1 W needs the nominal ohms. Mass and compliance include the air load. What the sheet gives is never overwritten: a contradiction becomes a doubt.',
  compute({ labels, values, name }, { quantity, money }) {
    const rows = rowsOf(labels, values);
    if (rows instanceof Problem) return rows;
    const read = readRows(rows, quantity);
    if (read instanceof Problem) return read;
    const level = levelAtVolts(read);
    if (level instanceof Problem) return level;
    const numbers: GivenNumbers = { ...read.numbers };
    if (level.level !== undefined) numbers.level = level.level;
    if (Object.keys(numbers).length === 0) {
      return new Problem(
        say`No row names a driver parameter: label the rows Fs, Qms, Qes, Vas, Re, Sd and so on.`,
        'labels',
      );
    }
    const driver = completeDriver(read.name ?? name ?? '', numbers, level.basis, [...read.doubts, ...level.doubts]);
    return money ? { ...driver, money } : driver;
  },
});

export const driverOf = define({
  name: 'DRIVER.OF',
  summary: 'A driver from its small-signal parameters in one line.',
  parameters: {
    fs: { ...usual.frequency, summary: 'free-air resonance' },
    qms: { ...usual.q, summary: 'mechanical Q' },
    qes: { ...usual.q, summary: 'electrical Q' },
    vas: { ...usual.volume, summary: 'equivalent volume of the suspension' },
    re: { ...usual.ohms, summary: 'voice-coil resistance' },
    sd: { ...usual.area, summary: 'cone area' },
    xmax: { ...usual.travel, summary: 'largest one-way travel' },
    le: { quantity: 'inductance', min: 0, max: 10, default: 0, summary: 'voice-coil inductance' },
    pe: { quantity: 'power', above: 0, max: 1e9, optional: true, summary: 'thermal power limit' },
    name: { text: true, optional: true, summary: 'name' },
  },
  returns: { record: 'driver', summary: 'the driver' },
  source: { source: 'small1972direct', at: 'definitions of the small-signal parameters' },
  example: {
    formula: '=DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm")',
    gives: { qts: 0.386, bl: 7.08 },
  },
  remarks:
    'Travel is one-way: halve a peak-to-peak figure, or type it as mm p-p. Mass and compliance follow from Vas and Sd, and include the air load.',
  compute: ({ name, pe, ...rest }) => completeDriver(name ?? '', pe === undefined ? rest : { ...rest, pe }),
});
