import { unitNamed, type Unit } from './table.ts';

/** A typed number with its unit. */
export interface ParsedQuantity {
  /** SI. */
  readonly value: number;
  /** The symbol of the unit; empty for a plain number. */
  readonly unit: string;
  readonly quantity: Unit['quantity'];
  /** Significant digits as typed, trailing zeros included. */
  readonly digits: number;
}

const SPACES = /[\u00A0\u2009\u202F]/g;
const NUMBER = /^([+-]?)(\d{1,3}(?: \d{3})+(?:[.,]\d+)?|\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE]([+-]?\d+))?/;

/**
 * Reads `38 Hz`, `12,1 L`, `0.2 ft3`, `1 900 Hz`, `−1.5 dB`, `45°`, `0.386`. The decimal mark is a point or a comma;
 * thousands may be set apart by spaces, never by a comma or a point. Gives nothing where the text is anything else, so that
 * text stays text.
 */
export function parseQuantity(text: string): ParsedQuantity | undefined {
  const typed = text.trim().replace(SPACES, ' ').replaceAll('\u2212', '-').replaceAll('–', '-');
  const match = NUMBER.exec(typed);
  if (!match) return undefined;
  const [whole, sign = '', mantissa = '', exponent = '0'] = match;
  const rest = typed.slice(whole.length).trim();
  const unit = rest === '' ? undefined : unitNamed(rest);
  if (rest !== '' && !unit) return undefined;
  const plain = mantissa.replaceAll(' ', '').replace(',', '.');
  const number = Number(`${sign}${plain}e${exponent}`);
  if (!Number.isFinite(number)) return undefined;
  return {
    value: toSi(number, unit),
    unit: unit?.symbol ?? '',
    quantity: unit?.quantity ?? 'ratio',
    digits: Math.max(1, plain.replace('.', '').replace(/^0+/, '').length),
  };
}

/** A divided rather than a multiplied factor keeps `38 mm` at 0.038 and not at 0.038000000000000006. */
function toSi(number: number, unit: Unit | undefined): number {
  if (!unit) return number;
  const scaled =
    unit.si < 1 && Number.isInteger(Math.round(1 / unit.si)) && Math.abs(1 / unit.si - Math.round(1 / unit.si)) < 1e-6
      ? number / Math.round(1 / unit.si)
      : number * unit.si;
  return scaled + (unit.offset ?? 0);
}
