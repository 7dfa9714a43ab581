type Arrays = {
  readonly 2: readonly [Float64Array, Float64Array];
  readonly 4: readonly [Float64Array, Float64Array, Float64Array, Float64Array];
};

/** Two or four arrays of zeros in one piece of memory: cheaper to get and to give back than as many pieces. */
export function zeros<const N extends keyof Arrays>(howMany: N, length: number): Arrays[N] {
  const whole = new Float64Array(howMany * length);
  const part = (index: number): Float64Array => whole.subarray(index * length, (index + 1) * length);
  return Array.from({ length: howMany }, (_, index) => part(index)) as unknown as Arrays[N];
}
