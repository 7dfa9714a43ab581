import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { passiveSlopes } from '../../../functions/crossover/slope.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Leg, Network } from '../../../functions/values/network.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { agrees, input, references, type Reference } from '../../references/read.ts';
import { at, curve, network, number, points, refusal, run, runWith } from './run.ts';
import { slopeAt } from './slope-at.ts';

const about = (pattern: RegExp): readonly Reference[] =>
  references('crossover-filters', '').filter(({ id }) => pattern.test(id));
const families: Readonly<Record<string, string>> = { Bu: 'BW', Li: 'LR', Be: 'BES' };
const nameOf = (reference: Reference): string =>
  `${families[reference.id.replace('pub-', '').slice(0, 2)]!}${String(input(reference, 'order'))}${
    reference.inputs['normalisation']?.value === 'asymptote' ? 'A' : ''
  }`;

/** The element of a reference, counted from the source: coils and capacitors take turns. */
function elementOf(each: Reference, pass: string, place: number, ohms: number, frequency: number): unknown {
  const kind = (pass === 'low') === (place % 2 === 1) ? 'FILTER.COIL' : 'FILTER.CAPACITOR';
  return run(kind, nameOf(each), pass, frequency, ohms, Math.ceil(place / 2));
}

describe('part values into a resistance', () => {
  test.each(about(/^(Bu|Li|Be).*-(lp|hp)-\d/))('$id', (each) => {
    const [, pass, place] = /-(lp|hp)-(\d)/.exec(each.id)!;
    agrees(elementOf(each, pass === 'lp' ? 'low' : 'high', Number(place), input(each, 'R'), input(each, 'f')), each);
  });
  // Constants as printed in the handbook: value = constant / (R·f) for a capacitor, constant·R/f for a coil.
  test.each(about(/^pub-/))('$id', (each) => {
    const [, pass, kind, place] = /-(lp|hp)-([LC])(\d?)$/.exec(each.id)!;
    const name = kind === 'L' ? 'FILTER.COIL' : 'FILTER.CAPACITOR';
    agrees(run(name, nameOf(each), pass === 'lp' ? 'low' : 'high', 1, 1, Number(place || '1')), each);
  });
  // Worked example of a first draft: 1900 Hz LR2 into 6.3 Ω, then 1.0 mH and 6.8 µF from the shop.
  test('a first draft in shop values', () => {
    const draft = network('NETWORK.LOW', 'LR2', 1900, 6.3);
    expect(number('NETWORK.COIL', draft, 1) * 1e3).toBeCloseTo(1.06, 2);
    expect(number('NETWORK.CAPACITOR', draft, 1) * 1e6).toBeCloseTo(6.65, 2);
    const shop = network('NETWORK.ROUND', draft);
    expect([number('NETWORK.COIL', shop, 1), number('NETWORK.CAPACITOR', shop, 1)]).toEqual([0.001, 6.8e-6]);
    expect(Math.round(number('NETWORK.CORNER', shop, 6.3))).toBe(1930);
    expect(number('NETWORK.Q', shop, 6.3)).toBeCloseTo(0.52, 2);
    expect(Math.round(number('FILTER.CORNER', 1e-3, 6.8e-6))).toBe(1930);
    expect(number('FILTER.Q', 1e-3, 6.8e-6, 6.3)).toBeCloseTo(0.52, 2);
  });
  // A single resistor of 5.1 Ω ahead of 6.1 Ω makes 11.2 Ω of load: the series capacitor shrinks to 0.53 of what it was
  // for the pad's 5.92 Ω.
  test('the capacitor shrinks as the load grows', () => {
    const factor =
      number('FILTER.CAPACITOR', 'BW1', 'high', 2500, 11.2) / number('FILTER.CAPACITOR', 'BW1', 'high', 2500, 5.92);
    expect(factor).toBeCloseTo(0.53, 2);
  });
  test.each([...passiveSlopes])(
    '%s: half the ohms halves coils and doubles capacitors; so does twice the frequency',
    (name) => {
      fc.assert(
        fc.property(
          fc.double({ min: 1, max: 1e5, noNaN: true }),
          fc.double({ min: 0.1, max: 1000, noNaN: true }),
          fc.constantFrom('low', 'high'),
          (frequency, ohms, pass) => {
            const kind = (pass === 'low' ? 'FILTER.COIL' : 'FILTER.CAPACITOR') as string;
            const one = number(kind, name, pass, frequency, ohms);
            const other = number(kind, name, pass, frequency, ohms / 2);
            expect(other / one).toBeCloseTo(kind === 'FILTER.COIL' ? 0.5 : 2, 9);
            expect(number(kind, name, pass, 2 * frequency, ohms) / one).toBeCloseTo(0.5, 9);
          },
        ),
      );
    },
  );
  test('a part that is not there is refused by number', () => {
    expect(refusal('FILTER.COIL', 'BW1', 'high', 1000, 8, 1)).toContain('has no coil; ask');
    expect(refusal('FILTER.CAPACITOR', 'BW4', 'low', 1000, 8, 3)).toContain(
      'has 2 capacitors, so there is no number 3: give a whole number from 1 to 2.',
    );
    expect(refusal('NETWORK.COIL', network('NETWORK.PAD', 2, 8), 1)).toContain('has no coil; ask');
  });
});

