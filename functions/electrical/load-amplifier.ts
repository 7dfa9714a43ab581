import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import type { Problem } from '../values/problem.ts';
import { notOhms, notWhole } from './impedance.ts';

const curve = { record: 'curve', summary: 'impedance curve' } as const;
const whole = { record: 'curve', summary: 'impedance curve, with phase' } as const;
const volts = { ...usual.volts, default: 2.83, typical: [0.1, 100], summary: 'drive, V rms' } as const;
const load = 'DRIVER.IMPEDANCE(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm", "0.55 mH"))';

/** A curve made point by point of an impedance with its phase. */
function from(
  given: Curve,
  title: string,
  quantity: Curve['quantity'],
  at: (ohms: number, angle: number) => number,
): Curve | Problem {
  const wrong = notWhole(given, 'curve');
  if (wrong) return wrong;
  const { phase } = given;
  const y = given.y.map((ohms, index) => at(ohms, phase?.[index] ?? 0));
  return { kind: 'curve', title, quantity, y, from: given.from, to: given.to };
}

/**
 * Ohms of a resistor that would heat the output devices as much, over the magnitude. A device of a class B stage carries
 * half the wave and drops what the load does not take; in units of V²/|Z| its peak is (1 − sin θ)·sin(θ − φ), largest at
 * θ = 30° + 2φ/3, against 1/4 for a resistor.
 */
const dissipationFactor = (angle: number): number => {
  const third = Math.min(Math.abs(angle), Math.PI / 2) / 3;
  return 1 / (4 * (1 - Math.sin(Math.PI / 6 - 2 * third)) * Math.sin(Math.PI / 6 + third));
};

export const loadDissipation = define({
  name: 'LOAD.DISSIPATION',
  summary: 'The plain resistor that would heat an amplifier as much as this load at its worst moment.',
  parameters: { curve: whole },
  returns: { record: 'curve', of: 'resistance', summary: 'equivalent ohms for the peak of the dissipation' },
  source: {
    source: 'benjamin1994',
    at: 'peak dissipation of a class B stage at full swing into a reactive load; maximum derived here',
  },
  example: { formula: `=CURVE.LOWEST(LOAD.DISSIPATION(${load}), "20 Hz", "1 kHz")`, gives: 3.17 },
  remarks:
    'Where voltage and current are out of step an output device carries current while much voltage lies across it. It equals the ohms at a phase of 0°, about a third of them at 45° and a fifth at 90°. For class B and the like; an amplifier that switches hardly minds the phase.',
  compute: (given) =>
    from(given.curve, 'Equivalent ohms', 'resistance', (ohms, angle) => ohms * dissipationFactor(angle)),
});

export const loadResistive = define({
  name: 'LOAD.RESISTIVE',
  summary: 'The part of an impedance that takes power.',
  parameters: { curve: whole },
  returns: { record: 'curve', of: 'resistance', summary: 'real part, |Z|·cos φ' },
  source: { source: 'own', at: 'real part of the impedance' },
  example: { formula: `=CURVE.AT(LOAD.RESISTIVE(${load}), "10 kHz")`, gives: 5.8 },
  compute: (given) => from(given.curve, 'Resistive part', 'resistance', (ohms, angle) => ohms * Math.cos(angle)),
});

export const loadPhase = define({
  name: 'LOAD.PHASE',
  summary: 'The angle by which the current of a load lags behind the voltage, as a curve.',
  parameters: { curve: whole },
  returns: { record: 'curve', of: 'angle', summary: 'phase: above 0 like a coil, below 0 like a capacitor' },
  source: { source: 'own', at: 'angle of the impedance' },
  example: {
    formula: `=CURVE.AT(LOAD.PHASE(NETWORK.IMPEDANCE(NETWORK.LEG("series", "chain", , "1 mH"), LOAD.RESISTOR("6.2831853 Ω"))), "1 kHz")`,
    gives: 0.785,
  },
  remarks:
    'Amplifiers find a steep phase hard where the ohms are low as well; LOAD.DISSIPATION weighs the two. For one frequency CURVE.PHASE does.',
  compute: ({ curve: given }) => from(given, 'Phase', 'angle', (_, angle) => angle),
});

export const loadPower = define({
  name: 'LOAD.POWER',
  summary: 'The power that a load takes for a voltage, at every frequency.',
  parameters: { curve: whole, volts },
  returns: { record: 'curve', of: 'power', summary: 'real power' },
  source: { source: 'own', at: 'V²·cos φ/|Z|' },
  example: { formula: `=CURVE.PEAK(LOAD.POWER(${load}, "10 V"), "100 Hz", "1 kHz")`, gives: 17.2 },
  remarks: 'What the nominal ohms would take is a figure for the brochure; this is what heats.',
  compute: (given) => from(given.curve, 'Power', 'power', (ohms, angle) => (given.volts ** 2 * Math.cos(angle)) / ohms),
});

export const loadCurrent = define({
  name: 'LOAD.CURRENT',
  summary: 'The current that a load draws for a voltage, at every frequency.',
  parameters: { curve, volts },
  returns: { record: 'curve', of: 'current', summary: 'A rms' },
  source: { source: 'own', at: 'Ohm’s law' },
  example: { formula: '=CURVE.AT(LOAD.CURRENT(CURVE.READ(1 kHz, 4 Ω, "resistance"), "20 V"), "1 kHz")', gives: 5 },
  remarks: 'The peak of a sine is 1.41 times as much; music can ask for more for a moment than any sine.',
  compute(given) {
    const wrong = notOhms(given.curve, 'curve');
    if (wrong) return wrong;
    return {
      kind: 'curve' as const,
      title: 'Current',
      quantity: 'current' as const,
      y: given.curve.y.map((ohms) => given.volts / Math.max(ohms, 1e-9)),
      from: given.curve.from,
      to: given.curve.to,
    };
  },
});

export const loadVolts = define({
  name: 'LOAD.VOLTS',
  summary: 'The voltage of a power into stated ohms.',
  parameters: {
    power: { quantity: 'power', min: 0, max: 1e9, summary: 'power' },
    ohms: { ...usual.ohms, summary: 'ohms that the power is stated for' },
  },
  returns: { quantity: 'voltage', summary: 'V rms' },
  source: { source: 'iec60268_5', at: 'rated noise voltage from the rated power and impedance (from memory)' },
  example: { formula: '=LOAD.VOLTS("100 W", "8 Ω")', gives: 28.28 },
  remarks: 'An amplifier is a source of voltage: ask what voltage its watts mean, then what the real load takes.',
  compute: (given) => Math.sqrt(given.power * given.ohms),
});
