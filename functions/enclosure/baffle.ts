import { define } from '../define.ts';
import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { boxFields } from './box-driver.ts';
import { demoDriver, driver, seriesResistance } from './parameters.ts';

export const baffleBox = define({
  name: 'BAFFLE.BOX',
  summary: 'A driver in an infinite baffle: a wall that keeps its two sides apart, with endless air behind it.',
  parameters: { driver, seriesResistance },
  returns: { record: 'box', summary: 'the driver in its wall' },
  source: { source: 'small1972direct', at: 'driver in an infinite baffle' },
  example: { formula: `=BAFFLE.BOX(${demoDriver})`, gives: { resonance: 38, qtc: 0.386 } },
  remarks: 'A room wall or a very large box comes near to it: the air behind must be many times Vas.',
  compute: (given): Box | Problem => {
    const known = need(given.driver, boxFields);
    if (known instanceof Problem) return known;
    return {
      kind: 'box',
      style: 'baffle',
      driver: known,
      volume: Infinity,
      fill: 1,
      seriesResistance: given.seriesResistance,
      leakageQ: Infinity,
      absorptionQ: Infinity,
      portQ: Infinity,
    };
  },
});
