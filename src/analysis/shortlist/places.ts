import type { Driver } from '../../../functions/values/driver.ts';
import { rolesOf, type Role } from './roles.ts';

/** What is put together: two ways, three, or mains with subs. */
export type Ways = 2 | 3 | 'subs';

export type PlaceName = Role | 'sub' | 'mains';

/** The places of each kind, the lowest first. */
export const placesFor: Readonly<Record<Ways, readonly PlaceName[]>> = {
  2: ['woofer', 'tweeter'],
  3: ['woofer', 'mid', 'tweeter'],
  subs: ['sub', 'mains'],
};

/** A first guess by its numbers, common practice, no source: a sub resonates below 45 Hz and moves 150 cm³ of air or more one
 *  way; mains are drivers that can take the lows of a two-way, below 250 cm². */
export function mayTake(place: PlaceName, driver: Driver): boolean {
  const { fs = Infinity, sd = 0, xmax = 0 } = driver;
  switch (place) {
    case 'sub':
      return fs < 45 && sd * xmax >= 150e-6;
    case 'mains':
      return rolesOf(driver).includes('woofer') && sd < 250e-4;
    default:
      return rolesOf(driver).includes(place);
  }
}
