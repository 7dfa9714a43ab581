import type { AnyFunction } from '../define.ts';
import { pairByRules } from './by-rules.ts';
import { rankBest, rankRegret, rankTable } from './rank.ts';
import { ruleRounding } from './rounding.ts';
import { ruleBand, ruleBoxByQ, ruleBoxByRatio, ruleChamber, rulePad } from './rules-of-team.ts';
import {
  ruleBreakup,
  ruleDirectivity,
  ruleNarrowing,
  ruleNull,
  ruleOverlap,
  ruleResonance,
  ruleSpacing,
  ruleTravel,
} from './rules.ts';
import { subsCount, subsLevel, subsRelief } from './subs.ts';
import { teamMainsVerdict, teamVerdict } from './team.ts';
import { pairHandoverVerdict, pairVerdict } from './verdict.ts';
import { overlapAbove, overlapBelow, pairCentre, pairHigh, pairLow, pairOctaves, pairWindow } from './window.ts';

export const pairingFunctions: readonly AnyFunction[] = [
  pairWindow,
  pairByRules,
  pairLow,
  pairHigh,
  pairCentre,
  pairOctaves,
  pairVerdict,
  pairHandoverVerdict,
  overlapBelow,
  overlapAbove,
  ruleResonance,
  ruleTravel,
  ruleNarrowing,
  ruleDirectivity,
  ruleBreakup,
  ruleSpacing,
  ruleNull,
  ruleOverlap,
  ruleRounding,
  rulePad,
  ruleBand,
  ruleChamber,
  ruleBoxByRatio,
  ruleBoxByQ,
  teamVerdict,
  teamMainsVerdict,
  subsLevel,
  subsCount,
  subsRelief,
  rankRegret,
  rankBest,
  rankTable,
];
