import type { AnyFunction } from '../define.ts';
import {
  coilChoices,
  coilLength,
  coilPrice,
  coilQuality,
  coilResistance,
  coilSide,
  coilTurns,
  coilWeight,
  coilWire,
} from './coil.ts';
import {
  flattenCapacitor,
  flattenNetwork,
  flattenResistor,
  trapCapacitor,
  trapCoil,
  trapNetwork,
  trapResistor,
} from './flatten.ts';
import { impedanceCoil, impedanceCoils, impedanceEmpirical, impedanceLossy } from './voice-coil.ts';
import { coilInductance, coilTurnsOn } from './winding.ts';
import { cableDamping, cableLoss, cableResistance, wireArea, wireDiameter, wireOhms } from './wire.ts';
import { loadCurrent, loadDissipation, loadPhase, loadPower, loadResistive, loadVolts } from './load-amplifier.ts';
import { loadNominal, loadPermitted, loadRating, loadVerdict } from './load-rating.ts';
import { loadShare, loadVoltage, loadWired } from './load-wired.ts';
import { loadMixed, loadWirings } from './load-wirings.ts';
import { loadHandover, loadLowest, loadLowestAt, loadParallel, loadSeries } from './load.ts';
import { padDrive, padHeat } from './pad-heat.ts';
import { padPairs, padPairsAt, padStandardSeries, padStandardShunt } from './pad-standard.ts';
import { padImpedance, padInput, padLoss, padResponse, padSeries, padShunt, padSingle } from './pad.ts';
import { standardAbove, standardBelow, standardNearest, standardPairs, standardTolerance } from './standard.ts';

export const electricalFunctions: readonly AnyFunction[] = [
  impedanceLossy,
  impedanceCoil,
  impedanceCoils,
  impedanceEmpirical,
  loadLowest,
  loadLowestAt,
  loadParallel,
  loadSeries,
  loadHandover,
  loadWired,
  loadVoltage,
  loadShare,
  loadWirings,
  loadMixed,
  loadVerdict,
  loadNominal,
  loadRating,
  loadPermitted,
  loadDissipation,
  loadResistive,
  loadPhase,
  loadPower,
  loadCurrent,
  loadVolts,
  padSeries,
  padShunt,
  padLoss,
  padInput,
  padSingle,
  padStandardSeries,
  padStandardShunt,
  padPairs,
  padPairsAt,
  padImpedance,
  padResponse,
  padDrive,
  padHeat,
  flattenResistor,
  flattenCapacitor,
  flattenNetwork,
  trapResistor,
  trapCoil,
  trapCapacitor,
  trapNetwork,
  coilResistance,
  coilTurns,
  coilSide,
  coilLength,
  coilWeight,
  coilPrice,
  coilWire,
  coilChoices,
  coilQuality,
  coilInductance,
  coilTurnsOn,
  wireDiameter,
  wireArea,
  wireOhms,
  cableResistance,
  cableLoss,
  cableDamping,
  standardNearest,
  standardBelow,
  standardAbove,
  standardPairs,
  standardTolerance,
];
