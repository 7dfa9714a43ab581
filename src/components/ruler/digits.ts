import type { QuantityName } from '../../../functions/quantities.ts';
import type { UnitSystem } from '../../document/types.ts';
import { show } from '../../units/show.ts';
import { unitNamed } from '../../units/table.ts';

/** Numbers of one cell in the unit it is shown in. */
export interface Digits {
  readonly symbol: string;
  /** They count something, so between two of them there is nothing. */
  readonly whole: boolean;
  /** SI to the unit shown, and back. */
  of(si: number): number;
  si(shown: number): number;
  /** Grouped for reading: `2 150`. */
  number(shown: number, decimals: number): string;
  /** Decimals that a value needs, five digits at most. */
  decimals(shown: number): number;
  /** As one types it: `2150 Hz`. */
  typed(shown: number): string;
}

export function digitsOf(quantity: QuantityName, unit: string, value: number, system: UnitSystem): Digits {
  const symbol = show(value, { quantity, system, ...(unit === '' ? {} : { unit }) }).unit;
  const { si, offset = 0, whole = false } = unitNamed(symbol) ?? { si: 1 };
  const plain = (shown: number): string => `${Number(shown.toPrecision(5))}`;
  return {
    symbol,
    whole,
    of: (amount) => Number(((amount - offset) / si).toPrecision(12)),
    si: (shown) => Number((shown * si + offset).toPrecision(12)),
    number: (shown, decimals) => grouped(shown.toFixed(decimals)),
    decimals: (shown) => plain(shown).split('.')[1]?.length ?? 0,
    typed: (shown) => `${plain(shown)} ${symbol}`.trim(),
  };
}

/** Thin spaces from 1 000 on, and a real minus. */
function grouped(text: string): string {
  const [whole = '', fraction] = text.replace('-', '\u2212').split('.');
  const spaced = whole.replaceAll(/\B(?=(\d{3})+(?!\d))/g, '\u2009');
  return fraction === undefined ? spaced : `${spaced}.${fraction}`;
}
