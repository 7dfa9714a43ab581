import type { AnyFunction } from '../define.ts';
import { boxDelay, boxImpedance, boxLevel, boxPortSpeed, boxResponse, boxTravel } from './box-curves.ts';
import { boxHighPass, boxQtc, boxResonance, boxSeriesLoss } from './box-numbers.ts';
import { closedBox, closedQtc, closedResonance, closedVolume, closedVolumeFor } from './closed.ts';
import { portArea, portClearance, portLargest, portLength, portResonance, portSlotArea, portVolume } from './port.ts';
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
  ventedBox,
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
  boxDelay,
  portArea,
  portSlotArea,
  portLength,
  portResonance,
  portVolume,
  portClearance,
  portLargest,
] as unknown as readonly AnyFunction[];
