import type { RowWord } from './types.ts';
import type { Standing } from '../subject/types.ts';

/** What is said of a row by its narrower window, in octaves, by the rules and stretched. */
export const wordOf = (octaves: number, stretched: number, comfortable: number): RowWord =>
  octaves >= comfortable && octaves >= 0
    ? 'Comfortable'
    : octaves >= 0
      ? 'Tight'
      : stretched >= 0
        ? 'Stretch'
        : 'No shared window';

/** The same for a row whose levels are too far apart: at best a caution. */
export const wordApart = (word: RowWord): RowWord => (word === 'Comfortable' ? 'Levels apart' : word);

export const standingOf: Readonly<Record<RowWord, Standing>> = {
  Comfortable: 'good',
  Tight: 'caution',
  Stretch: 'caution',
  'Levels apart': 'caution',
  'No shared window': 'fail',
};
