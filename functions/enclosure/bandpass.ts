import { define } from '../define.ts';
import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { boxFields } from './box-driver.ts';
import { demoDriver, driver, fill, leakageQ, lossQ, seriesResistance } from './parameters.ts';
import { usual } from '../usual.ts';

export const bandpassBox = define({
  name: 'BANDPASS.BOX',
  summary: 'A driver between a closed volume and a vented one: a fourth-order band-pass, heard through its port alone.',
  parameters: {
    driver,
    rear: { ...usual.volume, typical: [2e-4, 1], summary: 'net closed volume behind the cone' },
    front: { ...usual.volume, typical: [2e-4, 1], summary: 'net vented volume before the cone' },
    tuning: { ...usual.frequency, typical: [20, 200], summary: 'tuning of the port with the front volume' },
    leakageQ,
    seriesResistance,
    fill,
    absorptionQ: lossQ('absorption Q of the closed volume at the resonance on it; none when left out'),
    portQ: lossQ('port Q at the tuning; none when left out'),
  },
  returns: { record: 'box', summary: 'the box' },
  source: { source: 'own', at: 'closed and vented loads in series on one cone' },
  example: {
    formula: `=BANDPASS.BOX(${demoDriver}, "12 L", "8 L", "70 Hz")`,
    gives: { volume: 0.012, frontvolume: 0.008, tuning: 70 },
  },
  remarks:
    'The band is highest and narrowest with small volumes. The closed volume is taken as tight; the leakage Q is that of the front volume. Above the band, resonances of port and chamber come through that this circuit does not hold.',
  compute: (given): Box | Problem => {
    const known = need(given.driver, boxFields);
    if (known instanceof Problem) return known;
    return {
      kind: 'box',
      style: 'bandpass',
      driver: known,
      volume: given.rear,
      frontVolume: given.front,
      tuning: given.tuning,
      fill: given.fill,
      seriesResistance: given.seriesResistance,
      leakageQ: given.leakageQ,
      absorptionQ: given.absorptionQ ?? Infinity,
      portQ: given.portQ ?? Infinity,
    };
  },
});
