import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { airDensity, soundSpeed } from '../../../functions/air.ts';
import { completeDriver } from '../../../functions/driver/complete-driver.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Way } from '../../../functions/values/way.ts';
import { references, type Reference } from '../../references/read.ts';
import { Disagreement } from '../../witnesses/disagreement.ts';
import { driverNetlist, simulate, type Complex, type Elements } from './circuit.ts';
import { curve, network, points, run, way } from './run.ts';
import { woofer, tweeter, middle } from './elements.ts';

// The second witness: complete loudspeakers built from element values and solved by a circuit simulator.

const driverOf = ({ re, le, bl, mms, cms, rms, sd }: Elements): Driver =>
  completeDriver('', { re, le, bl, mms, cms, rms, sd });
const sourceOf = (elements: Elements): unknown =>
  elements.volume === undefined ? driverOf(elements) : run('CLOSED.BOX', driverOf(elements), elements.volume);
const audible = points(10, 20_000);
const decibels = ({ real, img }: Complex): number => 20 * Math.log10(Math.hypot(real, img));
const turn = (angle: number): number => Math.abs((Math.atan2(Math.sin(angle), Math.cos(angle)) * 180) / Math.PI);

const disagreement = new Disagreement('two-way and three-way networks');
afterAll(() => disagreement.keep());

/** Holds a curve to 0.01 dB and 0.1° of a complex result. Below the floor both are as good as nothing. */
function follows(of: Curve, wanted: readonly Complex[], inDecibels: boolean, floor = -200): void {
  for (const index of audible) {
    const level = decibels(wanted[index]!);
    if (level < floor) continue;
    const own = inDecibels ? of.y[index]! : 20 * Math.log10(of.y[index]!);
    const angle = turn(of.phase![index]! - Math.atan2(wanted[index]!.img, wanted[index]!.real));
    disagreement.note(own - level, angle);
    expect(Math.abs(own - level), `${of.title} at ${frequencies[index]!} Hz`).toBeLessThan(0.01);
    expect(angle).toBeLessThan(0.1);
  }
}

/** Pressure at 1 m over 20 µPa for 2.83 V, from the velocity of the cone for 1 V. */
const pressureOf = (speed: readonly Complex[], sd: number, sign: 1 | -1, behind = 0): Complex[] =>
  speed.map(({ real, img }, index) => {
    const wave = 2 * Math.PI * frequencies[index]!;
    const size = (sign * 2.83 * airDensity * wave * sd) / (2 * Math.PI) / 20e-6;
    const [cosine, sine] = [Math.cos((-wave * behind) / soundSpeed), Math.sin((-wave * behind) / soundSpeed)];
    // p = jωρ·Sd·v/2π, then the delay.
    return { real: size * (-img * cosine - real * sine), img: size * (real * cosine - img * sine) };
  });
const sumOf = (...all: readonly (readonly Complex[])[]): Complex[] =>
  all[0]!.map((_, index) => ({
    real: all.reduce((sum, each) => sum + each[index]!.real, 0),
    img: all.reduce((sum, each) => sum + each[index]!.img, 0),
  }));
const inverse = (of: readonly Complex[], sign: 1 | -1): Complex[] =>
  of.map(({ real, img }) => ({
    real: (sign * real) / (real ** 2 + img ** 2),
    img: (-sign * img) / (real ** 2 + img ** 2),
  }));

const lowWay = (behind = 0): Way =>
  way(
    'WAY.OF',
    sourceOf(woofer),
    network('NETWORK.OF', [
      ['series', 'chain', null, 0.0012, 0.35, null],
      // Its 0.04 Ω is the loss of the capacitor.
      ['across', 'chain', 0.04, null, null, 1e-5],
      ['across', 'chain', 6.2, null, null, 1.5e-5],
    ]),
    0,
    0,
    behind,
  );
const highWay = (polarity: string): Way =>
  way(
    'WAY.OF',
    sourceOf(tweeter),
    network(
      'NETWORK.JOIN',
      network('NETWORK.OF', [
        ['series', 'chain', 0.02, null, null, 5.6e-6],
        ['across', 'chain', null, 0.00082, 0.28, null],
      ]),
      network('NETWORK.PAD', 2.2, 10),
    ),
    0,
    0,
    0,
    polarity,
  );

