import type { AnyFunction } from '../define.ts';
import { basketShare, basketTable, basketTotal } from './basket.ts';
import { cabinetCutList, cabinetLayout, cabinetSheets } from './cut-list.ts';
import { panelBraced, panelMode } from './panel.ts';
import { braceVolume, cabinetClearance, cabinetDepthFor, cabinetHeightFor, cabinetNetVolume } from './volume.ts';
import { cabinetTipAngle, cabinetWeight } from './weight.ts';

export const cabinetFunctions = [
  cabinetNetVolume,
  cabinetDepthFor,
  cabinetHeightFor,
  braceVolume,
  cabinetClearance,
  cabinetCutList,
  cabinetSheets,
  cabinetLayout,
  panelMode,
  panelBraced,
  cabinetWeight,
  cabinetTipAngle,
  basketTotal,
  basketShare,
  basketTable,
] as const satisfies readonly AnyFunction[];
