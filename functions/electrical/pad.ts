import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { plus, reciprocal, times, type Complex } from './complex.ts';
import { combined } from './impedance.ts';

const loss = {
  quantity: 'level',
  min: -300,
  max: 60,
  summary: 'how much quieter the driver becomes',
  typical: [0, 10],
} as const;
const ohms = { ...usual.ohms, summary: 'real ohms of the driver in its band' } as const;
const series = { quantity: 'resistance', min: 0, max: 1e6, summary: 'resistor in series' } as const;
const shunt = { ...usual.ohms, summary: 'resistor across the driver' } as const;
const source = {
  source: 'own',
  at: 'divider that keeps the load, Rs = Z·(1 − k), Rp = Z·k/(1 − k), k = 10^(−A/20)',
} as const;

export const quieter = (level: number): Problem | undefined =>
  level >= 0
    ? undefined
    : new Problem(
        say`The loss is ${measured(level, 'level')}: a pad only lowers a driver, it cannot raise one. Choose a louder driver, lower the other one, or use active drive.`,
        'loss',
      );

const across = (resistor: number, load: number): number => (resistor * load) / (resistor + load);

export const padSeries = define({
  name: 'PAD.SERIES',
  summary: 'The series resistor of a pad of two resistors that keeps the load as it is.',
  parameters: { loss, ohms },
  returns: { quantity: 'resistance', summary: 'resistor in series' },
  source,
  example: { formula: '=PAD.SERIES("3 dB", "8 Ω")', gives: 2.336 },
  remarks:
    'Use the real ohms at and above the hand-over, not the nominal ohms: on the wrong load the loss is off by up to 1 dB.',
  compute: (given) => quieter(given.loss) ?? given.ohms * (1 - 10 ** (-given.loss / 20)),
});

export const padShunt = define({
  name: 'PAD.SHUNT',
  summary: 'The resistor across the driver of a pad of two resistors that keeps the load as it is.',
  parameters: { loss, ohms },
  returns: { quantity: 'resistance', summary: 'resistor across the driver' },
  source,
  example: { formula: '=PAD.SHUNT("3 dB", "8 Ω")', gives: 19.39 },
  remarks: 'It sits across the driver, behind the series resistor. Without a loss there is none.',
  compute(given) {
    const wrong = quieter(given.loss);
    if (wrong) return wrong;
    if (given.loss < 1e-6)
      return new Problem(say`Without a loss there is no resistor across the driver; leave the pad out.`, 'loss');
    const k = 10 ** (-given.loss / 20);
    return (given.ohms * k) / (1 - k);
  },
});

export const padLoss = define({
  name: 'PAD.LOSS',
  summary: 'The loss of a pad of two resistors as built.',
  parameters: { series, shunt, ohms },
  returns: { quantity: 'level', summary: 'loss in dB, positive' },
  source: { source: 'own', at: 'voltage divider' },
  example: { formula: '=PAD.LOSS("2.7 Ω", "6.8 Ω", "6.1 Ω")', gives: 5.29 },
  remarks: 'Put in the standard values that you can buy to see what they really do.',
  compute: (given) => 20 * Math.log10(1 + given.series / across(given.shunt, given.ohms)),
});

export const padInput = define({
  name: 'PAD.INPUT',
  summary: 'The ohms that the filter sees at the input of a pad.',
  parameters: { series, shunt, ohms },
  returns: { quantity: 'resistance', summary: 'ohms of pad and driver together' },
  source: { source: 'own', at: 'series resistor and the parallel of the other two' },
  example: { formula: '=PAD.INPUT("2.7 Ω", "6.8 Ω", "6.1 Ω")', gives: 5.92 },
  remarks: 'The parts of the filter are worked out for this load.',
  compute: (given) => given.series + across(given.shunt, given.ohms),
});

export const padSingle = define({
  name: 'PAD.SINGLE',
  summary: 'The single series resistor for a loss.',
  parameters: { loss, ohms },
  returns: { quantity: 'resistance', summary: 'resistor in series' },
  source: { source: 'own', at: 'voltage divider, R = Z·(10^(A/20) − 1)' },
  example: { formula: '=PAD.SINGLE("5.3 dB", "6.1 Ω")', gives: 5.1 },
  remarks:
    'It raises the load, so the filter must be worked out anew, and the loss follows the impedance of the driver.',
  compute: (given) => quieter(given.loss) ?? given.ohms * (10 ** (given.loss / 20) - 1),
});

const padded = {
  curve: { record: 'curve', summary: 'impedance of the driver, with phase' },
  series,
  shunt: { ...shunt, optional: true, summary: 'resistor across the driver; left out, there is none' },
} as const;

/** The ohms that stand behind the series resistor. */
const behindOf = (admittance: Complex, resistor: number | undefined): Complex =>
  reciprocal({ re: admittance.re + (resistor === undefined ? 0 : 1 / resistor), im: admittance.im });

export const padImpedance = define({
  name: 'PAD.IMPEDANCE',
  summary: 'The impedance of a driver behind a pad of one or two resistors.',
  parameters: padded,
  returns: { record: 'curve', of: 'resistance', summary: 'impedance at the input of the pad' },
  source: { source: 'own', at: 'complex: series resistor and the parallel of shunt and driver' },
  example: {
    formula:
      '=PAD.IMPEDANCE(DRIVER.IMPEDANCE(DRIVER.OF("850 Hz", 2.6, 1.05, "0.007383 L", "5.6 Ω", "7 cm²", "0.35 mm")), "2.7 Ω", "6.8 Ω")',
    gives: { quantity: 'resistance', title: 'Impedance with pad' },
  },
  remarks: 'The pad also flattens the hump at resonance. The curve must carry its phase.',
  compute: (given) =>
    combined(
      'Impedance with pad',
      [given.curve],
      reciprocal,
      (admittance) => plus(behindOf(admittance, given.shunt), { re: given.series, im: 0 }),
      'curve',
    ),
});

export const padResponse = define({
  name: 'PAD.RESPONSE',
  summary: 'What a pad of one or two resistors leaves of the level at every frequency.',
  parameters: padded,
  returns: { record: 'curve', of: 'level', summary: 'voltage at the driver over that at the pad, in dB with phase' },
  source: { source: 'own', at: 'complex voltage divider' },
  example: {
    formula:
      '=CURVE.AT(PAD.RESPONSE(DRIVER.IMPEDANCE(DRIVER.OF("850 Hz", 2.6, 1.05, "0.007383 L", "5.6 Ω", "7 cm²", "0.35 mm")), "2.7 Ω", "6.8 Ω"), "850 Hz")',
    gives: -3.73,
  },
  remarks:
    'At the hump of the resonance a single resistor loses less than above it, so that the hump grows in the sound; a resistor across the driver keeps it down. Add it to the level of the driver with CURVE.ADD.',
  compute(given) {
    const whole = combined(
      'Response of the pad',
      [given.curve],
      reciprocal,
      (admittance) => {
        const behind = behindOf(admittance, given.shunt);
        return times(behind, reciprocal({ re: behind.re + given.series, im: behind.im }));
      },
      'curve',
    );
    return whole instanceof Problem
      ? whole
      : { ...whole, quantity: 'level' as const, y: whole.y.map((ratio) => 20 * Math.log10(ratio)) };
  },
});
