import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';

const BAND = [20, 20_000] as const;
/** Every sixth point of the grid is eight an octave: enough for a picture the width of a cell. */
const STEP = 6;

/** The path of a curve in a field of the given size, 20 Hz to 20 kHz; levels show at most 48 dB below their top. */
export function sparkPath({ y, quantity }: Curve, width: number, height: number): string {
  const points: [number, number][] = [];
  let low = Infinity;
  let high = -Infinity;
  for (let index = 0; index < y.length; index += STEP) {
    const frequency = frequencies[index] ?? 0;
    const value = y[index] ?? Number.NaN;
    if (frequency < BAND[0] || frequency > BAND[1] || !Number.isFinite(value)) continue;
    points.push([Math.log(frequency / BAND[0]) / Math.log(BAND[1] / BAND[0]), value]);
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  if (quantity === 'level') low = Math.max(low, high - 48);
  const span = high - low || 1;
  return points
    .map(([x, value], index) => {
      const share = (Math.max(value, low) - low) / span;
      return `${index === 0 ? 'M' : 'L'}${(x * width).toFixed(1)} ${(height - 1 - share * (height - 2)).toFixed(1)}`;
    })
    .join('');
}
