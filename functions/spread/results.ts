import type { QuantityName } from '../quantities.ts';
import { curveFall, curvePeak } from '../curve/read.ts';
import { boxResponse } from '../enclosure/box-curves.ts';
import { flatLevel } from '../enclosure/model.ts';
import { boxQtc, boxResonance } from '../enclosure/box-numbers.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';

const context = { quantity: 'ratio' } as const;

/** The frequency below which the response of a box has fallen by some decibels. */
export const fallOf =
  (decibels: number) =>
  (box: Box): number | Problem => {
    const curve = boxResponse.compute({ box }, context);
    return curve instanceof Problem ? curve : curveFall.compute({ curve, fall: decibels }, context);
  };

/** What can be asked of a box whose causes spread. */
export const results = {
  f3: { quantity: 'frequency', words: 'F3', of: fallOf(3) },
  f10: { quantity: 'frequency', words: 'F10', of: fallOf(10) },
  resonance: { quantity: 'frequency', words: 'resonance', of: (box) => boxResonance.compute({ box }, context) },
  qtc: { quantity: 'ratio', words: 'Qtc', of: (box) => boxQtc.compute({ box }, context) },
  peak: {
    quantity: 'level',
    words: 'peak of the response',
    of: (box) => {
      const curve = boxResponse.compute({ box }, context);
      return curve instanceof Problem ? curve : curvePeak.compute({ curve, from: 10, to: 20000 }, context);
    },
  },
  // The level for 2.83 V at the amplifier.
  level: { quantity: 'level', words: 'level for 2.83 V', of: (box) => flatLevel(box) + 20 * Math.log10(2.83) },
} as const satisfies Record<string, { quantity: QuantityName; words: string; of: (box: Box) => number | Problem }>;

export interface Asked {
  readonly quantity: QuantityName;
  readonly words: string;
  readonly of: (box: Box) => number | Problem;
}

export type ResultName = keyof typeof results;
export const resultNames = Object.keys(results) as ResultName[];
