import type { Place } from '../../engine/types.ts';
import type { Runner, DocumentModel } from '../model/document-model.ts';
import type { Input } from '../subject/types.ts';

/** What one per cent more of each input does to each number: half the difference of one per cent more and one less, so that
 *  bends do not count; a one-sided difference where the other side has no result; zero where it is no more than rounding. NaN
 *  where there is none. An input of zero has no per cent: NaN too. Of a level it is one per cent of the pressure that counts. */
export async function effectsPerPercent(
  model: DocumentModel,
  inputs: readonly Input[],
  results: readonly Place[],
): Promise<readonly (readonly number[])[]> {
  const all: number[][] = [];
  const runner = await model.runner(inputs, results);
  const present = inputs.map((input) => input.present);
  const now = await numbersAt(runner, present);
  for (const [index, input] of inputs.entries()) {
    const value = input.present;
    const step = typeof value === 'number' ? stepOf(input, value) : 0;
    if (typeof value !== 'number' || step === 0) {
      all.push(results.map(() => Number.NaN));
      continue;
    }
    const up = await numbersAt(runner, present.with(index, value + step));
    const down = await numbersAt(runner, present.with(index, value - step));
    all.push(results.map((_, each) => slope(down[each], now[each], up[each])));
  }
  return all;
}

/** What one per cent more of a pressure adds to its level, in decibels. */
export const LEVEL_STEP = 20 * Math.log10(1.01);

const stepOf = ({ quantity }: Input, value: number): number => (quantity === 'level' ? LEVEL_STEP : value / 100);

/** A difference of two numbers smaller than this share of them is what rounding leaves behind: some thousand steps of a double. */
const ROUNDING = 1e-12;

function slope(down = Number.NaN, now = Number.NaN, up = Number.NaN): number {
  const both = difference(up, down) / 2;
  if (!Number.isNaN(both)) return both;
  return Number.isNaN(up - now) ? difference(now, down) : difference(up, now);
}

const difference = (a: number, b: number): number =>
  Math.abs(a - b) <= ROUNDING * Math.max(Math.abs(a), Math.abs(b)) ? 0 : a - b;

async function numbersAt(runner: Runner, values: readonly (number | string)[]): Promise<number[]> {
  const cells = await runner.at(values);
  return cells.map((value) => (value.kind === 'number' ? value.value : Number.NaN));
}
