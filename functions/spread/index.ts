import type { AnyFunction } from '../define.ts';
import { spreadOdds, spreadPercentile } from './read.ts';
import { spreadNetwork } from './spread-network.ts';
import {
  spreadCauses,
  spreadDriver,
  spreadFall,
  spreadLevel,
  spreadPeak,
  spreadQtc,
  spreadResonance,
} from './spread-box.ts';

export const spreadFunctions: readonly AnyFunction[] = [
  spreadDriver,
  spreadFall,
  spreadResonance,
  spreadQtc,
  spreadPeak,
  spreadLevel,
  spreadNetwork,
  spreadPercentile,
  spreadOdds,
  spreadCauses,
];