describe('the ladder on a resistance is the slope it was made for', () => {
  const eight = curve('LOAD.RESISTOR', 8);
  test.each(passiveSlopes.flatMap((name) => [[name, 'low'] as const, [name, 'high'] as const]))(
    '%s %s-pass',
    (name, pass) => {
      const made = network(pass === 'low' ? 'NETWORK.LOW' : 'NETWORK.HIGH', name, 1000, 8);
      const response = curve('NETWORK.RESPONSE', made, eight);
      for (const index of points(20, 20_000)) {
        const wanted = slopeAt(name, pass, frequencies[index]! / 1000);
        expect(response.y[index]).toBeCloseTo(wanted.level, 6);
        expect(Math.cos(response.phase![index]! - wanted.phase)).toBeCloseTo(1, 9);
      }
      expect(number('NETWORK.CORNER', made, 8)).toBeCloseTo(1000 * asymptote(name) ** (pass === 'low' ? 1 : -1), 2);
    },
  );
  /** Where the last asymptote of a slope lies over its hand-over; 1 for all but the Bessel filters at −3 dB. */
  function asymptote(name: string): number {
    const order = Number(/\d/.exec(name)![0]);
    return 10 ** ((slopeAt(name, 'low', 1000).level + 60 * order) / (20 * order));
  }
  test.each([...passiveSlopes])(
    '%s band-pass: as far down at both hand-overs as the low-pass, 0 dB in the middle',
    (name) => {
      const made = network('NETWORK.BAND', name, 320, 5120, 8);
      const response = curve('NETWORK.RESPONSE', made, eight);
      const edge = slopeAt(name, 'low', 1).level;
      expect(at(response, 320)).toBeCloseTo(edge, 6);
      expect(at(response, 5120)).toBeCloseTo(edge, 6);
      expect(at(response, Math.sqrt(320 * 5120))).toBeCloseTo(0, 6);
      for (const index of points(20, 20_000)) {
        const f = frequencies[index]!;
        const mapped = Math.abs(f * f - 320 * 5120) / ((5120 - 320) * f);
        if (mapped > 0) expect(response.y[index]).toBeCloseTo(slopeAt(name, 'low', mapped).level, 5);
      }
    },
  );
  test('the hand-overs of a band must ascend', () =>
    expect(refusal('NETWORK.BAND', 'LR2', 3000, 300, 8)).toContain('exchange them'));
});

describe('a filter for a resistance on a voice coil, tabled', () => {
  const coil = (each: Reference): Curve => {
    const reactance = frequencies.map((f) => 2 * Math.PI * f * input(each, 'Le'));
    const re = input(each, 'Re');
    const y = reactance.map((x) => Math.hypot(re, x));
    const phase = reactance.map((x) => Math.atan2(x, re));
    return { kind: 'curve', title: 'Coil', quantity: 'resistance', y, phase, from: 10, to: 40960 };
  };
  // The grid point nearest to the frequency of the reference carries the comparison: frequencies scale with the parts.
  const place = 7 * 48;
  test.each(about(/^cl-/))('$id', (each) => {
    const stretch = frequencies[place]! / input(each, 'f');
    const load = coil({ ...each, inputs: { ...each.inputs, Le: { value: input(each, 'Le') / stretch, unit: 'H' } } });
    const low = network('NETWORK.LOW', 'BW2', input(each, 'fc') * stretch, input(each, 'R_design'));
    const flatten = network('NETWORK.FLATTEN', input(each, 'Re'), input(each, 'Le') / stretch / input(each, 'Re') ** 2);
    const whole = each.id.startsWith('cl-zob') ? network('NETWORK.JOIN', low, flatten) : low;
    agrees(curve(each.id.startsWith('cl-z-') ? 'NETWORK.IMPEDANCE' : 'NETWORK.RESPONSE', whole, load).y[place], each);
  });
});

