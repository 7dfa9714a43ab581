import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Numbers of the standard normal distribution; the same seed gives the same ones. Box and Muller, Ann. Math. Stat. 29 (1958). */
export function normalNumbers(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniformFloat64(generator)));
    const angle = 2 * Math.PI * uniformFloat64(generator);
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

/** Numbers evenly spread from −1 to 1; the same seed gives the same ones. */
export function evenNumbers(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  return () => 2 * uniformFloat64(generator) - 1;
}
