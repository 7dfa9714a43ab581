import { Simulation } from 'eecircuit-engine';
import { bench, describe } from 'vitest';
import { systemImpedance, systemLevel } from '../../functions/crossover/system.ts';
import { solveLadderAt } from '../../functions/crossover/ladder.ts';
import { resistorLoad } from '../../functions/crossover/load-resistor.ts';
import { wayOf } from '../../functions/crossover/way.ts';
import { completeDriver } from '../../functions/driver/complete-driver.ts';
import { closedBox } from '../../functions/enclosure/closed.ts';
import type { Box } from '../../functions/values/box.ts';
import type { Curve } from '../../functions/values/curve.ts';
import type { Driver } from '../../functions/values/driver.ts';
import { frequencies } from '../../functions/values/grid.ts';
import type { Leg, Network } from '../../functions/values/network.ts';
import type { Way } from '../../functions/values/way.ts';
import { driverNetlist, type Elements } from '../functions/crossover/circuit.ts';
import { middle, tweeter, woofer } from '../functions/crossover/elements.ts';
import { paired } from './paired.ts';

const once = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 } as const;
const context = { quantity: 'ratio' } as const;
const MANY = 20;

const series = (parts: Omit<Leg, 'place' | 'form'>): Leg => ({ place: 'series', form: 'chain', ...parts });
const across = (parts: Omit<Leg, 'place' | 'form'>): Leg => ({ place: 'shunt', form: 'chain', ...parts });
const bass = (coil: number): Leg[] => [
  series({ inductance: coil, coilResistance: 0.42 }),
  across({ capacitance: 8.2e-5 }),
  across({ resistance: 5.6, capacitance: 2.2e-5 }),
];
const mid: Leg[] = [
  series({ capacitance: 6.8e-5 }),
  across({ inductance: 0.0047, coilResistance: 0.6 }),
  series({ inductance: 0.00039, coilResistance: 0.22 }),
  across({ capacitance: 6.8e-6 }),
  series({ resistance: 1.8 }),
  across({ resistance: 15 }),
  across({ resistance: 6.2, capacitance: 8.2e-6 }),
];
const treble: Leg[] = [
  series({ capacitance: 6.8e-6 }),
  across({ inductance: 0.00027, coilResistance: 0.18 }),
  series({ capacitance: 2.2e-5 }),
  series({ resistance: 2.7 }),
  across({ resistance: 8.2 }),
  across({ resistance: 5.6, inductance: 0.0012, coilResistance: 0.4, capacitance: 2.4e-5 }),
];

/** The ladder as cards of a netlist, from node `s` to the node of the driver. */
function ladderNetlist(id: string, legs: readonly Leg[], driver: string): string[] {
  const places = legs.map(({ place }) => place);
  let node = 's';
  return legs.flatMap((leg, index) => {
    const isLast = leg.place === 'series' && places.lastIndexOf('series') === index;
    const end = leg.place === 'shunt' ? '0' : isLast ? driver : `${id}n${String(index)}`;
    const cards: [string, number | undefined][] = [
      ['R', leg.resistance],
      ['L', leg.inductance],
      ['RL', leg.coilResistance],
      ['C', leg.capacitance],
    ];
    const parts = cards.filter(([, value]) => value !== undefined);
    let at = node;
    const lines = parts.map(([kind, value], place) => {
      const next = place === parts.length - 1 ? end : `${id}p${String(index)}x${String(place)}`;
      const line = `${kind.charAt(0)}${id}${kind}${String(index)} ${at} ${next} ${String(value)}`;
      at = next;
      return line;
    });
    if (leg.place === 'series') node = end;
    return lines;
  });
}

const netlist = [
  'loudspeaker',
  'Vs s0 0 DC 0 AC 1',
  'Vm s0 s 0',
  ...ladderNetlist('w', bass(0.0033), 'w'),
  ...driverNetlist('w', 'w', woofer),
  ...ladderNetlist('d', mid, 'd'),
  ...driverNetlist('d', 'd', middle),
  ...ladderNetlist('t', treble, 't'),
  ...driverNetlist('t', 't', tweeter),
  '.ac oct 48 10 40960',
  '.save all',
  '.end',
  '',
].join('\n');

