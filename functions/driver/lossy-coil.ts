import type { Driver } from '../values/driver.ts';

/** An inductance with a resistance across it, as iron near a coil makes it. */
export interface LossyCoil {
  readonly inductance: number;
  readonly across: number;
}

/** The lossy part of a driver's inductance where both of its values are known. */
export function lossyCoilOf({ le2, re2 }: Pick<Driver, 'le2' | 're2'>): LossyCoil | undefined {
  return le2 === undefined || re2 === undefined || le2 === 0 || re2 === 0
    ? undefined
    : { inductance: le2, across: re2 };
}
