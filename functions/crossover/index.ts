import type { AnyFunction } from '../define.ts';
import { filterCapacitor, filterCoil, filterCorner, filterQ } from './filter-parts.ts';
import { filterSections } from './filter-sections.ts';
import { filterSlope } from './filter-slope.ts';
import { systemHandover, systemNullDepth, systemPhaseGap, systemReversed } from './handover.ts';
import { loadResistor } from './load-resistor.ts';
import { networkChange, networkRound } from './network-change.ts';
import { networkCorner, networkQ } from './network-corner.ts';
import { networkBand, networkHigh, networkLow } from './network-filters.ts';
import { networkHeat } from './network-heat.ts';
import { networkLeg, networkOf } from './network-of.ts';
import {
  networkFlatten,
  networkJoin,
  networkNotch,
  networkPad,
  networkShelf,
  networkTrap,
  networkWire,
} from './network-pieces.ts';
import {
  networkCapacitor,
  networkCoil,
  networkCoilResistance,
  networkImpedance,
  networkLoadEffect,
  networkResistor,
  networkResponse,
} from './network-read.ts';
import { systemDelay, systemImpedance, systemLevel, systemOffAxis } from './system.ts';
import { wayDrive, wayImpedance, wayLevel, wayOffAxis, wayTravel } from './way-read.ts';
import { wayActive, wayMeasured, wayOf } from './way.ts';

export const crossoverFunctions: readonly AnyFunction[] = [
  filterSlope,
  filterSections,
  filterCoil,
  filterCapacitor,
  filterCorner,
  filterQ,
  networkLow,
  networkHigh,
  networkBand,
  networkWire,
  networkPad,
  networkFlatten,
  networkTrap,
  networkNotch,
  networkShelf,
  networkJoin,
  networkLeg,
  networkOf,
  networkCoil,
  networkCoilResistance,
  networkCapacitor,
  networkResistor,
  networkChange,
  networkRound,
  networkCorner,
  networkQ,
  networkResponse,
  networkImpedance,
  networkLoadEffect,
  networkHeat,
  loadResistor,
  wayOf,
  wayMeasured,
  wayActive,
  wayLevel,
  wayOffAxis,
  wayDrive,
  wayImpedance,
  wayTravel,
  systemLevel,
  systemOffAxis,
  systemImpedance,
  systemDelay,
  systemHandover,
  systemReversed,
  systemNullDepth,
  systemPhaseGap,
];
