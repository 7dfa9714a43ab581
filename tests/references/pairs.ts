/** Three woofers of the invented drivers with three tweeters, at 100 dB, LR4 and 45°: octaves of the shared window, and what they are
 *  worth. */
export const pairs = [
  ['W-130 A', 'T-19 C', -0.46, 'Stretch'],
  ['W-130 A', 'T-25 A', 0.495, 'Tight'],
  ['W-130 A', 'T-28 B', 1.15, 'Comfortable'],
  ['W-165 A', 'T-19 C', -0.78, 'Stretch'],
  ['W-165 A', 'T-25 A', 0.18, 'Tight'],
  ['W-165 A', 'T-28 B', 0.83, 'Comfortable'],
  ['W-220 A', 'T-19 C', -1.15, 'No shared window'],
  ['W-220 A', 'T-25 A', -0.2, 'Stretch'],
  ['W-220 A', 'T-28 B', 0.46, 'Tight'],
] as const;
