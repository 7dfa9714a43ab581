import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { outsideOf } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { across, divided, plus, sizeOf, type Complex } from './complex.ts';
import { impedanceAt, notWhole } from './impedance.ts';
import { quieter } from './pad.ts';
import { seriesNames, standardNear, type Series } from './preferred.ts';

const loss = {
  quantity: 'level',
  min: -300,
  max: 60,
  summary: 'how much quieter the driver becomes',
  typical: [0, 10],
} as const;
const ohms = { ...usual.ohms, summary: 'real ohms of the driver in its band' } as const;
const numbers = { choice: seriesNames, default: 'E12', summary: 'series of preferred numbers' } as const;
const count = { quantity: 'ratio', whole: true, min: 1, max: 100, default: 10, summary: 'number of pairs' } as const;
const source = {
  source: 'own',
  at: 'joint search; least sum of squares of the two errors in dB, of the loss and of the input ohms',
} as const;

interface Pad {
  readonly series: number;
  readonly shunt: number;
  /** Loss in dB, positive. */
  readonly loss: number;
  /** Magnitude of the ohms at its input. */
  readonly input: number;
  /** Root of the sum of squares of both errors, dB. */
  readonly off: number;
}

/** Pads of standard values near the ideal one, the closest first: loss and input ohms count alike. */
function standardPads(wanted: number, load: Complex, names: Series): readonly Pad[] | Problem {
  const wrong = quieter(wanted);
  if (wrong) return wrong;
  if (wanted < 0.05) return new Problem(say`With so small a loss no pad is needed; leave it out.`, 'loss');
  const k = 10 ** (-wanted / 20);
  const size = sizeOf(load);
  const pads = standardNear(size * (1 - k), names, 4).flatMap((series) =>
    standardNear((size * k) / (1 - k), names, 4).map((shunt) => {
      const behind = across({ re: shunt, im: 0 }, load);
      const whole = plus({ re: series, im: 0 }, behind);
      const has = -20 * Math.log10(sizeOf(divided(behind, whole)));
      const input = sizeOf(whole);
      return { series, shunt, loss: has, input, off: Math.hypot(has - wanted, 20 * Math.log10(input / size)) };
    }),
  );
  return pads.sort((one, other) => one.off - other.off);
}

function table(wanted: number, load: Complex, names: Series, most: number): TableRecord | Problem {
  const pads = standardPads(wanted, load, names);
  if (pads instanceof Problem) return pads;
  return {
    kind: 'table',
    title: `Pads of ${names}`,
    columns: [
      { name: 'Series', quantity: 'resistance' },
      { name: 'Shunt', quantity: 'resistance' },
      { name: 'Loss', quantity: 'level' },
      { name: 'Input', quantity: 'resistance' },
      { name: 'Off', quantity: 'level' },
    ],
    rows: pads.slice(0, most).map((pad) => [pad.series, pad.shunt, pad.loss, pad.input, pad.off]),
  };
}

const best = (given: { loss: number; ohms: number; numbers: Series }, pick: (pad: Pad) => number): number | Problem => {
  const pads = standardPads(given.loss, { re: given.ohms, im: 0 }, given.numbers);
  return pads instanceof Problem ? pads : pick(pads[0]!);
};

export const padPairs = define({
  name: 'PAD.PAIRS',
  summary: 'The pads of standard resistors that come nearest to a loss and keep the load.',
  parameters: { loss, ohms, numbers, count },
  returns: { record: 'table', summary: 'pads, closest first: Series, Shunt, Loss, Input, Off' },
  source,
  example: { formula: '=TABLE.AT(PAD.PAIRS("5.3 dB", "6.1 Ω"), 1, "Shunt", 1 Ω)', gives: 6.8 },
  remarks:
    'Both resistors are chosen together: rounding each for itself can miss a better pair. An error of 1 dB in the loss counts as much as an input that is 1 dB, 12 %, off.',
  compute: (given) => table(given.loss, { re: given.ohms, im: 0 }, given.numbers, given.count),
});

export const padPairsAt = define({
  name: 'PAD.PAIRS_AT',
  summary: 'The same on the impedance of a driver at a frequency, with its phase.',
  parameters: {
    loss,
    curve: { record: 'curve', summary: 'impedance of the driver, with phase' },
    frequency: { ...usual.frequency, summary: 'frequency at which the pad is right' },
    numbers,
    count,
  },
  returns: { record: 'table', summary: 'pads, closest first: Series, Shunt, Loss, Input, Off' },
  source,
  example: {
    formula:
      '=TABLE.AT(PAD.PAIRS_AT("5.3 dB", DRIVER.IMPEDANCE(DRIVER.OF("850 Hz", 2.6, 1.05, "0.007383 L", "5.6 Ω", "7 cm²", "0.35 mm")), "2.5 kHz"), 1, "Series", 1 Ω)',
    gives: 2.7,
  },
  remarks: 'Take the frequency at or a little above the hand-over, where the driver is loudest through its filter.',
  compute(given) {
    const wrong = notWhole(given.curve, 'curve') ?? outsideOf(given.curve, given.frequency);
    return wrong ?? table(given.loss, impedanceAt(given.curve, given.frequency), given.numbers, given.count);
  },
});

export const padStandardSeries = define({
  name: 'PAD.STANDARD_SERIES',
  summary: 'The series resistor of the best pad of two standard resistors.',
  parameters: { loss, ohms, numbers },
  returns: { quantity: 'resistance', summary: 'resistor in series' },
  source,
  example: { formula: '=PAD.STANDARD_SERIES("5.3 dB", "6.1 Ω", "E12")', gives: 2.7 },
  remarks: 'Goes with PAD.STANDARD_SHUNT for the same loss, ohms and series; PAD.PAIRS shows the runners-up.',
  compute: (given) => best(given, (pad) => pad.series),
});

export const padStandardShunt = define({
  name: 'PAD.STANDARD_SHUNT',
  summary: 'The resistor across the driver of the best pad of two standard resistors.',
  parameters: { loss, ohms, numbers },
  returns: { quantity: 'resistance', summary: 'resistor across the driver' },
  source,
  example: { formula: '=PAD.STANDARD_SHUNT("5.3 dB", "6.1 Ω", "E12")', gives: 6.8 },
  remarks: 'Goes with PAD.STANDARD_SERIES for the same loss, ohms and series.',
  compute: (given) => best(given, (pad) => pad.shunt),
});
