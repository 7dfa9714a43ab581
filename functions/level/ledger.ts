import { standardVolts } from '../air.ts';
import { define } from '../define.ts';
import { fromWatt } from '../driver/basis.ts';
import { usual } from '../usual.ts';
import type { TableRecord } from '../values/table.ts';
import { decay, distance, ohms, power, together } from './parameters.ts';
import { lossTo, wattsFor } from './seat.ts';

const loss = { quantity: 'level', min: 0, max: 60, default: 0, typical: [0, 10] } as const;

type Row = TableRecord['rows'][number];
interface Step {
  readonly name: string;
  readonly change: number;
  readonly reason: string;
}

/** Rows of a running level: each step with what it changes and what it leaves. Steps that change nothing stay, so that a
 *  row keeps its place. */
function running(first: number, steps: readonly Step[]): { readonly rows: readonly Row[]; readonly level: number } {
  let level = first;
  const rows = steps.map(({ name, change, reason }): Row => {
    level += change;
    return [name, change, level, null, null, reason];
  });
  return { rows, level };
}

export const levelLedger = define({
  name: 'LEVEL.LEDGER',
  summary: 'From the printed decibels to the watts at the chair, step by step.',
  parameters: {
    level: { ...usual.level, typical: [70, 115], summary: 'level of the loudest-needed driver, as printed' },
    basis: { choice: ['2.83 V', '1 W'], default: '2.83 V', summary: 'what the printed level is for' },
    ohms,
    makeUp: { ...loss, summary: 'make-up of the edge step' },
    seriesLoss: { ...loss, summary: 'loss in coils, cable and pads ahead of it' },
    distance,
    decay,
    together,
    peaks: { ...usual.level, default: 100, typical: [85, 115], summary: 'level of the peaks wanted at the chair' },
    amplifier: { ...power, optional: true, summary: 'power of the amplifier into those ohms' },
  },
  returns: { record: 'table', summary: 'step, change, level, watts, volts, reason' },
  source: { source: 'practice', at: 'chain of decibels; 3 dB per doubling in a room, 6 dB in the open' },
  example: {
    formula: '=LEVEL.LEDGER("89.2 dB", "2.83 V", "8 ohm", "4.5 dB", 0, "2.8 m", "3 dB", "3 dB", "100 dB", "100 W")',
    gives: { title: 'From the printed level to the watts', rows: 9 },
  },
  remarks:
    'TABLE.AT and TABLE.TEXT read it row by row. The last rows say the watts and volts for the peaks, and the headroom when the amplifier is given.',
  compute: (given): TableRecord => {
    const { rows, level } = running(given.level, [
      {
        name: 'At 2.83 V',
        change: given.basis === '1 W' ? fromWatt(given.level, given.ohms) - given.level : 0,
        reason: given.basis === '1 W' ? 'The print is for 1 W into these ohms' : 'The print is for 2.83 V already',
      },
      {
        name: 'Edge make-up',
        change: -given.makeUp,
        reason: 'Bass wraps round the cabinet; the rest comes down to it',
      },
      {
        name: 'Coils, cable, pads',
        change: -given.seriesLoss,
        reason: 'What stands ahead of the driver takes its share',
      },
      {
        name: 'Distance',
        change: -lossTo(given.distance, given.decay),
        reason: 'Sound spreads; a room gives part of it back',
      },
      { name: 'Further loudspeakers', change: given.together, reason: 'Powers add: 3 dB for a stereo pair' },
    ]);
    const raise = given.peaks - level;
    const watts = wattsFor(raise, given.ohms);
    const { amplifier } = given;
    return {
      kind: 'table',
      title: 'From the printed level to the watts',
      columns: [
        { name: 'Step', quantity: 'text' },
        { name: 'Change', quantity: 'level' },
        { name: 'Level', quantity: 'level' },
        { name: 'Power', quantity: 'power' },
        { name: 'Voltage', quantity: 'voltage' },
        { name: 'Reason', quantity: 'text' },
      ],
      rows: [
        ['As printed', null, given.level, null, null, `Level at 1 m for ${given.basis}`],
        ...rows,
        ['Peaks wanted', raise, given.peaks, watts, standardVolts * 10 ** (raise / 20), 'What 2.83 V falls short of'],
        ...(amplifier === undefined ? [] : [headroomRow(amplifier, watts, given)]),
        ['Hearing', null, given.peaks, null, null, hearingOf(given.peaks)],
      ],
    };
  },
});

const headroomRow = (
  amplifier: number,
  watts: number,
  given: { readonly ohms: number; readonly peaks: number },
): Row => {
  const headroom = 10 * Math.log10(amplifier / watts);
  return [
    'Amplifier',
    headroom,
    given.peaks + headroom,
    amplifier,
    Math.sqrt(amplifier * given.ohms),
    headroom >= 3
      ? 'Headroom to spare'
      : headroom >= 0
        ? 'Tight: less than 3 dB to spare'
        : 'Clips before the peaks wanted',
  ];
};

const hearingOf = (peaks: number): string =>
  peaks > 100
    ? 'Only for moments: peaks above 100 dB at the chair wear on the ear'
    : 'Mind how long it lasts, see HEARING.TIME';
