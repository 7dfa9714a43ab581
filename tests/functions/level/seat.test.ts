import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { electricalFunctions } from '../../../functions/electrical/index.ts';
import { agrees, input, references, type Reference } from '../../references/read.ts';
import { number, refusal, run, table } from '../crossover/run.ts';

const levels = (start: string): readonly Reference[] => references('levels', start);
const limits = (start: string): readonly Reference[] => references('output-limits', start);
const listed = (each: Reference): readonly number[] => each.inputs['L']!.value as readonly number[];

describe('levels together, tabled', () => {
  test.each(levels('sum-'))('$id', (each) => {
    // The reference is written with ten digits, which is coarser than the tolerance it states: all ten must agree.
    expect(Number(number('LEVEL.SUM', ...listed(each)).toPrecision(10))).toBe(each.expected.value);
  });
  test.each(levels('coh-'))('$id', (each) => {
    expect(Number(number('LEVEL.SUM_IN_STEP', ...listed(each)).toPrecision(10))).toBe(each.expected.value);
  });
  test.each(levels('phase-'))('$id', (each) => {
    const angle = (input(each, 'phase') * Math.PI) / 180;
    const level = number('LEVEL.SUM_AT_ANGLE', input(each, 'L1'), input(each, 'L2'), angle);
    expect(Number(level.toPrecision(10))).toBe(each.expected.value);
  });
  test('sums lie between the loudest and all in step, and none is refused', () => {
    const several = fc.array(fc.double({ min: 0, max: 140, noNaN: true }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(several, (all) => {
        const sum = number('LEVEL.SUM', ...all);
        expect(sum).toBeGreaterThanOrEqual(Math.max(...all) - 1e-9);
        expect(sum).toBeLessThanOrEqual(number('LEVEL.SUM_IN_STEP', ...all) + 1e-9);
      }),
    );
    expect(refusal('LEVEL.SUM')).toContain('at least one');
    expect(refusal('LEVEL.SUM_IN_STEP')).toContain('at least one');
  });
});

describe('what a loudspeaker needs and reaches, tabled', () => {
  test.each(levels('dist-'))('$id', (each) =>
    // In the open: 20·lg 2 for every doubling.
    agrees(Number((-number('LEVEL.DISTANCE_LOSS', input(each, 'r'), 20 * Math.log10(2))).toPrecision(10)), each),
  );
  test.each(levels('pwr-'))('$id', (each) => {
    const at283 = number('LEVEL.FROM_WATT', input(each, 's_1W'), input(each, 'R'));
    const inOpen = 20 * Math.log10(2);
    const watts = number(
      'LEVEL.WATTS',
      at283,
      input(each, 'distance'),
      inOpen,
      0,
      input(each, 'target'),
      input(each, 'R'),
    );
    agrees(watts, each);
    const [volts] = levels(each.id.replace('pwr', 'volt'));
    agrees(number('LEVEL.VOLTS', at283, input(each, 'distance'), inOpen, 0, input(each, 'target')), volts!);
    const [peak] = levels(each.id.replace('pwr', 'peak'));
    agrees(
      number('LEVEL.WATTS', at283, input(each, 'distance'), inOpen, 0, input(each, 'target') + 10, input(each, 'R')),
      peak!,
    );
  });
  test.each(limits('disp-'))('$id', (each) =>
    agrees(number('LEVEL.BY_TRAVEL', input(each, 'Sd'), input(each, 'Xmax'), input(each, 'f')), each),
  );
  test.each(limits('therm-'))('$id', (each) =>
    // Written with ten digits, coarser than the tolerance it states.
    agrees(Number(number('LEVEL.BY_POWER', input(each, 's_1W'), input(each, 'P')).toPrecision(10)), each),
  );
  test.each(limits('vtherm-'))('$id', (each) =>
    agrees(number('LEVEL.CLIP_VOLTS', input(each, 'P'), input(each, 'Re')), each),
  );
  test.each(limits('comp-'))('$id', (each) => agrees(number('HEAT.RISE', input(each, 'P0'), input(each, 'Rth')), each));
  test.each(limits('compdb-'))('$id', (each) =>
    agrees(number('HEAT.LOSS', number('HEAT.RISE', input(each, 'P0'), input(each, 'Rth'))), each),
  );
  test.each(references('pads-and-loads', '').filter(({ id }) => id.startsWith('convert-')))('$id', (each) =>
    agrees(number('LEVEL.TO_WATT', input(each, 's283'), input(each, 'Z')), each),
  );
  test('1 W and 2.83 V are one basis seen from two sides', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 120, noNaN: true }),
        fc.double({ min: 1, max: 32, noNaN: true }),
        (level, ohms) => {
          expect(number('LEVEL.FROM_WATT', number('LEVEL.TO_WATT', level, ohms), ohms)).toBeCloseTo(level, 9);
        },
      ),
    );
  });
});

