import { cabinetWitnesses } from './cabinet.ts';
import { pairingWitnesses } from './pairing.ts';
import { radiationWitnesses } from './radiation.ts';
import type { Witness } from './witness.ts';

/** Every number from outside that is held by a formula alone. */
export const witnesses: readonly Witness[] = [...cabinetWitnesses, ...radiationWitnesses, ...pairingWitnesses];