describe('a two-way with coil resistance, capacitor loss, flattening and pad, in the simulator', () => {
  let found: ReadonlyMap<string, readonly Complex[]>;
  beforeAll(async () => {
    const file = join(import.meta.dirname, '../../references/crossover-circuit.json');
    found = await simulate((JSON.parse(readFileSync(file, 'utf8')) as { netlist: string[] }).netlist);
  });
  test('its points are those of the grid', () => {
    const at = found.get('frequency')!;
    for (const index of audible) expect(at[index]!.real / frequencies[index]!).toBeCloseTo(1, 9);
  });
  test('voltage at each driver', () => {
    follows(curve('WAY.DRIVE', lowWay()), found.get('v(w)')!, true);
    follows(curve('WAY.DRIVE', highWay('normal')), found.get('v(t)')!, true);
  });
  test('impedance of the system', () =>
    follows(curve('SYSTEM.IMPEDANCE', lowWay(), highWay('normal')), inverse(found.get('i(vm)')!, 1), false));
  test.each([
    ['normal', 1, 0],
    ['reversed', -1, 0],
    ['reversed', -1, 0.025],
  ] as const)('level of each way and of the sum, tweeter %s (%d), woofer %d m behind', (polarity, sign, behind) => {
    const low = pressureOf(found.get('i(vwv)')!, woofer.sd, 1, behind);
    const high = pressureOf(found.get('i(vtv)')!, tweeter.sd, sign);
    follows(curve('WAY.LEVEL', lowWay(behind)), low, true);
    follows(curve('WAY.LEVEL', highWay(polarity)), high, true);
    follows(curve('SYSTEM.LEVEL', lowWay(behind), highWay(polarity)), sumOf(low, high), true);
  });
  test('travel of each driver through its filter', () => {
    for (const [name, of] of [
      ['i(vwv)', lowWay()],
      ['i(vtv)', highWay('normal')],
    ] as const) {
      const travel = curve('WAY.TRAVEL', of, 1);
      for (const index of audible) {
        const speed = found.get(name)![index]!;
        const wanted = (Math.SQRT2 * Math.hypot(speed.real, speed.img)) / (2 * Math.PI * frequencies[index]!);
        expect(Math.abs(20 * Math.log10(travel.y[index]! / wanted))).toBeLessThan(0.01);
      }
    }
  });
});

describe('the same two-way, tabled by two other programs', () => {
  const low = lowWay();
  const high = highWay('normal');
  const curves: Readonly<Record<string, readonly [Curve, 'y' | 'phase', number]>> = {
    'S4-zmag': [curve('SYSTEM.IMPEDANCE', low, high), 'y', 1],
    'S4-zph': [curve('SYSTEM.IMPEDANCE', low, high), 'phase', 180 / Math.PI],
    'S4-vw': [curve('WAY.DRIVE', low), 'y', 1],
    'S4-vwph': [curve('WAY.DRIVE', low), 'phase', 180 / Math.PI],
    'S4-vt': [curve('WAY.DRIVE', high), 'y', 1],
    'S4-vtph': [curve('WAY.DRIVE', high), 'phase', 180 / Math.PI],
    'S4-splw': [curve('WAY.LEVEL', low), 'y', 1],
    'S4-splt': [curve('WAY.LEVEL', high), 'y', 1],
    'S4-sump': [curve('SYSTEM.LEVEL', low, high), 'y', 1],
    'S4-sumn': [curve('SYSTEM.LEVEL', low, highWay('reversed')), 'y', 1],
    'S4-sumd': [curve('SYSTEM.LEVEL', lowWay(0.025), highWay('reversed')), 'y', 1],
    // Millimetres for a volt, and the table means rms over rms.
    'S4-xt': [curve('WAY.TRAVEL', high, 1), 'y', 1000 / Math.SQRT2],
  };
  /** Between the points of the grid by a polynomial of the third degree through the four around it. */
  function between(y: Float64Array, frequency: number): number {
    const place = 48 * Math.log2(frequency / 10);
    const first = Math.min(Math.max(Math.floor(place) - 1, 0), y.length - 4);
    return [0, 1, 2, 3].reduce((sum, own) => {
      const weight = [0, 1, 2, 3]
        .filter((other) => other !== own)
        .reduce((product, other) => (product * (place - first - other)) / (own - other), 1);
      return sum + weight * y[first + own]!;
    }, 0);
  }
  test.each(references('crossover-circuit', 'S4'))('$id', (each: Reference) => {
    const [of, field, unit] = curves[each.id]!;
    const at = each.inputs['f']!.value as readonly number[];
    const { relative = 0, absolute = 0 } = each.tolerance;
    at.forEach((frequency, index) => {
      const wanted = (each.expected.value as readonly number[])[index]!;
      const own = between(of[field]!, frequency) * unit;
      const gap = field === 'phase' ? turn(((own - wanted) * Math.PI) / 180) : Math.abs(own - wanted);
      expect(gap, `${each.id} at ${frequency} Hz`).toBeLessThanOrEqual(relative * Math.abs(wanted) + absolute);
    });
  });
});

