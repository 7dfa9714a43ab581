import type { Curve } from './curve.ts';

/** A curve without phase whose values are worked out when they are first read. */
export function curveWhenRead(shown: Omit<Curve, 'kind' | 'y' | 'phase'>, solve: () => Float64Array): Curve {
  let known: Float64Array | undefined;
  return {
    kind: 'curve',
    ...shown,
    get y() {
      return (known ??= solve());
    },
  };
}
