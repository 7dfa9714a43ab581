import type { AnyFunction } from '../define.ts';
import { ventedAligned, ventedAlignedQts, ventedAlignedSeries } from './aligned.ts';
import { baffleBox } from './baffle.ts';
import { bandpassBox } from './bandpass.ts';
import { boxDelay, boxImpedance, boxLevel, boxResponse, boxTravel } from './box-curves.ts';
import { boxCutoff, boxCutoffHigh, boxPeak, boxPeakAt, boxRipple } from './box-figures.ts';
import { boxHighPass, boxQtc, boxResonance, boxSeriesLoss } from './box-numbers.ts';
import { closedBox, closedQtc, closedResonance, closedVolume, closedVolumeFor } from './closed.ts';
import { boxPortSpeed, boxRadiatorTravel } from './port-curves.ts';
import { portArea, portClearance, portLargest, portLength, portResonance, portSlotArea, portVolume } from './port.ts';
import { radiatorBox, radiatorMass, radiatorNotch, radiatorTuning } from './radiator.ts';
import { closedCoilBox, ventedCoilBox } from './coil-box.ts';
import { portSearch } from './port-search.ts';
import { portSlotSearch } from './port-slot-search.ts';
import {
  portDiameterOf,
  portElbow,
  portFlaredLength,
  portLeastArea,
  portSlotLength,
  portSlotTuning,
  portTuning,
} from './port-tuning.ts';
import { boxOvershoot, boxRinging, boxStep } from './step.ts';
import { boxTravelLimit, boxTravelPower, boxTravelPowerAt, boxTravelVolts } from './travel-limit.ts';
import { ventedBox, ventedTuning, ventedVolume } from './vented.ts';

export const enclosureFunctions = [
  closedQtc,
  closedResonance,
  closedVolume,
  closedVolumeFor,
  closedBox,
  ventedVolume,
  ventedTuning,
  ventedAligned,
  ventedAlignedQts,
  ventedAlignedSeries,
  ventedBox,
  closedCoilBox,
  ventedCoilBox,
  radiatorMass,
  radiatorTuning,
  radiatorNotch,
  radiatorBox,
  bandpassBox,
  baffleBox,
  boxQtc,
  boxResonance,
  boxSeriesLoss,
  boxHighPass,
  boxResponse,
  boxLevel,
  boxTravel,
  boxTravelLimit,
  boxTravelVolts,
  boxTravelPower,
  boxTravelPowerAt,
  boxImpedance,
  boxPortSpeed,
  boxRadiatorTravel,
  boxDelay,
  boxCutoff,
  boxCutoffHigh,
  boxPeak,
  boxPeakAt,
  boxRipple,
  boxStep,
  boxOvershoot,
  boxRinging,
  portArea,
  portSlotArea,
  portLength,
  portResonance,
  portVolume,
  portClearance,
  portLargest,
  portTuning,
  portSlotLength,
  portSlotTuning,
  portFlaredLength,
  portElbow,
  portLeastArea,
  portDiameterOf,
  portSearch,
  portSlotSearch,
] as unknown as readonly AnyFunction[];
