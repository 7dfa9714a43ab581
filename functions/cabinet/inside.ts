import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';

export interface Outside {
  readonly height: number;
  readonly width: number;
  readonly depth: number;
  readonly thickness: number;
}

/** The hollow of a cabinet, or which of its sizes the panels use up. */
export function insideOf(outside: Outside): { height: number; width: number; depth: number } | Problem {
  const walls = 2 * outside.thickness;
  for (const side of ['height', 'width', 'depth'] as const)
    if (outside[side] <= walls)
      return new Problem(
        say`The outside ${side} of ${measured(outside[side], 'length')} leaves no room between two panels of ${measured(outside.thickness, 'length')}. Make it larger than ${measured(walls, 'length')}.`,
        side,
      );
  return { height: outside.height - walls, width: outside.width - walls, depth: outside.depth - walls };
}
