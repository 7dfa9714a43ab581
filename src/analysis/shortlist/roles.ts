import type { Driver } from '../../../functions/values/driver.ts';

/** What a driver can be in a loudspeaker of two or three ways. */
export type Role = 'woofer' | 'mid' | 'tweeter';

/** A first guess by the numbers of a driver, common practice, no source: a tweeter has its first break-up above 12 kHz, or where
 *  none is given a cone below 15 cm² that resonates above 300 Hz; a woofer resonates below 100 Hz and moves 60 cm² or more; a
 *  mid resonates between 50 and 600 Hz and moves 15 to 140 cm². A small woofer is a mid too. */
export function rolesOf({ fs, sd, breakup }: Driver): readonly Role[] {
  if (fs === undefined || sd === undefined) return [];
  if (breakup === undefined ? fs > 300 && sd < 15e-4 : breakup >= 12e3) return ['tweeter'];
  const roles: Role[] = [];
  if (fs < 100 && sd >= 60e-4) roles.push('woofer');
  if (fs >= 50 && fs <= 600 && sd >= 15e-4 && sd <= 140e-4) roles.push('mid');
  return roles;
}
