// Stands in for src/units until it is there.
import type { QuantityName } from '../../../functions/quantities.ts';
import type { Sentence } from '../../../functions/values/say.ts';
import type { UnitSystem } from '../../document/types.ts';

const rows: Record<string, { unit: string; si: number }> = {
  frequency: { unit: 'Hz', si: 1 },
  level: { unit: 'dB', si: 1 },
  resistance: { unit: 'Ω', si: 1 },
  travel: { unit: 'mm', si: 1e-3 },
  length: { unit: 'mm', si: 1e-3 },
  speed: { unit: 'm/s', si: 1 },
  time: { unit: 'ms', si: 1e-3 },
  volume: { unit: 'L', si: 1e-3 },
  ratio: { unit: '', si: 1 },
  octaves: { unit: 'oct', si: 1 },
};
const all: Record<string, number> = {
  Hz: 1,
  kHz: 1000,
  mm: 1e-3,
  cm: 1e-2,
  L: 1e-3,
  Ω: 1,
  dB: 1,
  ms: 1e-3,
  'm/s': 1,
  oct: 1,
  '': 1,
};
export interface ShowOptions {
  quantity: QuantityName;
  unit?: string;
  system: UnitSystem;
  digits?: number;
}
export const unitFactor = (symbol: string): { si: number; offset: number } | undefined =>
  symbol in all ? { si: all[symbol]!, offset: 0 } : undefined;
export const show = (value: number, { quantity, unit, digits = 3 }: ShowOptions): { number: string; unit: string } => {
  const row = unit !== undefined ? { unit, si: all[unit] ?? 1 } : (rows[quantity] ?? { unit: '', si: 1 });
  const n = value / row.si;
  const d = Math.max(digits, Math.floor(Math.log10(Math.abs(n) || 1)) + 1);
  const s = String(Number(n.toPrecision(d))).replace('-', '−');
  return { number: s.replace(/\B(?=(\d{3})+(?!\d))/g, s.includes('.') ? '' : '\u2009'), unit: row.unit };
};
export const speak = (sentence: Sentence, system: UnitSystem): string =>
  sentence
    .map((part) =>
      typeof part === 'string'
        ? part
        : Object.values(show(part.value, { quantity: part.quantity, system })).join('\u202f'),
    )
    .join('');
