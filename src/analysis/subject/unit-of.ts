import type { UnitSystem } from '../../document/types.ts';
import { defaultUnit } from '../../units/defaults.ts';
import type { Result } from './types.ts';

/** The unit in which a target of a result is typed where it names none. */
export const unitOf = (
  { quantity, unit }: Pick<Result, 'quantity' | 'unit'>,
  { system }: { readonly system: UnitSystem },
): string => unit ?? (quantity ? defaultUnit(quantity, system) : '');
