import type { AnyFunction } from './define.ts';
import { cabinetFunctions } from './cabinet/index.ts';
import { checkFunctions } from './check/index.ts';
import { crossoverFunctions } from './crossover/index.ts';
import { curveFunctions } from './curve/index.ts';
import { driverFunctions } from './driver/index.ts';
import { electricalFunctions } from './electrical/index.ts';
import { enclosureFunctions } from './enclosure/index.ts';
import { levelFunctions } from './level/index.ts';
import { measureFunctions } from './measure/index.ts';
import { pairingFunctions } from './pairing/index.ts';
import { radiationFunctions } from './radiation/index.ts';
import { tableFunctions } from './table/index.ts';
import { spreadFunctions } from './spread/index.ts';

/** Every sheet function, in the order of the function guide. */
export const catalogue: readonly AnyFunction[] = [
  ...driverFunctions,
  ...enclosureFunctions,
  ...radiationFunctions,
  ...electricalFunctions,
  ...crossoverFunctions,
  ...levelFunctions,
  ...pairingFunctions,
  ...cabinetFunctions,
  ...spreadFunctions,
  ...checkFunctions,
  ...measureFunctions,
  ...curveFunctions,
  ...tableFunctions,
];
