import { define } from '../define.ts';
import type { Curve } from '../values/curve.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { angleOf, sizeOf } from './complex.ts';
import { powerShare, wiredCurve } from './wiring-solve.ts';
import { readWiring } from './wiring.ts';

const wiring = { text: true, summary: 'wiring, + for series, | for parallel: 1+2 | 3+4' } as const;
const unit = { quantity: 'ratio', whole: true, min: 1, max: 64, summary: 'number of the unit, from 1' } as const;
const curves = { record: 'curve', many: true, summary: 'impedance curves of the units, from 1' } as const;
const woofer = 'DRIVER.IMPEDANCE(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm"))';
const sibling = 'DRIVER.IMPEDANCE(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "3.1 Ω", "132 cm²", "5.5 mm"))';

const noUnit = (given: { unit: number; curves: readonly Curve[] }): Problem | undefined =>
  given.unit <= given.curves.length
    ? undefined
    : new Problem(
        say`There are ${String(given.curves.length)} units, numbered from 1; there is none with the number ${String(given.unit)}.`,
        'unit',
      );

export const loadWired = define({
  name: 'LOAD.WIRED',
  summary: 'The impedance of several units in any wiring.',
  parameters: { wiring, curves },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance of the whole' },
  source: { source: 'own', at: 'Kirchhoff’s laws, complex' },
  example: {
    formula: `=CURVE.AT(LOAD.WIRED("1+2 | 3+4", ${woofer}, ${woofer}, ${woofer}, ${woofer}), "1 kHz")`,
    gives: 5.8,
  },
  remarks:
    'Series binds before parallel; brackets change that, as in (1 | 2)+3. Measured impedances do as well as modelled ones, with their phase.',
  compute(given) {
    const read = readWiring(given.wiring, given.curves.length);
    if (read instanceof Problem) return read;
    const found = wiredCurve(read, given.curves, ({ impedance }) => ({
      y: sizeOf(impedance),
      phase: angleOf(impedance),
    }));
    if (found instanceof Problem) return found;
    return { kind: 'curve' as const, title: `Loads ${given.wiring}`, quantity: 'resistance' as const, ...found };
  },
});

export const loadVoltage = define({
  name: 'LOAD.VOLTAGE',
  summary: 'The voltage that reaches one unit of a wiring, over that of the whole.',
  parameters: { wiring, unit, curves },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase; 0 dB in parallel' },
  source: { source: 'own', at: 'complex voltage divider' },
  example: { formula: `=CURVE.AT(LOAD.VOLTAGE("1+2", 1, ${woofer}, ${woofer}), "1 kHz")`, gives: -6.02 },
  remarks:
    'Add it to the level of the unit with CURVE.ADD, and sum all units with CURVE.SUM: that is the level of the group for the same voltage.',
  compute(given) {
    const read = noUnit(given) ?? readWiring(given.wiring, given.curves.length);
    if (read instanceof Problem) return read;
    const found = wiredCurve(read, given.curves, ({ volts }) => {
      const own = volts.get(given.unit)!;
      return { y: 20 * Math.log10(sizeOf(own)), phase: angleOf(own) };
    });
    if (found instanceof Problem) return found;
    return {
      kind: 'curve' as const,
      title: `Voltage at unit ${String(given.unit)}`,
      quantity: 'level' as const,
      ...found,
    };
  },
});

export const loadShare = define({
  name: 'LOAD.SHARE',
  summary: 'The share of the power that one unit of a wiring takes.',
  parameters: { wiring, unit, curves },
  returns: { record: 'curve', of: 'ratio', summary: 'share of the real power, from 0 to 1' },
  source: { source: 'own', at: 'real part of volts times current' },
  example: { formula: `=CURVE.AT(LOAD.SHARE("1 | 2", 2, ${woofer}, ${sibling}), "1 kHz")`, gives: 0.652 },
  remarks:
    'Above 0.6 of two, that unit does most of the work and is the first to heat. In parallel the lower ohms take more, in series the higher; near the resonances it changes.',
  compute(given) {
    const read = noUnit(given) ?? readWiring(given.wiring, given.curves.length);
    if (read instanceof Problem) return read;
    const found = wiredCurve(read, given.curves, (solved, z) => ({
      y: powerShare(solved, given.unit, z(given.unit)),
    }));
    if (found instanceof Problem) return found;
    return {
      kind: 'curve' as const,
      title: `Power share of unit ${String(given.unit)}`,
      quantity: 'ratio' as const,
      ...found,
    };
  },
});
