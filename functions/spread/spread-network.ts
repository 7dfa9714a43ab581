import { solveLadderAt } from '../crossover/ladder.ts';
import { demoHigh, load, network } from '../crossover/parameters.ts';
import { define } from '../define.ts';
import { impedanceAt, notWhole } from '../electrical/impedance.ts';
import { evenNumbers } from '../numeric/random.ts';
import { usual } from '../usual.ts';
import { outsideOf } from '../values/interpolate.ts';
import type { Leg } from '../values/network.ts';
import type { Problem } from '../values/problem.ts';
import type { Sample } from '../values/sample.ts';

const tolerance = (summary: string) =>
  ({ quantity: 'ratio', min: 0, max: 0.5, default: 0.05, typical: [0, 0.2], summary }) as const;

interface Tolerances {
  readonly coils: number;
  readonly capacitors: number;
  readonly resistors: number;
}

/** A leg as one might get it from the shop. */
function bought(leg: Leg, { coils, capacitors, resistors }: Tolerances, next: () => number): Leg {
  const off = (value: number, share: number): number => value * (1 + share * next());
  return {
    ...leg,
    ...(leg.inductance === undefined ? {} : { inductance: off(leg.inductance, coils) }),
    ...(leg.capacitance === undefined ? {} : { capacitance: off(leg.capacitance, capacitors) }),
    ...(leg.resistance === undefined ? {} : { resistance: off(leg.resistance, resistors) }),
  };
}

export const spreadNetwork = define({
  name: 'SPREAD.NETWORK',
  summary:
    'The level that a filter leaves at its driver at a frequency, over many sets of parts within their tolerance.',
  parameters: {
    network,
    load,
    frequency: { ...usual.frequency, summary: 'frequency that counts, such as the hand-over' },
    coils: tolerance('tolerance of the coils, 0.05 for ±5 %'),
    capacitors: tolerance('tolerance of the capacitors'),
    resistors: tolerance('tolerance of the resistors'),
    runs: { quantity: 'ratio', whole: true, min: 10, max: 20000, default: 2000, summary: 'number of runs' },
    seed: { quantity: 'ratio', whole: true, min: 0, max: 1e9, default: 1, summary: 'start of the random numbers' },
  },
  returns: { record: 'sample', of: 'level', summary: 'one level a run' },
  source: { source: 'own', at: 'every part drawn evenly within its tolerance, the ladder solved anew' },
  example: {
    formula: `=SPREAD.PERCENTILE(SPREAD.NETWORK(${demoHigh}, LOAD.RESISTOR("5.9 ohm"), "1900 Hz", 0, 0, 0), 0.5)`,
    gives: -6.02,
  },
  remarks:
    'Evenly spread, as nothing is known inside a tolerance; parts of one batch lie closer together. Set two of the three tolerances to 0 to see what the third does. The impedance of the driver is taken as it stands, and its own spread often matters more than that of the parts.',
  compute(given): Sample | Problem {
    const wrong = notWhole(given.load, 'load') ?? outsideOf(given.load, given.frequency);
    if (wrong) return wrong;
    const { re, im } = impedanceAt(given.load, given.frequency);
    const driver = { re: Float64Array.of(re), im: Float64Array.of(im) };
    const at = Float64Array.of(given.frequency);
    const next = evenNumbers(given.seed);
    const values = Float64Array.from({ length: given.runs }, () => {
      const legs = given.network.legs.map((leg) => bought(leg, given, next));
      const { transfer } = solveLadderAt(legs, driver, at);
      return Math.max(-300, 20 * Math.log10(Math.hypot(transfer.re[0]!, transfer.im[0]!)));
    });
    return {
      kind: 'sample',
      title: `Spread of the level behind ${given.network.name}`,
      quantity: 'level',
      values,
      seed: given.seed,
    };
  },
});
