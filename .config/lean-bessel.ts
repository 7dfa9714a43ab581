import type { Plugin } from 'vite';

/** Sine and cosine together, into two places of a list. */
export function assign(x: number, out: number[], stride: number, offset: number): void {
  out[offset] = Math.sin(x);
  out[offset + stride] = Math.cos(x);
}

/** Gives the Bessel function the browser's own sine and cosine: its package brings others, with thirty more packages. */
export function leanBessel(): Plugin {
  return {
    name: 'octavo:lean-bessel',
    apply: 'build',
    load: (id) =>
      id.endsWith('/@stdlib/math-base-special-sincos/lib/index.js') ? `export ${assign.toString()}` : undefined,
  };
}
