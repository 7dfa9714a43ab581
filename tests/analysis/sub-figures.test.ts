import { expect, test } from 'vitest';
import { curveAt } from '../../functions/curve/read.ts';
import { boxLevel, boxTravel } from '../../functions/enclosure/box-curves.ts';
import { closedBox, closedVolume } from '../../functions/enclosure/closed.ts';
import type { Driver } from '../../functions/values/driver.ts';
import { Problem } from '../../functions/values/problem.ts';
import { subFigures } from '../../src/analysis/sub-figures.ts';
import { driverOf } from '../../src/document/shelf/driver-of.ts';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };

const context = { quantity: 'ratio' } as const;
const shelf = decodeShelf(drivers) as readonly DriverEntry[];

function named(name: string): Required<Driver> {
  const driver = driverOf(shelf.find((entry) => entry.name === name)!);
  if (driver instanceof Problem) throw new Error(name);
  return driver as Required<Driver>;
}

/** Travel over Xmax and watts over Pe of one driver in its closed box, read from the box as a circuit, for a level. */
function strains(driver: Required<Driver>, level: number, frequency: number): readonly [number, number] {
  const volume = closedVolume.compute({ qts: driver.qts, vas: driver.vas, qtc: Math.SQRT1_2 }, context) as number;
  const box = closedBox.compute(
    { driver, volume, seriesResistance: 0, fill: 1, leakageQ: undefined, absorptionQ: undefined },
    context,
  );
  if (box instanceof Problem) throw new Error('no box');
  const one = boxLevel.compute({ box, volts: 1 }, context);
  if (one instanceof Problem) throw new Error('no level');
  const volts = 10 ** ((level - (curveAt.compute({ curve: one, frequency }, context) as number)) / 20);
  const travel = boxTravel.compute({ box, volts }, context);
  if (travel instanceof Problem) throw new Error('no travel');
  const moved = curveAt.compute({ curve: travel, frequency }, context) as number;
  return [moved / driver.xmax, volts ** 2 / driver.nominal / driver.pe];
}

// The level of these drivers is printed to 0.1 dB and their circuit has the inductance of the coil: 3 % for either.
test.each([
  ['L-250 T', 106, 30],
  ['L-250 T', 110, 25],
  ['W-220 A', 104, 35],
  ['H-460 S', 106, 30],
])('%s for %d dB at %d Hz: at its lowest note one limit is used up, and none is passed', (name, wanted, note) => {
  const driver = named(name);
  const found = subFigures(driver, wanted, note);
  if ('why' in found) throw new Error(found.why);
  const { count, reach, most } = found;
  const each = wanted - 20 * Math.log10(count);
  const [travel, heat] = strains(driver, each, reach);
  expect(Math.max(travel, heat)).toBeGreaterThan(0.97);
  expect(Math.max(travel, heat)).toBeLessThan(1.03);
  expect(reach).toBeLessThanOrEqual(note * (1 + 1e-9));
  expect(most).toBeGreaterThanOrEqual(wanted - 1e-9);
  // One fewer would not do.
  if (count > 1) expect(Math.max(...strains(driver, wanted - 20 * Math.log10(count - 1), note))).toBeGreaterThan(0.97);
});
