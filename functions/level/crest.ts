import { define } from '../define.ts';
import { copperRise } from '../electrical/copper.ts';
import { power } from './parameters.ts';

const crest = {
  quantity: 'level',
  min: 0,
  max: 40,
  default: 12,
  typical: [3, 20],
  summary: 'peaks over the average; 3 dB for a sine',
} as const;

export const crestPower = define({
  name: 'CREST.POWER',
  summary: 'The average power of music whose peaks just reach the clipping of an amplifier.',
  parameters: { power: { ...power, summary: 'rated sine power of the amplifier' }, crest },
  returns: { quantity: 'power', summary: 'average power into the rated ohms' },
  source: { source: 'own', at: 'peak power 2·P, lowered by the crest factor' },
  example: { formula: '=CREST.POWER("100 W", "12 dB")', gives: 12.6 },
  remarks:
    'Unclipped music has a crest of 10 to 20 dB. An amplifier turned far into clipping comes down to about 3 dB and gives its full power without a pause: that, and not any direct current, burns tweeters.',
  compute: (given) => 2 * given.power * 10 ** (-given.crest / 10),
});

/** Octaves from 20 Hz to 20 kHz. */
const wholeBand = Math.log2(1000);

export const crestTrebleShare = define({
  name: 'CREST.TREBLE_SHARE',
  summary: 'The share of the power of pink noise from 20 Hz to 20 kHz that lies above a frequency.',
  parameters: { frequency: { quantity: 'frequency', min: 20, max: 20_000, summary: 'hand-over' } },
  returns: { quantity: 'ratio', summary: 'share of the power' },
  source: { source: 'own', at: 'the same power in every octave' },
  example: { formula: '=CREST.TREBLE_SHARE("1900 Hz")', gives: 0.34 },
  remarks:
    'An upper bound for music, which falls off in the treble: common practice, no source, is 0.1 to 0.2 above 2 kHz.',
  compute: (given) => Math.log2(20_000 / given.frequency) / wholeBand,
});

export const heatRise = define({
  name: 'HEAT.RISE',
  summary: 'How much warmer a voice coil becomes in the long run at a steady voltage.',
  parameters: {
    power: { ...power, summary: 'power that the voltage would give in the cold coil' },
    perWatt: { quantity: 'ratio', min: 0.01, max: 1000, typical: [0.5, 20], summary: 'warming in kelvin per watt' },
  },
  returns: { quantity: 'warming', summary: 'rise of temperature' },
  source: { source: 'own', at: 'ΔT = Rth·P/(1 + α·ΔT), solved for ΔT' },
  example: { formula: '=HEAT.RISE("40 W", 1.9)', gives: 61.3 },
  remarks: 'A warmer coil has more ohms and so takes less power: the rise is less than power times kelvin per watt.',
  compute: (given) => {
    const cold = given.perWatt * given.power;
    return (2 * cold) / (1 + Math.sqrt(1 + 4 * copperRise * cold));
  },
});

export const heatLoss = define({
  name: 'HEAT.LOSS',
  summary: 'How many decibels a warm voice coil loses at a steady voltage.',
  parameters: {
    rise: { quantity: 'warming', min: 0, max: 1000, typical: [0, 250], summary: 'how much warmer the coil is' },
  },
  returns: { quantity: 'level', summary: 'loss, positive' },
  source: { source: 'own', at: '20·lg(1 + α·ΔT), α = 0.00393/K for copper' },
  example: { formula: '=HEAT.LOSS(61.25)', gives: 1.87 },
  remarks: 'Where the impedance is that of the coil alone; less near resonance.',
  compute: (given) => 20 * Math.log10(1 + copperRise * given.rise),
});
