import { define } from '../define.ts';
import { wayLevel } from '../crossover/way-read.ts';
import { demoHighWay, demoLowWay, demoWoofer } from '../crossover/parameters.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { bandOfWay } from '../crossover/way-response.ts';
import { commonBand } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Way } from '../values/way.ts';
import {
  currentVolts,
  heatVolts,
  levelsFor,
  portVolts,
  radiatorVolts,
  travelVolts,
  voltageVolts,
} from './limit-volts.ts';

const way = { record: 'way', summary: 'driver with its filter' } as const;
const heard = {
  record: 'curve',
  optional: true,
  summary:
    'level at 1 m for 2.83 V that is told, such as that of the whole loudspeaker; of the way itself when left out',
} as const;
const returns = { record: 'curve', of: 'level', summary: 'largest level of a sine at 1 m, rms' } as const;

/** The level at which a limit is reached, where both the way and what is heard of it hold. */
function limited(
  title: string,
  given: { readonly way: Way; readonly heard: Curve | undefined },
  volts: Float64Array | Problem,
): Curve | Problem {
  if (volts instanceof Problem) return volts;
  const level = given.heard ?? (wayLevel.compute({ way: given.way }, { quantity: 'ratio' }) as Curve);
  if (level.quantity !== 'level')
    return new Problem(say`“${level.title}” is not a level; give the level for 2.83 V in dB.`, 'heard');
  const band = commonBand([level, { ...level, ...bandOfWay(given.way) }]);
  if (band instanceof Problem) return new Problem(band.message, 'heard');
  const name = `${title} of ${given.way.name}`;
  return { kind: 'curve', title: name, quantity: 'level', y: levelsFor(level, volts), ...band };
}

export const limitTravel = define({
  name: 'LIMIT.TRAVEL',
  summary: 'The level at which the cone of a way reaches its travel, through its filter.',
  parameters: {
    way,
    share: {
      quantity: 'ratio',
      min: 0.01,
      max: 4,
      default: 1,
      typical: [0.5, 1.2],
      summary: 'share of Xmax that is used',
    },
    heard,
  },
  returns,
  source: { source: 'small1973vented', at: 'cone displacement function, through the ladder on the real impedance' },
  example: { formula: `=LIMIT.TRAVEL(${demoLowWay})`, gives: { quantity: 'level' } },
  compute: (given): Curve | Problem => limited('Travel', given, travelVolts(given.way, given.share)),
});

export const limitHeat = define({
  name: 'LIMIT.HEAT',
  summary: 'The level at which the voice coil of a way reaches its thermal power, through its filter.',
  parameters: {
    way,
    power: {
      quantity: 'power',
      min: 1e-3,
      max: 1e5,
      optional: true,
      summary: 'power the coil can take for long; that of the driver when left out',
    },
    heard,
  },
  returns,
  source: { source: 'own', at: 'square of the current through the coil times Re' },
  example: { formula: `=LIMIT.HEAT(${demoLowWay}, "70 W")`, gives: { quantity: 'level' } },
  remarks:
    'For a steady sine. Music with a crest of 12 dB may peak about 9 dB above it. The loss of the hot coil itself is not in it.',
  compute: (given): Curve | Problem => limited('Heat', given, heatVolts(given.way, given.power)),
});

export const limitPort = define({
  name: 'LIMIT.PORT',
  summary: 'The level at which the air in the port of a vented box becomes too fast.',
  parameters: {
    way,
    portArea: { ...usual.area, typical: [5e-4, 0.1], summary: 'total area of the ports' },
    speed: {
      quantity: 'speed',
      min: 0.1,
      max: 340,
      default: 17,
      typical: [10, 34],
      summary: 'peak speed that is allowed',
    },
    heard,
  },
  returns,
  source: { source: 'practice', at: '5 % of the speed of sound, 17 m/s, stays quiet; 10 %, 34 m/s, chuffs' },
  example: {
    formula:
      '=LIMIT.PORT(WAY.OF(VENTED.BOX(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm"), "22.3 L", "39.6 Hz")), "36.3 cm2")',
    gives: { quantity: 'level' },
  },
  compute: (given): Curve | Problem => limited('Port speed', given, portVolts(given.way, given.portArea, given.speed)),
});

export const limitRadiator = define({
  name: 'LIMIT.RADIATOR',
  summary: 'The level at which the passive radiator of a box reaches its travel.',
  parameters: {
    way,
    share: {
      quantity: 'ratio',
      min: 0.01,
      max: 4,
      default: 1,
      typical: [0.5, 1.2],
      summary: 'share of its travel that is used',
    },
    heard,
  },
  returns,
  source: { source: 'small1974radiator', at: 'passive-radiator displacement function' },
  example: {
    formula: `=LIMIT.RADIATOR(WAY.OF(RADIATOR.BOX(${demoWoofer}, "20 L", "210 cm2", "120 g", "0.9 mm/N", "1.5 kg/s", 1, "10 mm")))`,
    gives: { quantity: 'level' },
  },
  compute: (given): Curve | Problem => limited('Radiator travel', given, radiatorVolts(given.way, given.share)),
});

export const limitVoltage = define({
  name: 'LIMIT.VOLTAGE',
  summary: 'The level at which the amplifier of a way clips.',
  parameters: {
    way,
    clip: { ...usual.volts, typical: [5, 100], summary: 'largest sine of the amplifier, V rms' },
    heard,
  },
  returns,
  source: { source: 'own', at: 'level for 2.83 V, raised to the clipping voltage' },
  example: { formula: `=LIMIT.VOLTAGE(${demoLowWay}, "20 V")`, gives: { quantity: 'level' } },
  remarks: 'LEVEL.CLIP_VOLTS gives the voltage for a rated power. Active filter and gain of the way count.',
  compute: (given): Curve | Problem => limited('Amplifier voltage', given, voltageVolts(given.way, given.clip)),
});

export const limitCurrent = define({
  name: 'LIMIT.CURRENT',
  summary: 'The level at which the amplifier of a way reaches its largest current.',
  parameters: {
    way,
    peak: { quantity: 'current', min: 1e-3, max: 1e4, typical: [2, 50], summary: 'peak current of the amplifier' },
    load: { record: 'curve', optional: true, summary: 'what the amplifier drives; the way alone when left out' },
    heard,
  },
  returns,
  source: { source: 'own', at: 'Ohm’s law on the impedance that the amplifier sees' },
  example: { formula: `=LIMIT.CURRENT(${demoLowWay}, "5 A")`, gives: { quantity: 'level' } },
  remarks: 'For a passive loudspeaker give SYSTEM.IMPEDANCE of all its ways as the load.',
  compute: (given): Curve | Problem => {
    const { load } = given;
    if (load !== undefined && load.quantity !== 'resistance')
      return new Problem(say`“${load.title}” is not an impedance; give a curve in ohms.`, 'load');
    return limited('Amplifier current', given, currentVolts(given.way, given.peak, load));
  },
});

/** The other way of the same loudspeaker, for examples. */
export const demoLimits = `LIMIT.TRAVEL(${demoLowWay}), LIMIT.VOLTAGE(${demoLowWay}, "20 V"), LIMIT.TRAVEL(${demoHighWay})`;
