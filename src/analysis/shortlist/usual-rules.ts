import type { BassBox, PairRules, ShortlistQuestion, SubRules } from './types.ts';

/** The rules of the two-driver sheet as it stands; common practice, no source. */
export const usualRules: PairRules = {
  target: 100,
  slope: 'LR4',
  angle: Math.PI / 4,
  gap: 0.004,
  makeUp: 4.5,
  comfortable: 0.5,
  resonance: [2, 1.5],
  travel: [0.7, 1],
  narrowing: [3, 6],
  breakup: [0.5, 0.6667],
  spacing: [1, 1.4],
  // As one types it.
  qtc: 0.71,
  leakage: 7,
  air: 17,
};

/** Those of the sheet for mains and subs; where the ear finds a sub, and how far the levels may be apart, common practice. */
export const usualSubRules: SubRules = {
  sag: [1.1, 1.5],
  location: [100, 150],
  above: 6,
  lowest: 30,
  most: 4,
  match: 10,
};

/** The box that is meant where none is asked for. */
export const boxOf = ({ box, subs }: Pick<ShortlistQuestion, 'box' | 'subs'>): BassBox =>
  box ?? (subs ? 'closed' : 'vented');
