import { define } from '../define.ts';
import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import { measured, say } from '../values/say.ts';
import { Problem } from '../values/problem.ts';
import { boxFields } from './box-driver.ts';
import { demoDriver, driver, fill, lossQ, qtc, qts, seriesResistance, vas, volume } from './parameters.ts';
import { seriesQts } from './qtc.ts';
import { usual } from '../usual.ts';

/** The net volume for a wanted total Q, or why there is none. */
function volumeFor(total: number, wanted: number, equivalent: number): number | Problem {
  if (wanted > total) return equivalent / ((wanted / total) ** 2 - 1);
  return new Problem(
    say`Qtc ${measured(wanted, 'ratio')} must be above the driver's Qts of ${measured(total, 'ratio')}: a box only raises it. Ask for a higher Qtc or take a driver with a lower Qts.`,
    'qtc',
  );
}

export const closedQtc = define({
  name: 'CLOSED.QTC',
  summary: 'Total Q of a driver in a closed box without losses.',
  parameters: { qts, vas, volume },
  returns: { quantity: 'ratio', summary: 'total Q in the box' },
  source: { source: 'small1972closed', at: 'Qtc = Qts·√(1 + Vas/Vb)' },
  example: { formula: '=CLOSED.QTC(0.386, "28.52 L", "12.1 L")', gives: 0.7072 },
  compute: (given) => given.qts * Math.sqrt(1 + given.vas / given.volume),
});

export const closedResonance = define({
  name: 'CLOSED.RESONANCE',
  summary: 'Resonance of a driver in a closed box.',
  parameters: {
    fs: { ...usual.frequency, summary: 'free-air resonance' },
    vas,
    volume,
  },
  returns: { quantity: 'frequency', summary: 'resonance in the box' },
  source: { source: 'small1972closed', at: 'fc = fs·√(1 + Vas/Vb)' },
  example: { formula: '=CLOSED.RESONANCE("38 Hz", "28.52 L", "12.1 L")', gives: 69.6 },
  compute: (given) => given.fs * Math.sqrt(1 + given.vas / given.volume),
});

export const closedVolume = define({
  name: 'CLOSED.VOLUME',
  summary: 'Net volume of a closed box for a wanted total Q.',
  parameters: { qts, vas, qtc },
  returns: { quantity: 'volume', summary: 'net volume' },
  source: { source: 'small1972closed', at: 'Vb = Vas/((Qtc/Qts)² − 1)' },
  example: { formula: '=CLOSED.VOLUME(0.3862, "28.52 L", 0.707)', gives: 0.0121 },
  remarks:
    'Qtc 0.5 is critically damped, 0.577 has the flattest delay, 0.707 the flattest response; none is the only right one.',
  compute: (given) => volumeFor(given.qts, given.qtc, given.vas),
});

export const closedVolumeFor = define({
  name: 'CLOSED.VOLUME_FOR',
  summary: 'Net volume of a closed box for a driver and a wanted total Q, series resistance and filling included.',
  parameters: { driver, qtc, seriesResistance, fill },
  returns: { quantity: 'volume', summary: 'net volume' },
  source: { source: 'small1972closed', at: 'Vb = Vas/((Qtc/Qts)² − 1) with Qes·(Re + R)/Re' },
  example: { formula: `=CLOSED.VOLUME_FOR(${demoDriver}, 0.707, "0.6 ohm")`, gives: 0.01586 },
  remarks: 'Choose the coil and the cable first: their resistance raises Qes, and with it the litres.',
  compute: (given) => {
    const known = need(given.driver, boxFields);
    if (known instanceof Problem) return known;
    const total = seriesQts(known, given.seriesResistance);
    if (total instanceof Problem) return total;
    const found = volumeFor(total, given.qtc, known.vas);
    return found instanceof Problem ? found : found / given.fill;
  },
});

export const closedBox = define({
  name: 'CLOSED.BOX',
  summary: 'A driver in a closed box, with its losses.',
  parameters: {
    driver,
    volume,
    seriesResistance,
    fill,
    leakageQ: lossQ('leakage Q at the resonance in the box; none when left out'),
    absorptionQ: lossQ('absorption Q at the resonance in the box; none when left out'),
  },
  returns: { record: 'box', summary: 'the box' },
  source: { source: 'small1972closed', at: 'equivalent circuit' },
  example: { formula: `=CLOSED.BOX(${demoDriver}, "12.1 L")`, gives: { volume: 0.0121, qtc: 0.708 } },
  remarks:
    'A leak makes the response third order, so that no single Qtc describes it; the curves show it rightly. Filling makes a box appear 1.1 to 1.25 times as large (common practice, no source), never more than 1.4; that it also loads the cone a little is left out.',
  compute: (given): Box | Problem => {
    const known = need(given.driver, boxFields);
    if (known instanceof Problem) return known;
    const { volume: net, seriesResistance: series, fill: factor, leakageQ = Infinity, absorptionQ = Infinity } = given;
    return {
      kind: 'box',
      style: 'closed',
      driver: known,
      volume: net,
      fill: factor,
      seriesResistance: series,
      leakageQ,
      absorptionQ,
      portQ: Infinity,
    };
  },
});
