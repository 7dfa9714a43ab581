import { soundSpeed } from '../air.ts';
import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { measured, say } from '../values/say.ts';
import { judge } from './judge.ts';

const share = { quantity: 'ratio', min: 0, max: 10 } as const;

export const ruleRounding = define({
  name: 'RULE.ROUNDING',
  summary: 'Whether rounded edges are large enough to soften what the edges send back from a frequency on.',
  parameters: {
    radius: { ...usual.length, min: 0, summary: 'radius of the rounded edges, 0 for sharp ones', typical: [0, 0.075] },
    from: { ...usual.frequency, typical: [500, 8000], summary: 'lowest frequency at which it should help' },
    good: { ...share, default: 0.125, summary: 'radius over the wavelength that is good' },
    caution: { ...share, default: 0.0625, summary: 'below it, fail' },
  },
  returns: { record: 'verdict', summary: 'verdict with its reason' },
  source: { source: 'practice', at: 'radius of an eighth of a wavelength; half of that as a stretch' },
  example: { formula: '=RULE.ROUNDING("19 mm", "2.3 kHz")', gives: { status: 'good' } },
  remarks:
    'At an eighth of a wavelength the edge sends back 1.6 dB less than a sharp one, at a quarter 7 dB. Take the frequency from which EDGE.DIFFRACTION shows ripple that disturbs. EDGE.RADIUS_FREQUENCY turns the rule round. Dust of wood and boards harms the lungs: wear a mask at the router.',
  compute(given) {
    const wave = soundSpeed / given.from;
    return judge({
      subject: say`Radius of ${measured(given.radius, 'length')} over the wavelength of ${measured(wave, 'length')} at ${measured(given.from, 'frequency')}`,
      value: given.radius / wave,
      show: (value) => measured(value, 'ratio'),
      sense: 1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'it softens the ripple a little',
        fail: 'to the sound the edge is sharp; take a larger radius, or move the driver off the middle',
      },
    });
  },
});
