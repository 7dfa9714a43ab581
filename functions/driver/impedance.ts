import { define } from '../define.ts';
import { solveImpedance } from '../enclosure/impedance-curve.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { lossyCoilOf } from './lossy-coil.ts';
import { need } from './need.ts';

export const driverImpedance = define({
  name: 'DRIVER.IMPEDANCE',
  summary: 'Impedance of a driver in free air, magnitude and phase.',
  parameters: { driver: { record: 'driver', summary: 'the driver' } },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance' },
  source: { source: 'small1972direct', at: 'electrical equivalent circuit' },
  example: {
    formula: '=DRIVER.IMPEDANCE(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm"))',
    gives: { title: 'Impedance', maximum: 72 },
  },
  remarks: 'The voice coil is taken as Re and Le in series; real coils rise more slowly above a kilohertz or so.',
  compute: (given): Curve | Problem => {
    const driver = need(given.driver, ['fs', 'qms', 'qes', 're']);
    if (driver instanceof Problem) return driver;
    return {
      kind: 'curve',
      title: 'Impedance',
      quantity: 'resistance',
      ...solveImpedance(
        { style: 'free', ...driver, coil: driver.le ?? 0, lossyCoil: lossyCoilOf(driver) },
        frequencies,
      ),
      from: frequencies[0]!,
      to: frequencies.at(-1)!,
    };
  },
});
