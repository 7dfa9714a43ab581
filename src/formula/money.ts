import type { Currency } from '../../functions/quantities.ts';
import { currencyOf } from '../units/currency.ts';
import type { CellType } from './types.ts';

/** The one kind of money in which the prices of a call may be: nothing is converted. */
export class Money {
  sign: Currency | undefined;

  /** How a function is told of it, behind the quantity of its numbers. */
  get told(): string {
    return this.sign ? ` ${this.sign}` : '';
  }

  /** What is wrong with a further number of the call, if anything is. */
  heed(type: CellType, where: string): string | undefined {
    const sign = type.kind === 'number' ? currencyOf(type.dimension) : undefined;
    this.sign ??= sign;
    if (sign === undefined || sign === this.sign) return undefined;
    return `${where} is a price in ${sign} beside one in ${this.sign ?? ''}, and nothing is converted: give all in one money.`;
  }
}
