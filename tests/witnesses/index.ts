import { aroundWitnesses } from './around.ts';
import { boxesWitnesses } from './boxes.ts';
import { cabinetWitnesses } from './cabinet.ts';
import { changedDriversWitnesses } from './changed-drivers.ts';
import { checkWitnesses } from './check.ts';
import { coilsWitnesses } from './coils.ts';
import { crossoverWitnesses } from './crossover.ts';
import { curveWitnesses } from './curve.ts';
import { cutListWitnesses } from './cut-list.ts';
import { disagreeingWitnesses } from './disagreeing.ts';
import { driverWitnesses } from './driver.ts';
import { edgesWitnesses } from './edges.ts';
import { enclosureWitnesses } from './enclosure.ts';
import { levelWitnesses } from './level.ts';
import { loadsWitnesses } from './loads.ts';
import { measureWitnesses } from './measure.ts';
import { padsWitnesses } from './pads.ts';
import { pairingWitnesses } from './pairing.ts';
import { phasesWitnesses } from './phases.ts';
import { portsWitnesses } from './ports.ts';
import { radiationWitnesses } from './radiation.ts';
import { rulesWitnesses } from './rules.ts';
import { spreadWitnesses } from './spread.ts';
import { tableWitnesses } from './table.ts';
import { toldWitnesses } from './told.ts';
import { waysWitnesses } from './ways.ts';
import type { Witness } from './witness.ts';

/** Every number from outside that is held by a formula alone. */
export const witnesses: readonly Witness[] = [
  ...aroundWitnesses,
  ...boxesWitnesses,
  ...cabinetWitnesses,
  ...changedDriversWitnesses,
  ...checkWitnesses,
  ...coilsWitnesses,
  ...crossoverWitnesses,
  ...curveWitnesses,
  ...cutListWitnesses,
  ...disagreeingWitnesses,
  ...driverWitnesses,
  ...edgesWitnesses,
  ...enclosureWitnesses,
  ...levelWitnesses,
  ...loadsWitnesses,
  ...measureWitnesses,
  ...padsWitnesses,
  ...pairingWitnesses,
  ...phasesWitnesses,
  ...portsWitnesses,
  ...radiationWitnesses,
  ...rulesWitnesses,
  ...spreadWitnesses,
  ...tableWitnesses,
  ...toldWitnesses,
  ...waysWitnesses,
];
