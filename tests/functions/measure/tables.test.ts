import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { filterSlope } from '../../../functions/crossover/filter-slope.ts';
import { measureImpedance, measureLevel, measureMinimumPhase } from '../../../functions/measure/curves.ts';
import { driverImpedanceAt } from '../../../functions/measure/fit-sweep.ts';
import { readLine, readMeasured } from '../../../functions/measure/read-table.ts';
import { measureDriver, measureFitted, measureSweep } from '../../../functions/measure/sweep.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import { references } from '../../references/read.ts';

const plain = { quantity: 'ratio' } as const;

describe('tables of all kinds', () => {
  test.each([
    ['20 80.5 -12.3', [20, 80.5, -12.3]],
    ['20,80.5,-12.3', [20, 80.5, -12.3]],
    ['20, 80.5, -12.3', [20, 80.5, -12.3]],
    ['20,5; 80,1; 3,2', [20.5, 80.1, 3.2]],
    ['20,5\t80,1', [20.5, 80.1]],
    ['1.0E+02;8e1', [100, 80]],
    ['  100 Hz  88,5 dB', [100, 88.5]],
    ['1000,90', [1000, 90]],
  ] as const)('“%s”', (line, numbers) => expect(readLine(line)).toEqual(numbers));
  test.each(['* made by hand', '# 20 80', '; 20 80', '// x', '"Freq" "dB"', 'Freq SPL Phase', '', '   '])(
    '“%s” holds no numbers',
    (line) => expect(readLine(line)).toBeUndefined(),
  );
  test('a file in one cell, lines in cells, and columns of numbers give the same', () => {
    const text = '* title\nHz\tdB\tdeg\n1000\t90,5\t-10\n100\t88,5\t20\n';
    const expected = { frequency: [100, 1000], value: [88.5, 90.5], degrees: [20, -10] };
    expect(readMeasured([[text]], 'rows')).toEqual(expected);
    expect(
      readMeasured(
        text.split('\n').map((line) => [line]),
        'rows',
      ),
    ).toEqual(expected);
    expect(
      readMeasured(
        [
          ['Hz', 'dB', 'deg'],
          [1000, 90.5, -10],
          [null, null, null],
          [100, 88.5, 20],
        ],
        'rows',
      ),
    ).toEqual(expected);
  });
  test('the phase is followed through half a turn', () => {
    const curve = measureLevel.compute(
      {
        rows: [
          [100, 90, 170],
          [200, 90, -170],
        ],
        title: '',
        phase: 'degrees',
      },
      plain,
    ) as Curve;
    const middle = curve.phase![Math.round(48 * Math.log2(Math.SQRT2 * 10))]!;
    expect((middle * 180) / Math.PI).toBeCloseTo(180, 0);
    expect([curve.from, curve.to]).toEqual([100, 200]);
  });
  test('phases typed with their unit come as radians and are told apart by word; pasted ones stay degrees', () => {
    const radians = [
      [100, 90, Math.PI / 6],
      [200, 90, -Math.PI / 3],
    ];
    const phaseOf = (rows: (string | number)[][], phase: 'degrees' | 'angles') =>
      (measureLevel.compute({ rows, title: '', phase }, plain) as Curve).phase!;
    const degrees = phaseOf(
      radians.map(([f, level, angle]) => [f!, level!, (angle! * 180) / Math.PI]),
      'degrees',
    );
    phaseOf(radians, 'angles').forEach((angle, index) => expect(angle).toBeCloseTo(degrees[index]!, 12));
    const pasted = [['100 90 30\n200 90 -60']];
    expect(phaseOf(pasted, 'angles')).toEqual(phaseOf(pasted, 'degrees'));
  });
  test('a sweep with phases in degrees, radians or text gives one driver', () => {
    const of = { re: 5.8, fs: 38, qms: 4.8, qes: 0.42, le: 0.0005, exponent: 1 };
    const lines = Array.from({ length: 60 }, (_, index) => 10 * 200 ** (index / 59)).map((frequency) => {
      const { re, im } = driverImpedanceAt(of, frequency);
      return [frequency, Math.hypot(re, im), Math.atan2(im, re)] as const;
    });
    const degrees = lines.map(([frequency, ohms, angle]) => [frequency, ohms, (angle * 180) / Math.PI]);
    const found = [
      [lines, 'angles'],
      [degrees, 'degrees'],
      [[[degrees.map((line) => line.join(' ')).join('\n')]], 'angles'],
    ] as const;
    for (const [sweep, phase] of found) {
      const { rows } = measureSweep.compute({ sweep, re: undefined, phase }, plain) as TableRecord;
      [38, 4.8, 0.42].forEach((value, index) => expect((rows[0]![index + 1] as number) / value).toBeCloseTo(1, 6));
      const given = { sweep, phase, name: '', re: undefined, sd: undefined, mms: undefined, vas: undefined };
      expect((measureDriver.compute(given, plain) as Driver).qes! / 0.42).toBeCloseTo(1, 6);
      expect((measureFitted.compute({ sweep, re: undefined, phase }, plain) as Curve).y[92]).toBeGreaterThan(60);
    }
  });
  test('whatever is pasted, there is a curve of numbers or a problem', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789.,;-\n \te') })), (text) => {
        for (const by of [measureLevel, measureImpedance]) {
          const made = by.compute({ rows: [[text]], title: '', phase: 'degrees' }, plain);
          expect(made instanceof Problem || [...made.y, ...(made.phase ?? [])].every(Number.isFinite)).toBe(true);
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('minimum phase', () => {
  const slope = (kind: 'BW1' | 'BW2' | 'BW4' | 'LR4', pass: 'low' | 'high', frequency: number): Curve =>
    filterSlope.compute({ frequency, slope: kind, pass }, plain) as Curve;
  const perOctave = (order: number): number => 20 * order * Math.log10(2);
  test.each([...references('minimum-phase', 'mp-'), ...references('minimum-phase', 'bode-')])('$id', (each) => {
    const ratios = each.inputs['f/fc']!.value as readonly number[];
    ratios.forEach((ratio, index) => {
      // The corner is put so that the ratio lies on a point of the grid.
      const curve = slope('BW2', 'low', frequencies[288]! / ratio);
      const found = measureMinimumPhase.compute({ curve, below: 0, above: -perOctave(2) }, plain) as Curve;
      const expected = (each.expected.value as readonly number[])[index]!;
      expect(Math.abs((found.phase![288]! * 180) / Math.PI - expected)).toBeLessThanOrEqual(each.tolerance.absolute!);
    });
  });
  test.each([
    ['BW1', 'high', 1],
    ['BW4', 'low', 4],
    ['LR4', 'high', 4],
  ] as const)('%s %s-pass: within 0.1° of the analytic phase over the whole grid', (kind, pass, order) => {
    const curve = slope(kind, pass, 700);
    const [below, above] = pass === 'high' ? [perOctave(order), 0] : [0, -perOctave(order)];
    const found = measureMinimumPhase.compute({ curve, below, above }, plain) as Curve;
    const turn = 2 * Math.PI * Math.round((found.phase![288]! - curve.phase![288]!) / (2 * Math.PI));
    found.phase!.forEach((angle, index) =>
      expect(Math.abs(angle - turn - curve.phase![index]!) * (180 / Math.PI)).toBeLessThan(0.1),
    );
  });
});
