import { expect, test } from 'vitest';
import { curveAt } from '../../functions/curve/read.ts';
import { boxLevel, boxTravel } from '../../functions/enclosure/box-curves.ts';
import { boxPortSpeed } from '../../functions/enclosure/port-curves.ts';
import { closedBox, closedVolume } from '../../functions/enclosure/closed.ts';
import { ventedAligned } from '../../functions/enclosure/aligned.ts';
import type { Box } from '../../functions/values/box.ts';
import type { Driver } from '../../functions/values/driver.ts';
import { Problem } from '../../functions/values/problem.ts';
import { subFigures } from '../../src/analysis/shortlist/sub-figures.ts';
import { driverOf } from '../../src/document/shelf/driver-of.ts';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import { usualRules } from '../../src/analysis/shortlist/usual-rules.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };

const context = { quantity: 'ratio' } as const;
const shelf = decodeShelf(drivers) as readonly DriverEntry[];

function named(name: string): Required<Driver> {
  const driver = driverOf(shelf.find((entry) => entry.name === name)!);
  if (driver instanceof Problem) throw new Error(name);
  return driver as Required<Driver>;
}

function boxOf(driver: Required<Driver>, style: 'closed' | 'vented'): Box {
  const { qts, vas } = driver;
  const volume = closedVolume.compute({ qts, vas, qtc: usualRules.qtc }, context) as number;
  const rest = { driver, seriesResistance: 0, fill: 1 };
  const box =
    style === 'closed'
      ? closedBox.compute({ ...rest, volume, leakageQ: undefined, absorptionQ: undefined }, context)
      : ventedAligned.compute({ ...rest, family: 'flattest', leakageQ: 7 }, context);
  if (box instanceof Problem) throw new Error('no box');
  return box;
}

/** Travel over Xmax, watts over Pe and air in the port over 17 m/s of one driver in its box, read from the box as a circuit, for
 *  a level. */
function strains(driver: Required<Driver>, box: Box, level: number, frequency: number, port?: number) {
  const one = boxLevel.compute({ box, volts: 1 }, context);
  if (one instanceof Problem) throw new Error('no level');
  const volts = 10 ** ((level - (curveAt.compute({ curve: one, frequency }, context) as number)) / 20);
  const travel = boxTravel.compute({ box, volts }, context);
  if (travel instanceof Problem) throw new Error('no travel');
  const moved = curveAt.compute({ curve: travel, frequency }, context) as number;
  const air = port === undefined ? undefined : boxPortSpeed.compute({ box, portArea: port, volts }, context);
  if (air instanceof Problem) throw new Error('no port');
  const flow = air === undefined ? 0 : (curveAt.compute({ curve: air, frequency }, context) as number);
  return { travel: moved / driver.xmax, heat: volts ** 2 / driver.nominal / driver.pe, port: flow / 17 };
}

// The level of these drivers is printed to 0.1 dB and their circuit has the inductance of the coil: 3 % for either.
test.each([
  ['L-250 T', 106, 30, 'closed', undefined],
  ['L-250 T', 110, 25, 'closed', undefined],
  ['W-220 A', 104, 35, 'closed', undefined],
  ['H-460 S', 106, 30, 'closed', undefined],
  ['L-250 T', 106, 30, 'vented', undefined],
  ['L-250 T', 112, 20, 'vented', undefined],
  ['L-250 T', 106, 24, 'vented', 60e-4],
  ['W-220 A', 104, 35, 'vented', undefined],
  ['W-220 A', 104, 35, 'vented', 40e-4],
  ['H-460 S', 110, 30, 'vented', 300e-4],
] as const)(
  '%s for %d dB at %d Hz, %s, with a port of %d m²: at its lowest note one limit is used up, and none is passed',
  (name, level, lowest, style, port) => {
    const driver = named(name);
    const found = subFigures(driver, { level, lowest, highest: 100 }, style, { ...usualRules, ...(port && { port }) });
    if ('why' in found) throw new Error(found.why);
    const { count, reach, end, most } = found;
    const box = boxOf(driver, style);
    const each = (number: number): number => level - 20 * Math.log10(number);
    const strain = (number: number, note: number): number =>
      Math.max(...Object.values(strains(driver, box, each(number), note, port)));
    expect(strain(count, reach)).toBeGreaterThan(0.97);
    expect(strain(count, reach)).toBeLessThan(1.03);
    expect(strains(driver, box, each(count), reach, port)[end]).toBeGreaterThan(0.97);
    expect(reach).toBeLessThanOrEqual(lowest * (1 + 1e-9));
    expect(most).toBeGreaterThanOrEqual(level - 1e-9);
    // Enough for the whole band, and one fewer would not do somewhere in it.
    const band = Array.from({ length: 60 }, (_, index) => lowest * (100 / lowest) ** (index / 59));
    expect(Math.max(...band.map((note) => strain(count, note)))).toBeLessThan(1.03);
    if (count > 1) expect(Math.max(...band.map((note) => strain(count - 1, note)))).toBeGreaterThan(0.97);
  },
);
