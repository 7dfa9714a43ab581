import { standardVolts } from '../air.ts';
import { define } from '../define.ts';
import { need, type With } from '../driver/need.ts';
import { driverImpedance } from '../driver/impedance.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import type { Driver } from '../values/driver.ts';
import { bandOf, extremeIn } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { angleOf, plus, reciprocal, sizeOf, times, type Complex } from './complex.ts';
import { impedanceAt, notWhole } from './impedance.ts';
import { likeWirings, mixedWirings } from './wiring-list.ts';
import { powerShare, solveWiring, wiredCurve } from './wiring-solve.ts';
import { unitsOf, wiringText, type Wiring } from './wiring.ts';

const band = {
  from: { ...usual.frequency, default: 20, summary: 'lower end of the band in which the lowest ohms are sought' },
  to: { ...usual.frequency, default: 20000, summary: 'upper end of that band' },
} as const;
const zero: Complex = { re: 0, im: 0 };

export const loadWirings = define({
  name: 'LOAD.WIRINGS',
  summary: 'Every wiring of so many like units, with lowest ohms, level and power share.',
  parameters: {
    curve: { record: 'curve', summary: 'impedance of one unit in its box' },
    level: { ...usual.level, summary: 'level of one unit for 2.83 V' },
    count: { quantity: 'ratio', whole: true, min: 1, max: 8, summary: 'number of units' },
    ...band,
  },
  returns: {
    record: 'table',
    summary: 'wirings, even ones first, highest ohms first: Wiring, Lowest, At, Level, Per watt, Largest share',
  },
  source: { source: 'own', at: 'all series-parallel networks; Kirchhoff’s laws and the sum of the pressures' },
  example: {
    formula:
      '=TABLE.AT(LOAD.WIRINGS(DRIVER.IMPEDANCE(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")), "89.2 dB", 2), 2, "Level", 1 dB)',
    gives: 95.2,
  },
  remarks:
    'Level is for 2.83 V on the whole group with the units close together. Per watt is the gain over one unit for the same power: it is the same for every even wiring, so choose by the ohms. In an uneven one the unit with the largest share heats first. A level below the amplifier’s lowest load is no gain: keep Lowest above what its maker allows, and check with a meter before power.',
  compute(given) {
    const wrong = notWhole(given.curve, 'curve');
    if (wrong) return wrong;
    const within = bandOf(given.curve, given.from, given.to);
    if (within instanceof Problem) return within;
    const lowest = extremeIn(given.curve, within, -1);
    const unit: Complex = { re: 1, im: 0 };
    const rows = likeWirings(given.count).map((wiring) => {
      // Like units: every network is the impedance of one times a plain factor, and shares do not change with frequency.
      const solved = solveWiring(wiring, () => unit);
      const factor = solved.impedance.re;
      const pressure = [...solved.volts.values()].reduce((sum, each) => sum + each.re, 0);
      const share = Math.max(...unitsOf(wiring).map((each) => powerShare(solved, each, unit)));
      const gain = 20 * Math.log10(pressure);
      return {
        uneven: share > (1 + 1e-9) / given.count,
        factor,
        row: [
          wiringText(wiring),
          factor * lowest.value,
          lowest.frequency,
          given.level + gain,
          gain + 10 * Math.log10(factor),
          share,
        ] as const,
      };
    });
    rows.sort((one, other) => Number(one.uneven) - Number(other.uneven) || other.factor - one.factor);
    return {
      kind: 'table' as const,
      title: `Wirings of ${String(given.count)} units`,
      columns: [
        { name: 'Wiring', quantity: 'text' as const },
        { name: 'Lowest', quantity: 'resistance' as const },
        { name: 'At', quantity: 'frequency' as const },
        { name: 'Level', quantity: 'level' as const },
        { name: 'Per watt', quantity: 'level' as const },
        { name: 'Largest share', quantity: 'ratio' as const },
      ],
      rows: rows.map(({ row }) => row),
    };
  },
});

type Unit = With<'level'> & { readonly curve: Curve };

function unitOf(driver: Driver): Unit | Problem {
  const known = need(driver, ['level'], 'drivers');
  if (known instanceof Problem) return known;
  const curve = driverImpedance.compute({ driver }, { quantity: 'ratio' });
  return curve instanceof Problem ? new Problem(curve.message, 'drivers') : { ...known, curve };
}

