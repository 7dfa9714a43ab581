import { standardVolts } from '../air.ts';
import { driveOf } from '../crossover/way-response.ts';
import { inputImpedance } from '../crossover/ladder.ts';
import { travelPerVoltOf } from '../crossover/way-read.ts';
import { portSpeedCurve, radiatorTravelCurve } from '../enclosure/port-curves.ts';
import type { Box } from '../values/box.ts';
import type { Curve } from '../values/curve.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Way } from '../values/way.ts';

/** Volts rms at the terminals of the loudspeaker, one per point of the grid. */
type Volts = Float64Array;

const unknown = (way: Way, what: string): Problem =>
  new Problem(say`“${way.name}” has no ${what}; add it to the data of its driver, or give it here.`, 'way');

const driveSize = (way: Way): Float64Array => {
  const { re, im } = driveOf(way);
  return re.map((real, index) => Math.hypot(real, im[index]!));
};

/** Where the cone reaches a share of its one-way travel. */
export function travelVolts(way: Way, share: number): Volts | Problem {
  const xmax = way.driver?.xmax;
  if (xmax === undefined) return unknown(way, 'travel Xmax');
  const each = travelPerVoltOf(way);
  return each instanceof Problem ? each : each.map((travel) => (share * xmax) / travel);
}

/** Where the current through the voice coil, squared and times its resistance, reaches a power. */
export function heatVolts(way: Way, given: number | undefined): Volts | Problem {
  const power = given ?? way.driver?.pe;
  if (power === undefined) return unknown(way, 'thermal power limit');
  const re = way.driver?.re ?? Math.min(...way.impedance.y);
  const drive = driveSize(way);
  const current = Math.sqrt(power / re);
  return drive.map((size, index) => (current * way.impedance.y[index]!) / size);
}

/** What moves in a box for 1 V at its driver, as volts at the terminals at which it reaches a limit. */
function boxVolts(way: Way, limit: number, of: (box: Box) => Float64Array | Problem): Volts | Problem {
  const { box } = way;
  if (box === undefined)
    return new Problem(say`“${way.name}” is not made of a box; give a way made of a box with WAY.OF.`, 'way');
  const each = of(box);
  if (each instanceof Problem) return new Problem(each.message, 'way');
  const drive = driveSize(way);
  return drive.map((size, index) => limit / (each[index]! * size));
}

/** Where the air in the port of its box reaches a speed. */
export const portVolts = (way: Way, portArea: number, speed: number): Volts | Problem =>
  boxVolts(way, speed, (box) => portSpeedCurve(box, portArea, 1));

/** Where the passive radiator of its box reaches a share of its one-way travel. */
export function radiatorVolts(way: Way, share: number): Volts | Problem {
  const radiator = way.box?.radiator;
  if (radiator !== undefined && radiator.xmax === undefined)
    return new Problem(say`The passive radiator has no one-way travel; give it where the box is made.`, 'way');
  return boxVolts(way, share * (radiator?.xmax ?? 1), (box) => radiatorTravelCurve(box, 1));
}

/** Volts of the way's own amplifier over volts at the terminals: 1 without active filter and gain. */
function amplified(way: Way): Float64Array {
  const gain = 10 ** (way.gain / 20);
  return way.impedance.y.map((_, index) => gain * 10 ** ((way.active?.y[index] ?? 0) / 20));
}

/** Where the amplifier reaches its clipping voltage. */
export const voltageVolts = (way: Way, clip: number): Volts => amplified(way).map((gain) => clip / gain);

/** Where the amplifier reaches its peak current into what it drives. */
export const currentVolts = (way: Way, peak: number, load: Curve | undefined): Volts => {
  const { y } = load ?? inputImpedance(way.network, way.impedance);
  return amplified(way).map((gain, index) => (peak * y[index]!) / (Math.SQRT2 * gain));
};

/** Level for 2.83 V raised to volts, kept within what numbers of decibels can mean. */
export const levelsFor = (heard: Curve, volts: Volts): Float64Array =>
  heard.y.map((level, index) => {
    const raised = level + 20 * Math.log10(volts[index]! / standardVolts);
    return Math.min(300, Math.max(-300, Number.isNaN(raised) ? 300 : raised));
  });
