import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Leg, Network } from '../../../functions/values/network.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import { ohmsCurve, simulate } from '../electrical/circuit.ts';
import { curve, points, refusal, table } from './run.ts';

const legs: readonly Leg[] = [
  { place: 'series', form: 'chain', inductance: 1e-3, coilResistance: 0.4, label: 'low-pass coil' },
  { place: 'shunt', form: 'chain', resistance: 6.8, capacitance: 1e-5 },
  { place: 'series', form: 'tank', resistance: 22, inductance: 2e-4, coilResistance: 0.15, capacitance: 3.3e-6 },
  { place: 'series', form: 'chain', resistance: 2.7 },
  { place: 'shunt', form: 'tank', resistance: 8.2, inductance: 5e-3, coilResistance: 1.1 },
];
const network: Network = { kind: 'network', name: 'test', legs };
const load = ohmsCurve((f) => [5.6, 2 * Math.PI * f * 3e-4]);
const column = (rows: TableRecord['rows'], index: number): number[] => rows.map((row) => row[index] as number);

describe('heat of every part against the same circuit in the simulator', () => {
  let watts: readonly (readonly number[])[] = [];
  beforeAll(async () => {
    const { of } = await simulate(
      [
        'V1 in 0 dc 0 ac 10',
        'L1 in a 1m',
        'RL1 a b 0.4',
        'R2 b c 6.8',
        'C2 c 0 10u',
        'R3 b d 22',
        'L3 b e 0.2m',
        'RL3 e d 0.15',
        'C3 b d 3.3u',
        'R4 d g 2.7',
        'R5 g 0 8.2',
        'L5 g h 5m',
        'RL5 h 0 1.1',
        'LD g i 0.3m',
        'RD i 0 5.6',
      ],
      'oct 48 10 40960',
    );
    const over = (from: string, to: string, ohms: number): number[] => {
      const ends = [from, to].map((node) => (node === '0' ? undefined : of(`v(${node})`)));
      return of(`v(${from})`).map((_, index) => {
        const [one, other] = ends.map((each) => each?.[index] ?? { re: 0, im: 0 });
        return ((one!.re - other!.re) ** 2 + (one!.im - other!.im) ** 2) / ohms;
      });
    };
    watts = [
      over('a', 'b', 0.4),
      over('b', 'c', 6.8),
      over('b', 'd', 22),
      over('e', 'd', 0.15),
      over('d', 'g', 2.7),
      over('g', '0', 8.2),
      over('h', '0', 1.1),
      over('i', '0', 5.6),
    ];
  }, 120_000);

  test('averages over a band and the worst tone', () => {
    const { rows } = table('NETWORK.HEAT', network, load, 10, 100, 10240);
    const inside = points(100, 10240);
    expect(rows.map(([part]) => part)).toEqual([
      'low-pass coil, coil',
      'resistor',
      'resistor',
      'coil',
      'resistor',
      'resistor',
      'coil',
      'driver',
    ]);
    watts.forEach((each, part) => {
      const some = inside.map((index) => each[index]!);
      const mean = some.reduce((sum, one) => sum + one, 0) / some.length;
      expect(Math.abs(column(rows, 2)[part]! / mean - 1)).toBeLessThan(1e-5);
      expect(Math.abs(column(rows, 3)[part]! / Math.max(...some) - 1)).toBeLessThan(1e-5);
    });
  });
});

test('all parts together take what the amplifier gives', () => {
  const part = { min: 0.1, max: 100, noNaN: true } as const;
  fc.assert(
    fc.property(
      fc.double(part),
      fc.double(part),
      fc.double(part),
      fc.integer({ min: 20, max: 550 }),
      (a, b, c, place) => {
        const own = legs.map((leg, index) => ({
          ...leg,
          ...(leg.resistance === undefined ? {} : { resistance: leg.resistance * (index === 1 ? a : b) }),
          ...(leg.inductance === undefined ? {} : { inductance: leg.inductance * c }),
        }));
        const made = { ...network, legs: own };
        const frequency = frequencies[place]!;
        const { rows } = table('NETWORK.HEAT', made, load, 2, frequency * 0.995, frequency * 1.005);
        const whole = curve('NETWORK.IMPEDANCE', made, load);
        const input = (4 * Math.cos(whole.phase![place]!)) / whole.y[place]!;
        expect(column(rows, 2).reduce((sum, each) => sum + each, 0) / input).toBeCloseTo(1, 8);
      },
    ),
  );
});

test('four times the heat for twice the volts; an impedance without phase is refused', () => {
  const [one, two] = [10, 20].map((volts) => column(table('NETWORK.HEAT', network, load, volts).rows, 2));
  one!.forEach((each, index) => expect(two![index]! / each).toBeCloseTo(4, 9));
  const { phase: _, ...silent } = load;
  expect(refusal('NETWORK.HEAT', network, silent, 10)).toContain('no phase');
});
