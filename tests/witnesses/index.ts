import { cabinetWitnesses } from './cabinet.ts';
import type { Witness } from './witness.ts';

/** Every number from outside that is held by a formula alone. */
export const witnesses: readonly Witness[] = [...cabinetWitnesses];
