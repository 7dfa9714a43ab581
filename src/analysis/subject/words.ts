import type { CellValue } from '../../engine/types.ts';
import { show, speak } from '../../units/show.ts';
import type { UnitSystem } from '../../document/types.ts';
import type { Input, Result, Setting } from './types.ts';

/** A value of an input as a reader would write it. */
export function inputWords({ quantity, unit }: Input, value: Setting, system: UnitSystem): string {
  if (typeof value === 'string') return value;
  return spaced(show(value, { quantity, system, ...(unit !== '' && { unit }) }));
}

/** What a result holds, in a few words. */
export function resultWords(
  { quantity, unit }: Pick<Result, 'quantity' | 'unit'>,
  value: CellValue,
  system: UnitSystem,
): string {
  switch (value.kind) {
    case 'number':
      return spaced(show(value.value, { quantity, system, unit }));
    case 'text':
      return value.text;
    case 'truth':
      return value.truth ? 'TRUE' : 'FALSE';
    case 'problem':
      return value.message;
    case 'record':
      return value.record.kind === 'verdict'
        ? `${value.record.word}: ${speak(value.record.reason, system)}`
        : `a ${value.record.kind}`;
    case 'empty':
      return 'nothing';
  }
}

const spaced = ({ number, unit }: { number: string; unit: string }): string =>
  unit === '' ? number : unit === '°' ? number + unit : `${number} ${unit}`;

/** `a`, `a and b`, `a, b and c`. */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