describe('a three-way with pads, flattening, trap, notch and coil resistance, in the simulator', () => {
  const bass = network(
    'NETWORK.JOIN',
    network('NETWORK.OF', [
      ['series', 'chain', null, 0.0033, 0.42],
      ['across', 'chain', null, null, null, 8.2e-5],
    ]),
    network('NETWORK.FLATTEN', 5.6, 2.2e-5),
  );
  const mid = network(
    'NETWORK.JOIN',
    network('NETWORK.OF', [
      ['series', 'chain', null, null, null, 6.8e-5],
      ['across', 'chain', null, 0.0047, 0.6],
      ['series', 'chain', null, 0.00039, 0.22],
      ['across', 'chain', null, null, null, 6.8e-6],
    ]),
    network('NETWORK.PAD', 1.8, 15),
    network('NETWORK.NOTCH', 12, 0.00015, 4.7e-6, 0.12),
    network('NETWORK.FLATTEN', 6.2, 8.2e-6),
  );
  const treble = network(
    'NETWORK.JOIN',
    network('NETWORK.OF', [
      ['series', 'chain', null, null, null, 6.8e-6],
      ['across', 'chain', null, 0.00027, 0.18],
      ['series', 'chain', null, null, null, 2.2e-5],
    ]),
    network('NETWORK.PAD', 2.7, 8.2),
    network('NETWORK.TRAP', 5.6, 0.0012, 2.4e-5, 0.4),
  );
  const ways: readonly Way[] = [
    way('WAY.OF', sourceOf(woofer), bass, 0, -0.25, 0.03),
    way('WAY.OF', sourceOf(middle), mid, 0, -0.1, 0.012, 'reversed'),
    way('WAY.OF', sourceOf(tweeter), treble, 0, 0.05),
  ];
  const netlist = [
    'Vs s0 0 AC 1',
    'Vm s0 s 0',
    // Bass.
    'L1 s b1 0.0033',
    'RL1 b1 w 0.42',
    'C1 w 0 8.2e-5',
    'R1 w b2 5.6',
    'C2 b2 0 2.2e-5',
    ...driverNetlist('w', 'w', woofer),
    // Middle.
    'C3 s m1 6.8e-5',
    'L3 m1 m2 0.0047',
    'RL3 m2 0 0.6',
    'L4 m1 m3 0.00039',
    'RL4 m3 m4 0.22',
    'C4 m4 0 6.8e-6',
    'R4 m4 m5 1.8',
    'R5 m5 0 15',
    'R6 m5 d 12',
    'C6 m5 d 4.7e-6',
    'L6 m5 m6 0.00015',
    'RL6 m6 d 0.12',
    'R7 d m7 6.2',
    'C7 m7 0 8.2e-6',
    ...driverNetlist('d', 'd', middle),
    // Treble.
    'C8 s t1 6.8e-6',
    'L8 t1 t2 0.00027',
    'RL8 t2 0 0.18',
    'C9 t1 t3 2.2e-5',
    'R9 t3 t 2.7',
    'R10 t 0 8.2',
    'R11 t t4 5.6',
    'L11 t4 t5 0.0012',
    'RL11 t5 t6 0.4',
    'C11 t6 0 2.4e-5',
    ...driverNetlist('t', 't', tweeter),
  ];
  let found: ReadonlyMap<string, readonly Complex[]>;
  beforeAll(async () => {
    found = await simulate(netlist);
  });
  const parts = (): Complex[][] => [
    pressureOf(found.get('i(vvw)')!, woofer.sd, 1, 0.03),
    pressureOf(found.get('i(vvd)')!, middle.sd, -1, 0.012),
    pressureOf(found.get('i(vvt)')!, tweeter.sd, 1),
  ];
  test('voltage at each driver', () =>
    ['v(w)', 'v(d)', 'v(t)'].forEach((node, index) => {
      const sign = index === 1 ? -1 : 1;
      const wanted = found.get(node)!.map(({ real, img }) => ({ real: sign * real, img: sign * img }));
      follows(curve('WAY.DRIVE', ways[index]), wanted, true);
    }));
  test('impedance of the system', () =>
    follows(curve('SYSTEM.IMPEDANCE', ...ways), inverse(found.get('i(vm)')!, 1), false));
  test('level of each way and of the sum', () => {
    const all = parts();
    ways.forEach((each, index) => follows(curve('WAY.LEVEL', each), all[index]!, true));
    follows(curve('SYSTEM.LEVEL', ...ways), sumOf(...all), true);
  });
  test('in the direction 20° up, by the path of each driver', () => {
    // Points in place of pistons, so that the paths alone are compared.
    const angle = Math.PI / 9;
    const own = ways.map((each): Way => ({ ...each, sd: 0 }));
    const speeds = ['i(vvw)', 'i(vvd)', 'i(vvt)'].map((name) => found.get(name)!);
    const wanted = sumOf(
      ...([woofer, middle, tweeter] as const).map((each, index) => {
        const { y, z } = ways[index]!.position;
        return pressureOf(speeds[index]!, each.sd, index === 1 ? -1 : 1, z * Math.cos(angle) - y * Math.sin(angle));
      }),
    );
    follows(curve('SYSTEM.OFF_AXIS', 0, angle, ...own), wanted, true);
  });
});