// Worked example of a practitioner: 84.7 dB, 2.8 m, peaks of 100 dB, stereo. Watts as printed; the free field loses
// 6.02 dB for a doubling.
describe('loud enough', () => {
  test('47 W in a room, 133 W in the open', () => {
    expect(Math.round(number('LEVEL.WATTS', 84.7, 2.8, 3, 3, 100, 8))).toBe(47);
    expect(Math.round(number('LEVEL.WATTS', 84.7, 2.8, 20 * Math.log10(2), 3, 100, 8))).toBe(133);
  });
  test('the ledger comes to the same watts as the single steps', () => {
    const ledger = table('LEVEL.LEDGER', 89.2, '2.83 V', 8, 4.5, 0, 2.8, 3, 3, 100, 100);
    const row = (name: string) => ledger.rows.find(([first]) => first === name)!;
    expect(row('Edge make-up')[2]).toBeCloseTo(84.7, 9);
    expect(row('Further loudspeakers')[2]).toBeCloseTo(number('LEVEL.AT_SEAT', 84.7, 2.8, 3, 3), 9);
    expect(row('Peaks wanted')[3]).toBeCloseTo(number('LEVEL.WATTS', 84.7, 2.8, 3, 3, 100, 8), 9);
    expect(row('Peaks wanted')[4]).toBeCloseTo(number('LEVEL.VOLTS', 84.7, 2.8, 3, 3, 100), 9);
    expect(row('Amplifier')[1]).toBeCloseTo(number('LEVEL.HEADROOM', 100, 47.43), 2);
    for (const line of ledger.rows) expect(line).toHaveLength(ledger.columns.length);
    const printed = table('LEVEL.LEDGER', 88, '1 W', 4, 0, 0, 1, 3, 0, 100);
    expect(printed.rows[1]![2]).toBeCloseTo(91.0, 1);
    expect(printed.rows.map(([name]) => name)).not.toContain('Amplifier');
  });
  test('changes add up to the last level, and twice the power is 3.01 dB', () => {
    const loss = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(loss, loss, fc.double({ min: 0.5, max: 20, noNaN: true }), (makeUp, series, metres) => {
        const { rows } = table('LEVEL.LEDGER', 90, '2.83 V', 8, makeUp, series, metres, 4, 3, 100);
        const changes = rows.reduce((sum, line) => sum + ((line[1] as number | null) ?? 0), 0);
        expect(90 + changes).toBeCloseTo(100, 9);
      }),
    );
    const watts = (peaks: number): number => number('LEVEL.WATTS', 84.7, 2.8, 3, 3, peaks, 8);
    expect(watts(100 + 10 * Math.log10(2)) / watts(100)).toBeCloseTo(2, 12);
    expect(number('LEVEL.HEADROOM', 94, 47)).toBeCloseTo(3.0103, 4);
    expect(number('LEVEL.CLIP_VOLTS', 50, 8)).toBe(20);
  });
});

// Worked example of a practitioner: 100 W into 8 Ω, pad 2.7/6.8 Ω on a tweeter of 6.1 Ω.
describe('heat in the treble', () => {
  const electrical = (name: string, given: Readonly<Record<string, unknown>>): number =>
    electricalFunctions.find((each) => each.name === name)!.compute(given, { quantity: 'ratio' }) as number;
  const heat = (crest: number, share: number): number[] =>
    ['series', 'shunt', 'driver'].map((part) => {
      const volts = Math.sqrt(number('CREST.POWER', 100, crest) * 8 * share);
      return electrical('PAD.HEAT', { volts, series: 2.7, shunt: 6.8, ohms: 6.1, part, phase: 0 });
    });
  test.each([
    [12, 0.15, ['1.17', '0.66', '0.73']],
    [3, 0.25, ['15.5', '8.7', '9.7']],
  ] as const)('crest %d dB, share %d', (crest, share, printed) =>
    expect(heat(crest, share).map((watts, index) => watts.toFixed(printed[index]!.split('.')[1]!.length))).toEqual(
      printed,
    ),
  );
  test('a sine has a crest of 3.01 dB and its rated power', () =>
    expect(number('CREST.POWER', 50, 10 * Math.log10(2))).toBeCloseTo(50, 12));
  test('of pink noise, half the octaves hold half the power', () => {
    expect(number('CREST.TREBLE_SHARE', 20 * Math.sqrt(1000))).toBeCloseTo(0.5, 12);
    expect(run('CREST.TREBLE_SHARE', 20_000)).toBe(0);
  });
  test('a hot coil takes less than the cold one would, and the loss is that of its ohms', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1000, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (power, perWatt) => {
          const rise = number('HEAT.RISE', power, perWatt);
          expect(rise).toBeLessThan(power * perWatt);
          // Steady: what the warm coil takes is what keeps it warm.
          expect(((power / (1 + 0.00393 * rise)) * perWatt) / rise).toBeCloseTo(1, 9);
          expect(10 ** (number('HEAT.LOSS', rise) / 20)).toBeCloseTo(1 + 0.00393 * rise, 9);
        },
      ),
    );
  });
});