describe('reading, changing, joining, from a table', () => {
  const rows = [
    ['series', '', null, 0.00106, 0.3, null, 'low-pass coil'],
    [null, null, null, null, null, null, null],
    ['Across', 'chain', null, null, null, 6.65e-6, ''],
    ['in series', 'tank', 22, 0.0002, 0, 4.7e-6],
  ];
  test('a table and the pieces give the same filter', () => {
    const read = network('NETWORK.OF', rows, 'Mine');
    expect(read.legs).toEqual([
      { place: 'series', form: 'chain', inductance: 0.00106, coilResistance: 0.3, label: 'low-pass coil' },
      { place: 'shunt', form: 'chain', capacitance: 6.65e-6 },
      { place: 'series', form: 'tank', resistance: 22, inductance: 0.0002, capacitance: 4.7e-6 },
    ]);
    const leg = network('NETWORK.LEG', 'series', 'tank', 22, 0.0002, undefined, 4.7e-6);
    expect(leg.legs).toEqual([read.legs[2]]);
    expect(refusal('NETWORK.LEG', 'across', 'chain')).toContain('at least one');
    const notch = network('NETWORK.NOTCH', 22, 0.0002, 4.7e-6);
    expect({ ...notch.legs[0], label: undefined }).toEqual({ ...read.legs[2], label: undefined });
  });
  test.each([
    [[['sideways', '', 1]], 'Row 1 begins with “sideways”'],
    [[['constructor', '', 1]], 'Row 1 begins with “constructor”'],
    [[['series', 'loop', 1]], 'write “chain”'],
    [[['series', '', null, 1000]], 'The coil in row 1'],
    [[['series', '', null, null, 1]], 'without a coil'],
    [[['series', '']], 'has no part'],
    [[['series', '', -1]], 'The resistor in row 1'],
  ])('a faulty table is refused with its row: %j', (parts, words) =>
    expect(refusal('NETWORK.OF', parts, 'Filter')).toContain(words),
  );
  test('a part is changed by kind and number, in its own unit only', () => {
    const high = network('NETWORK.HIGH', 'BW3', 2500, 6);
    const changed = runWith('capacitance', 'NETWORK.CHANGE', high, 'capacitor', 2, 1e-5) as Network;
    expect(number('NETWORK.CAPACITOR', changed, 2)).toBe(1e-5);
    expect(number('NETWORK.CAPACITOR', changed, 1)).toBe(number('NETWORK.CAPACITOR', high, 1));
    const wired = runWith('resistance', 'NETWORK.CHANGE', high, 'coil resistance', 1, 0.25) as Network;
    expect(number('NETWORK.COIL_RESISTANCE', wired, 1)).toBe(0.25);
    expect(runWith('resistance', 'NETWORK.CHANGE', high, 'capacitor', 1, 5)).toBeInstanceOf(Problem);
    expect(refusal('NETWORK.CHANGE', high, 'resistor', 1, 5)).toContain('has no resistor; ask for another part');
    expect(refusal('NETWORK.CHANGE', high, 'coil', 1, 0)).toContain('must lie from');
  });
  test('a corner needs a plain filter, a Q one of order two, a load its phase', () => {
    const padded = network('NETWORK.JOIN', network('NETWORK.HIGH', 'LR2', 2000, 6), network('NETWORK.PAD', 2, 8));
    expect(refusal('NETWORK.CORNER', padded, 6)).toContain('without pad');
    expect(refusal('NETWORK.Q', network('NETWORK.HIGH', 'BW3', 2000, 6), 6)).toContain('order 3');
    const { phase: _, ...bare } = curve('LOAD.RESISTOR', 8);
    expect(refusal('NETWORK.RESPONSE', padded, bare)).toContain('no phase');
  });
});

