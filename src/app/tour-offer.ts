import { atOnce } from '../storage/at-once.ts';

const KEY = 'octavo-tour';

/** Whether to offer the tour unasked: once on a device, and never again whatever was answered. */
export function offersTour(): boolean {
  return atOnce.read(KEY) === null && atOnce.keep(KEY, 'offered');
}
