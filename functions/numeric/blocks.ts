type Arrays = {
  readonly 2: readonly [Float64Array, Float64Array];
  readonly 6: readonly [...Arrays[2], ...Arrays[2], ...Arrays[2]];
};

/** Two or six arrays of zeros in one piece of memory: cheaper to get and to give back than as many pieces. */
export function zeros<const N extends keyof Arrays>(howMany: N, length: number): Arrays[N] {
  const { BYTES_PER_ELEMENT: bytes } = Float64Array;
  const whole = new ArrayBuffer(howMany * length * bytes);
  const part = (index: number): Float64Array => new Float64Array(whole, index * length * bytes, length);
  const pair = [part(0), part(1)];
  return (howMany === 2 ? pair : [...pair, part(2), part(3), part(4), part(5)]) as unknown as Arrays[N];
}
