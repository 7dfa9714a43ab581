import { standardVolts } from '../air.ts';

export type Basis = '2.83 V' | '1 W' | '1 W in Re';

/** Reads the printed basis of a level: "2.83 V", "2.83 V / 1 m", "1 W", "1W/1m", "1 W in Re"; of a number alone it is clear which. */
export function basisOf(text: string): Basis | undefined {
  const plain = text.toLowerCase().replaceAll(',', '.').replaceAll(/\s+/g, ' ').trim();
  if (/\b2\.8(?:[23]\d*)? ?v|^2\.8[23]\d*$/.test(plain)) return '2.83 V';
  if (/\b1 ?w\b.*\bre\b/.test(plain)) return '1 W in Re';
  return /\b1 ?w\b|^1$/.test(plain) ? '1 W' : undefined;
}

/** A level for 1 W into some ohms, at 2.83 V instead: 10 lg(2.83²/R) more. */
export const fromWatt = (level: number, ohms: number): number => level + 10 * Math.log10(standardVolts ** 2 / ohms);