function mixedRow(
  wiring: Wiring,
  units: readonly Unit[],
  at: number,
  within: { from: number; to: number },
): TableRecord['rows'][number] | Problem {
  const curves = units.map((each) => each.curve);
  const whole = wiredCurve(wiring, curves, ({ impedance }) => ({ y: sizeOf(impedance), phase: angleOf(impedance) }));
  if (whole instanceof Problem) return new Problem(whole.message, 'drivers');
  const lowest = extremeIn({ kind: 'curve', title: '', quantity: 'resistance', ...whole }, within, -1);
  const z = (unit: number): Complex => impedanceAt(curves[unit - 1]!, at);
  const solved = solveWiring(wiring, z);
  const pressure = units.reduce(
    (sum, each, index) => plus(sum, times(solved.volts.get(index + 1)!, { re: 10 ** (each.level / 20), im: 0 })),
    zero,
  );
  const level = 20 * Math.log10(sizeOf(pressure));
  const power = standardVolts ** 2 * reciprocal(solved.impedance).re;
  const shares = units.map((_, index) => powerShare(solved, index + 1, z(index + 1)));
  return [
    wiringText(wiring),
    lowest.value,
    lowest.frequency,
    level,
    level - 10 * Math.log10(power),
    ...shares,
    Math.max(...shares),
  ];
}

export const loadMixed = define({
  name: 'LOAD.MIXED',
  summary: 'Every wiring of unlike units, with lowest ohms, level and the power that each takes.',
  parameters: {
    at: {
      ...usual.frequency,
      summary: 'frequency at which level and shares are told, inside the band that all of them work in',
    },
    drivers: { record: 'driver', many: true, summary: 'the drivers, two to five of them' },
  },
  returns: {
    record: 'table',
    summary: 'wirings, highest ohms first: Wiring, Lowest, At, Level, Level 1 W, Share 1 …, Largest share',
  },
  source: { source: 'own', at: 'all series-parallel networks; Kirchhoff’s laws and the sum of the pressures' },
  example: {
    formula:
      '=TABLE.AT(LOAD.MIXED("400 Hz", DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm"), DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "3.1 Ω", "132 cm²", "5.5 mm")), 1, "Share 1", 1)',
    gives: 0.65,
  },
  remarks:
    'Impedances are those in free air; the units are taken to be close together and in step at the frequency told. Above a share of 0.6 one unit does most of the work and heats first. For whole curves, or units in boxes, use LOAD.WIRED, LOAD.VOLTAGE and LOAD.SHARE.',
  compute(given) {
    const { drivers } = given;
    if (drivers.length < 1 || drivers.length > 5)
      return new Problem(say`${String(drivers.length)} drivers are given; give one to five.`, 'drivers');
    const units: Unit[] = [];
    for (const driver of drivers) {
      const unit = unitOf(driver);
      if (unit instanceof Problem) return unit;
      units.push(unit);
    }
    const within = bandOf(units[0]!.curve, 20, 20000);
    if (within instanceof Problem) return within;
    const classes = drivers.map((driver) => drivers.indexOf(driver));
    const rows: TableRecord['rows'][number][] = [];
    for (const wiring of mixedWirings(classes)) {
      const row = mixedRow(wiring, units, given.at, within);
      if (row instanceof Problem) return row;
      rows.push(row);
    }
    rows.sort((one, other) => Number(other[1]) - Number(one[1]));
    return {
      kind: 'table' as const,
      title: `Wirings of ${
        drivers
          .map((each) => each.name)
          .filter(Boolean)
          .join(', ') || 'the drivers'
      }`,
      columns: [
        { name: 'Wiring', quantity: 'text' as const },
        { name: 'Lowest', quantity: 'resistance' as const },
        { name: 'At', quantity: 'frequency' as const },
        { name: 'Level', quantity: 'level' as const },
        { name: 'Level 1 W', quantity: 'level' as const },
        ...drivers.map((_, index) => ({ name: `Share ${String(index + 1)}`, quantity: 'ratio' as const })),
        { name: 'Largest share', quantity: 'ratio' as const },
      ],
      rows,
    };
  },
});
