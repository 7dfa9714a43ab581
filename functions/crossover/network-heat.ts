import { define } from '../define.ts';
import { notWhole } from '../electrical/impedance.ts';
import { divided, plus, reciprocal, sizeOf, times, type Complex } from '../electrical/complex.ts';
import { usual } from '../usual.ts';
import { frequencies } from '../values/grid.ts';
import { bandOf } from '../values/interpolate.ts';
import type { Leg } from '../values/network.ts';
import { Problem } from '../values/problem.ts';
import type { TableRecord } from '../values/table.ts';
import { complexOf } from '../values/complex-curve.ts';
import { demoLow, demoTweeter, load, network } from './parameters.ts';

/** What turns power into heat in a leg. */
interface Heater {
  readonly leg: Leg;
  readonly place: number;
  readonly part: 'resistor' | 'coil';
}

const heatersOf = (legs: readonly Leg[]): readonly Heater[] =>
  legs.flatMap((leg, index) => [
    ...(leg.resistance === undefined ? [] : [{ leg, place: index, part: 'resistor' } as const]),
    ...(leg.inductance === undefined || !leg.coilResistance ? [] : [{ leg, place: index, part: 'coil' } as const]),
  ]);

/** Like the parts that the ladder is solved with, so that ideal resonances stay finite. */
const trace: Complex = { re: 1e-15, im: 0 };

const coilAt = ({ inductance = 0, coilResistance = 0 }: Leg, angular: number): Complex => ({
  re: coilResistance,
  im: angular * inductance,
});

function impedanceOf(leg: Leg, angular: number): Complex {
  const { resistance, inductance, capacitance, form } = leg;
  const parts: Complex[] = [
    ...(resistance === undefined ? [] : [{ re: resistance, im: 0 }]),
    ...(inductance === undefined ? [] : [coilAt(leg, angular)]),
    ...(capacitance === undefined ? [] : [{ re: 0, im: -1 / (angular * capacitance) }]),
  ];
  return form === 'chain'
    ? parts.reduce(plus, trace)
    : reciprocal(
        parts
          .map((each) => (sizeOf(each) === 0 ? trace : each))
          .reduce((sum, each) => plus(sum, reciprocal(each)), trace),
      );
}

const squared = (z: Complex): number => z.re * z.re + z.im * z.im;

/** Watts of each heater and of the driver for 1 V at the amplifier at one frequency. */
function wattsAt(
  legs: readonly Leg[],
  heaters: readonly Heater[],
  driver: Complex,
  angular: number,
): readonly number[] {
  const currents: Complex[] = [];
  const voltages: Complex[] = [];
  let volts: Complex = { re: 1, im: 0 };
  let current = reciprocal(driver);
  for (let index = legs.length - 1; index >= 0; index -= 1) {
    const leg = legs[index]!;
    const z = impedanceOf(leg, angular);
    if (leg.place === 'series') {
      currents[index] = current;
      voltages[index] = times(current, z);
      volts = plus(volts, voltages[index]!);
    } else {
      voltages[index] = volts;
      currents[index] = divided(volts, z);
      current = plus(current, currents[index]!);
    }
  }
  const scale = 1 / squared(volts);
  const watts = heaters.map(({ leg, place, part }) => {
    if (leg.form === 'chain') {
      return squared(currents[place]!) * (part === 'coil' ? leg.coilResistance! : leg.resistance!) * scale;
    }
    const across = squared(voltages[place]!) * scale;
    return part === 'coil' ? (across * leg.coilResistance!) / squared(coilAt(leg, angular)) : across / leg.resistance!;
  });
  return [...watts, reciprocal(driver).re * scale];
}

export const networkHeat = define({
  name: 'NETWORK.HEAT',
  summary: 'The watts that every part of a filter and its driver take, for music and for the worst single tone.',
  parameters: {
    network,
    load,
    volts: { ...usual.volts, typical: [0.5, 60], summary: 'average voltage of the music at the amplifier, V rms' },
    from: { ...usual.frequency, default: 20, summary: 'lower end of the band over which it is spread' },
    to: { ...usual.frequency, default: 20000, summary: 'upper end of that band' },
  },
  returns: { record: 'table', summary: 'Part, Leg, Average, Worst tone and At; the driver last' },
  source: {
    source: 'own',
    at: 'power of each resistance of the ladder on the real impedance; equal power in every octave',
  },
  example: {
    formula: `=TABLE.AT(NETWORK.HEAT(NETWORK.JOIN(${demoLow}, NETWORK.PAD("2.7 ohm", "6.8 ohm")), DRIVER.IMPEDANCE(${demoTweeter}), "10 V"), 1, "Average", 1 W)`,
    gives: 4.3,
  },
  remarks:
    'Average spreads the voltage over the band with equal power in every octave, as pink noise does; the worst tone puts all of it into one. PAD.DRIVE gives the voltage of music from the watts of the amplifier. Take parts for at least twice the average, keep them off stuffing and foam: at its rated power a resistor burns the fingers.',
  compute(given): TableRecord | Problem {
    const wrong = notWhole(given.load, 'load');
    if (wrong) return wrong;
    const band = bandOf(given.load, given.from, given.to);
    if (band instanceof Problem) return new Problem(band.message, 'from');
    const { legs } = given.network;
    const heaters = heatersOf(legs);
    const { re, im } = complexOf(given.load);
    const inside = [...frequencies.keys()].filter(
      (index) => frequencies[index]! >= band.from * (1 - 1e-9) && frequencies[index]! <= band.to * (1 + 1e-9),
    );
    // A band narrower than the grid is read at the point next to it.
    const places =
      inside.length > 0
        ? inside
        : [
            Math.max(
              0,
              frequencies.findLastIndex((f) => f <= band.from),
            ),
          ];
    const square = given.volts ** 2;
    const all = places.map((index) =>
      wattsAt(legs, heaters, { re: re[index]!, im: im[index]! }, 2 * Math.PI * frequencies[index]!),
    );
    const row = (part: string, leg: number | null, column: number): TableRecord['rows'][number] => {
      const watts = all.map((each) => each[column]! * square);
      const worst = Math.max(...watts);
      const mean = watts.reduce((sum, each) => sum + each, 0) / watts.length;
      return [part, leg, mean, worst, frequencies[places[watts.indexOf(worst)]!]!];
    };
    return {
      kind: 'table',
      title: `Heat in ${given.network.name}`,
      columns: [
        { name: 'Part', quantity: 'text' },
        { name: 'Leg', quantity: 'ratio' },
        { name: 'Average', quantity: 'power' },
        { name: 'Worst tone', quantity: 'power' },
        { name: 'At', quantity: 'frequency' },
      ],
      rows: [
        ...heaters.map(({ leg, place, part }, column) =>
          row(`${leg.label === undefined ? '' : `${leg.label}, `}${part}`, place + 1, column),
        ),
        row('driver', null, heaters.length),
      ],
    };
  },
});
