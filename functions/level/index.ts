import type { AnyFunction } from '../define.ts';
import { crestPower, crestTrebleShare, heatLoss, heatRise } from './crest.ts';
import { hearingDayLevel, hearingDose, hearingLegalTime, hearingTime, hearingVerdict, hearingWeek } from './hearing.ts';
import { levelLedger } from './ledger.ts';
import { limitAt, limitLowest, limitMap } from './limit-map.ts';
import { limitCurrent, limitHeat, limitPort, limitRadiator, limitTravel, limitVoltage } from './limit.ts';
import { levelByPower, levelByTravel, levelSum, levelSumAtAngle, levelSumInStep, levelToWatt } from './rated.ts';
import { levelFromRatio, levelPowerOf, levelRatio } from './ratio.ts';
import { levelAtSeat, levelClipVolts, levelDistanceLoss, levelHeadroom, levelVolts, levelWatts } from './seat.ts';
import { trebleFloor, trebleTravel, trebleTravelAt } from './treble.ts';

export const levelFunctions: readonly AnyFunction[] = [
  levelRatio,
  levelFromRatio,
  levelPowerOf,
  levelSum,
  levelSumInStep,
  levelSumAtAngle,
  levelToWatt,
  levelByPower,
  levelByTravel,
  levelDistanceLoss,
  levelAtSeat,
  levelWatts,
  levelVolts,
  levelHeadroom,
  levelClipVolts,
  levelLedger,
  limitTravel,
  limitHeat,
  limitPort,
  limitRadiator,
  limitVoltage,
  limitCurrent,
  limitLowest,
  limitAt,
  limitMap,
  crestPower,
  crestTrebleShare,
  heatRise,
  heatLoss,
  hearingTime,
  hearingDose,
  hearingDayLevel,
  hearingWeek,
  hearingLegalTime,
  hearingVerdict,
  trebleTravel,
  trebleFloor,
  trebleTravelAt,
];