describe('properties of every passive ladder', () => {
  const value = (min: number, max: number) =>
    fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }).map((log) => Math.exp(log));
  const leg: fc.Arbitrary<Leg> = fc
    .record({
      place: fc.constantFrom('series' as const, 'shunt' as const),
      form: fc.constantFrom('chain' as const, 'tank' as const),
      resistance: fc.option(value(0.1, 100), { nil: undefined }),
      inductance: fc.option(value(1e-5, 1e-2), { nil: undefined }),
      coilResistance: fc.option(value(0.01, 3), { nil: undefined }),
      capacitance: fc.option(value(1e-6, 1e-3), { nil: undefined }),
    })
    .map((drawn) => {
      const { coilResistance, ...rest } = drawn;
      const all = drawn.inductance === undefined ? rest : { ...rest, coilResistance };
      return Object.fromEntries(Object.entries(all).filter(([, each]) => each !== undefined)) as unknown as Leg;
    })
    .filter((each) => Object.keys(each).length > 2);
  const ladder = fc.array(leg, { maxLength: 8 }).map((legs): Network => ({ kind: 'network', name: 'Any', legs }));
  const load = fc.tuple(value(2, 20), value(1e-5, 2e-3)).map(([re, le]): Curve => {
    const y = frequencies.map((f) => Math.hypot(re, 2 * Math.PI * f * le));
    const phase = frequencies.map((f) => Math.atan2(2 * Math.PI * f * le, re));
    return { kind: 'curve', title: 'Any', quantity: 'resistance', y, phase, from: 10, to: 40960 };
  });

  test('energy is never created: no more power reaches the driver than the amplifier gives, and none comes back', () => {
    fc.assert(
      fc.property(ladder, load, (legs, driver) => {
        const response = curve('NETWORK.RESPONSE', legs, driver);
        const input = curve('NETWORK.IMPEDANCE', legs, driver);
        for (let index = 0; index < frequencies.length; index += 12) {
          const given = Math.cos(input.phase![index]!) / input.y[index]!;
          const taken = (10 ** (response.y[index]! / 10) * Math.cos(driver.phase![index]!)) / driver.y[index]!;
          expect(given).toBeGreaterThanOrEqual(-1e-12);
          expect(taken).toBeLessThanOrEqual(given * (1 + 1e-6) + 1e-12);
        }
      }),
      { numRuns: 60 },
    );
  });
  test('all impedances doubled: the same response, twice the ohms', () => {
    fc.assert(
      fc.property(ladder, load, (legs, driver) => {
        const double = (each: Leg): Leg => ({
          ...each,
          ...(each.resistance === undefined ? {} : { resistance: 2 * each.resistance }),
          ...(each.inductance === undefined ? {} : { inductance: 2 * each.inductance }),
          ...(each.coilResistance === undefined ? {} : { coilResistance: 2 * each.coilResistance }),
          ...(each.capacitance === undefined ? {} : { capacitance: each.capacitance / 2 }),
        });
        const doubled = { ...legs, legs: legs.legs.map(double) };
        const heavier = { ...driver, y: driver.y.map((ohms) => 2 * ohms) };
        const [one, other] = [curve('NETWORK.RESPONSE', legs, driver), curve('NETWORK.RESPONSE', doubled, heavier)];
        const [small, large] = [curve('NETWORK.IMPEDANCE', legs, driver), curve('NETWORK.IMPEDANCE', doubled, heavier)];
        for (let index = 0; index < frequencies.length; index += 16) {
          expect(other.y[index]).toBeCloseTo(one.y[index]!, 6);
          expect(large.y[index]! / small.y[index]!).toBeCloseTo(2, 6);
        }
      }),
      { numRuns: 60 },
    );
  });
  test('a joined filter is the same as its legs in one', () => {
    fc.assert(
      fc.property(ladder, ladder, load, (first, second, driver) => {
        const joined = curve('NETWORK.RESPONSE', network('NETWORK.JOIN', first, second), driver);
        const behind = curve('NETWORK.IMPEDANCE', second, driver);
        const [one, two] = [curve('NETWORK.RESPONSE', first, behind), curve('NETWORK.RESPONSE', second, driver)];
        for (let index = 0; index < frequencies.length; index += 16)
          if (joined.y[index]! > -250) expect(joined.y[index]).toBeCloseTo(one.y[index]! + two.y[index]!, 5);
      }),
      { numRuns: 60 },
    );
  });
  test('ideal parts in resonance on a point of the grid stay finite', () => {
    const f = frequencies[200]!;
    const tank = network(
      'NETWORK.OF',
      [['series', 'tank', null, 1e-3, null, 1 / ((2 * Math.PI * f) ** 2 * 1e-3)]],
      'Tank',
    );
    const chain = network(
      'NETWORK.OF',
      [['across', 'chain', null, 1e-3, null, 1 / ((2 * Math.PI * f) ** 2 * 1e-3)]],
      'Chain',
    );
    for (const each of [tank, chain]) {
      const made = [
        curve('NETWORK.RESPONSE', each, curve('LOAD.RESISTOR', 8)),
        curve('NETWORK.IMPEDANCE', each, curve('LOAD.RESISTOR', 8)),
      ];
      for (const { y, phase } of made) expect([...y, ...phase!].every(Number.isFinite)).toBe(true);
    }
  });
});
