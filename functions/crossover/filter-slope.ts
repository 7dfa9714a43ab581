import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { slopeCurve } from './slope-curve.ts';
import { allSlopes, slopeWords } from './slope.ts';

export const filterSlope = define({
  name: 'FILTER.SLOPE',
  summary: 'The response of an ideal low-pass or high-pass, as a target for driver and filter together.',
  parameters: {
    frequency: { ...usual.frequency, summary: 'hand-over' },
    slope: { choice: allSlopes, summary: 'family and order' },
    pass: { choice: ['low', 'high'], summary: 'the side that passes' },
  },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase, 0 dB in the pass band' },
  source: {
    source: 'linkwitz1976',
    at: 'squared Butterworth filters; −6 dB at the hand-over, against −3 dB for Butterworth',
  },
  example: { formula: '=CURVE.AT(FILTER.SLOPE("2 kHz", "LR4", "low"), "2 kHz")', gives: -6.02 },
  remarks: `The target of the sound, not of the electrical filter alone: the driver adds its own slope. An LR2 pair sums flat with one driver reversed, an LR4 or LR8 pair as it stands. A Butterworth pair of odd order sums flat either way, one of even order is 3 dB too loud at the hand-over. ${slopeWords}`,
  compute: (given) => slopeCurve(given.slope, given.pass, given.frequency),
});