const driverOf = ({ re, le, bl, mms, cms, rms, sd }: Elements): Driver =>
  completeDriver('', { re, le, bl, mms, cms, rms, sd });
const boxed = (of: Elements): Box =>
  closedBox.compute(
    {
      driver: driverOf(of),
      volume: of.volume!,
      seriesResistance: 0,
      fill: 1,
      absorptionQ: undefined,
      leakageQ: undefined,
    },
    context,
  ) as Box;
const network = (name: string, legs: readonly Leg[]): Network => ({ kind: 'network', name, legs });
const way = (source: Driver | Box, filter: Network, y: number): Way =>
  wayOf.compute(
    { source, network: filter, x: 0, y, z: 0, polarity: 'normal', gain: 0, delay: 0, title: '' },
    context,
  ) as Way;

const networks = (coil: number): readonly Network[] => [
  network('bass', bass(coil)),
  network('mid', mid),
  network('treble', treble),
];

/** Everything from drivers and parts to the ways; nothing is remembered from the run before. */
const waysFrom = (coil: number): Way[] => {
  const [first, second, third] = networks(coil);
  return [way(boxed(woofer), first!, -0.25), way(boxed(middle), second!, -0.1), way(driverOf(tweeter), third!, 0.05)];
};

/** Sum and load of ways, with the decibels and ohms of both; phases are worked out when they are read, here they are not. */
const together = (ways: readonly Way[]): readonly [Float64Array, Float64Array] => [
  (systemLevel.compute({ ways }, context) as Curve).y,
  (systemImpedance.compute({ ways }, context) as Curve).y,
];

describe('a complete three-way over 577 points: drivers in boxes, networks, sum and load', () => {
  bench(
    'as a ratio to the same circuit in the simulator',
    async () => {
      const simulation = new Simulation();
      await simulation.start();
      simulation.setNetList(netlist);
      const result = await simulation.runSim();
      if (result.dataType !== 'complex') throw new Error('the simulator gave no result');
      const current = result.data.find(({ name }) => name.toLowerCase() === 'i(vm)')!.values;
      const ways = waysFrom(0.0033);
      const [, load] = together(ways);
      const furthest = load.reduce(
        (most, ohms, index) =>
          Math.max(most, Math.abs(20 * Math.log10(ohms * Math.hypot(current[index]!.real, current[index]!.img)))),
        0,
      );
      console.log(`furthest apart: ${furthest.toExponential(1)} dB`);
      let coil = 0.0033;
      const base = (): unknown => simulation.runSim();
      await paired({
        name: `${String(MANY)} times three networks with sum and load, drivers given, against one run of the simulator`,
        ours: () => {
          for (let count = 0; count < MANY; count++) {
            const anew = networks((coil += 1e-9));
            together(ways.map((each, index) => ({ ...each, network: anew[index]! })));
          }
        },
        base,
      });
      await paired({
        name: `${String(MANY)} times the same from the parameters of the drivers on`,
        ours: () => {
          for (let count = 0; count < MANY; count++) together(waysFrom((coil += 1e-9)));
        },
        base,
      });
    },
    once,
  );
});

describe('the ladder alone: time in proportion to points and to legs', () => {
  bench(
    'twice as many, as a ratio to once as many',
    async () => {
      const ladder = [...bass(0.0033), ...mid, ...treble];
      const double = [...ladder, ...ladder];
      const { length } = frequencies;
      const load = { re: resistorLoad(8).y, im: new Float64Array(length) };
      const wide = { re: new Float64Array(2 * length).fill(8), im: new Float64Array(2 * length) };
      const dense = Float64Array.from({ length: 2 * length }, (_, index) => 10 * 2 ** (index / 96));
      const repeat = (run: () => unknown) => () => {
        for (let count = 0; count < MANY; count++) run();
      };
      const base = repeat(() => solveLadderAt(ladder, load, frequencies));
      await paired({ name: 'legs doubled', ours: repeat(() => solveLadderAt(double, load, frequencies)), base });
      await paired({ name: 'points doubled', ours: repeat(() => solveLadderAt(ladder, wide, dense)), base });
    },
    once,
  );
});
