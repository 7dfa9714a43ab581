import { bench, describe } from 'vitest';
import type { AnyFunction } from '../../functions/define.ts';
import { completeDriver } from '../../functions/driver/complete-driver.ts';
import { catalogue } from '../../functions/index.ts';
import { airDensity, soundSpeed } from '../../functions/air.ts';
import type { Box } from '../../functions/values/box.ts';
import { frequencies } from '../../functions/values/grid.ts';
import { paired } from './paired.ts';

const once = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 } as const;
const MANY = 100;

const driver = completeDriver('', { fs: 38, qms: 4.8, qes: 0.42, vas: 0.02852, re: 5.8, sd: 0.0132, le: 0.00055 });
const box: Box = {
  kind: 'box',
  style: 'vented',
  driver,
  volume: 0.0223,
  tuning: 39.6,
  fill: 1,
  seriesResistance: 0,
  leakageQ: 7,
  absorptionQ: Infinity,
  portQ: Infinity,
};
const area = 0.00363;
const volts = 20;

/** Response with phase, travel, impedance with phase and port speed in one loop, as one would write it by hand. */
function byHand({ volume, tuning = 0, leakageQ }: Box): readonly Float64Array[] {
  const { fs = 0, qms = 1, qes = 1, vas = 0, re = 1, le = 0, sd = 1 } = driver;
  const count = frequencies.length;
  const [level, angle, travel, ohms, phase, speed] = Array.from({ length: 6 }, () => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const ratio = vas / volume;
  const compliance = vas / (airDensity * soundSpeed ** 2 * sd ** 2);
  const bl = Math.sqrt(re / (qes * 2 * Math.PI * fs * compliance));
  const scale = (Math.SQRT2 * volts * bl * compliance) / re;
  for (let index = 0; index < count; index++) {
    const f = frequencies[index] ?? 0;
    const s = f / fs;
    const p = f / tuning;
    const vent = -1 / (p * p);
    const sumRe = 1 + vent;
    const sumIm = -1 / (p * leakageQ);
    const sum = sumRe * sumRe + sumIm * sumIm;
    const fRe = sumRe / sum;
    const fIm = -sumIm / sum;
    const mRe = 1 - s * s + ratio * fRe;
    const mIm = s / qms + ratio * fIm;
    // Response: no coil inductance.
    let dRe = mRe;
    let dIm = mIm + s / qes;
    let size = dRe * dRe + dIm * dIm;
    const gRe = (-s * s * (fRe * dRe + fIm * dIm)) / size;
    const gIm = (-s * s * (fIm * dRe - fRe * dIm)) / size;
    level[index] = 10 * Math.log10(gRe * gRe + gIm * gIm);
    angle[index] = Math.atan2(gIm, gRe);
    const x = (2 * Math.PI * f * le) / re;
    dRe = mRe - mIm * x;
    dIm = mIm + mRe * x + s / qes;
    size = Math.sqrt(dRe * dRe + dIm * dIm);
    travel[index] = scale / size;
    speed[index] = (((2 * Math.PI * scale * sd * f) / size) * -vent * Math.sqrt(fRe * fRe + fIm * fIm)) / area;
    const motional = ((re / qes) * s) / (mRe * mRe + mIm * mIm);
    const zRe = re + motional * mIm;
    const zIm = 2 * Math.PI * f * le + motional * mRe;
    ohms[index] = Math.sqrt(zRe * zRe + zIm * zIm);
    phase[index] = Math.atan2(zIm, zRe);
  }
  return [level, angle, travel, ohms, phase, speed];
}

const wanted = ['BOX.RESPONSE', 'BOX.TRAVEL', 'BOX.IMPEDANCE', 'BOX.PORT_SPEED'];
const functions = wanted.map((name) => catalogue.find((each) => each.name === name) as AnyFunction);
const evaluate = (of: Box): readonly { readonly y: Float64Array }[] =>
  functions.map(
    (each) => each.compute({ box: of, volts, portArea: area }, { quantity: 'ratio' }) as { readonly y: Float64Array },
  );

describe('one vented box: response, travel, impedance and port speed over 577 points', () => {
  bench(
    'by the catalogue, as a ratio to a loop written by hand',
    async () => {
      const [level, , travel, ohms, , speed] = byHand(box);
      const ours = evaluate(box);
      [level, travel, ohms, speed].forEach((theirs, index) => {
        const apart =
          theirs?.reduce((most, y, at) => Math.max(most, Math.abs(y - (ours[index]?.y[at] ?? NaN))), 0) ?? NaN;
        console.log(`${String(wanted[index])} furthest apart: ${apart.toExponential(1)}`);
      });
      let litres = 22;
      const another = (): Box => ({ ...box, volume: (litres += 1e-6) / 1000 });
      await paired({
        name: `${String(MANY)} boxes`,
        ours: () => {
          for (let count = 0; count < MANY; count++) evaluate(another());
        },
        base: () => {
          for (let count = 0; count < MANY; count++) byHand(another());
        },
      });
    },
    once,
  );
});
