import { define } from '../define.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { box, demoDriver, demoVented } from './parameters.ts';
import { resonanceOf } from './box-driver.ts';
import { totalQ } from './total-q.ts';
import { styleNames } from './style-names.ts';
import { usual } from '../usual.ts';

export const boxQtc = define({
  name: 'BOX.QTC',
  summary: 'Total Q of a closed box or a baffle, with series resistance, filling and absorption.',
  parameters: { box },
  returns: { quantity: 'ratio', summary: 'total Q' },
  source: { source: 'small1972closed', at: 'Qtc = Qts·√(1 + Vas/Vb), absorption added' },
  example: { formula: `=BOX.QTC(CLOSED.BOX(${demoDriver}, "12.1 L", "0.6 ohm"))`, gives: 0.774 },
  remarks:
    'A leak is left out: with one the response is of third order, and no single Q describes it. Look at BOX.RESPONSE then.',
  compute: (given) =>
    given.box.style === 'closed' || given.box.style === 'baffle'
      ? totalQ(given.box)
      : new Problem(
          say`${styleNames[given.box.style]}: there is no single Qtc. Look at its response, or give a closed box.`,
          'box',
        ),
});

export const boxResonance = define({
  name: 'BOX.RESONANCE',
  summary: 'Resonance of the driver in a closed box or a baffle, or the tuning by port or radiators.',
  parameters: { box },
  returns: { quantity: 'frequency', summary: 'resonance' },
  source: { source: 'small1972closed', at: 'fc = fs·√(1 + Vas/Vb)' },
  example: { formula: `=BOX.RESONANCE(CLOSED.BOX(${demoDriver}, "12.1 L", 0, 1.15))`, gives: 66.36 },
  compute: (given) => resonanceOf(given.box),
});

export const boxSeriesLoss = define({
  name: 'BOX.SERIES_LOSS',
  summary: 'How many decibels the series resistance takes from the level above resonance.',
  parameters: { box },
  returns: { quantity: 'level', summary: 'loss, positive' },
  source: { source: 'own', at: '20·lg((Re + R)/Re)' },
  example: { formula: `=BOX.SERIES_LOSS(CLOSED.BOX(${demoDriver}, "12.1 L", "0.6 ohm"))`, gives: 0.86 },
  compute: (given) => {
    const { re } = given.box.driver;
    if (re === undefined) return new Problem(say`The driver needs its voice-coil resistance Re.`, 'box');
    return 20 * Math.log10((re + given.box.seriesResistance) / re);
  },
});

export const boxHighPass = define({
  name: 'BOX.HIGH_PASS',
  summary: 'The same box driven through a Butterworth high-pass.',
  parameters: {
    box,
    frequency: { ...usual.frequency, typical: [10, 300], summary: 'where the filter is 3 dB down' },
    order: { quantity: 'ratio', whole: true, min: 1, max: 8, default: 2, summary: 'order of the filter' },
  },
  returns: { record: 'box', summary: 'the box behind its filter' },
  source: { source: 'own', at: 'Butterworth poles on the unit circle' },
  example: { formula: `=BOX.HIGH_PASS(${demoVented}, "35 Hz", 4)`, gives: { tuning: 39.6 } },
  remarks: 'Response, level, travel and port speed then include the filter; the impedance does not.',
  compute: (given): Box | Problem => {
    if (given.box.highPass !== undefined) {
      return new Problem(say`This box has a high-pass already: give the box before its filter.`, 'box');
    }
    return { ...given.box, highPass: { frequency: given.frequency, order: given.order } };
  },
});
