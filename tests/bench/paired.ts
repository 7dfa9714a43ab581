/** Two ways to do the same, timed in turns in one process: whatever else the machine does hits both. */
export interface Pair {
  readonly name: string;
  readonly ours: () => unknown;
  readonly base: () => unknown;
}

const WARM = 5;
const ROUNDS = 31;

/** Prints the median of the ratios ours/base, its quartiles, and the median time of ours. */
export async function paired({ name, ours, base }: Pair): Promise<void> {
  for (let round = 0; round < WARM; round++) {
    await ours();
    await base();
  }
  const ratios: number[] = [];
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const [first, second] = round % 2 === 0 ? [ours, base] : [base, ours];
    const a = await timed(first);
    const b = await timed(second);
    const [own, other] = round % 2 === 0 ? [a, b] : [b, a];
    ratios.push(own / other);
    times.push(own);
  }
  const [low, middle, high] = [0.25, 0.5, 0.75].map((part) => quantile(ratios, part).toFixed(2));
  console.log(`${name}: ${middle} (${low} to ${high}), ${quantile(times, 0.5).toFixed(3)} ms`);
}

async function timed(run: () => unknown): Promise<number> {
  const started = performance.now();
  await run();
  return performance.now() - started;
}

function quantile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.round(part * (sorted.length - 1))] ?? Number.NaN;
}
