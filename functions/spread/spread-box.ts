import { define } from '../define.ts';
import { demoDriver } from '../enclosure/parameters.ts';
import { normalNumbers } from '../numeric/random.ts';
import type { QuantityName } from '../quantities.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Sample } from '../values/sample.ts';
import type { TableRecord } from '../values/table.ts';
import { causeNames, drifted, nominal, type Causes } from './causes.ts';
import { fallOf, resultNames, results, type Asked, type ResultName } from './results.ts';

const factor = (summary: string) =>
  ({ quantity: 'ratio', min: 0.01, max: 10, default: 1, typical: [0.5, 2], summary }) as const;
const sigma = (summary: string) => ({ quantity: 'ratio', min: 0, max: 0.5, default: 0, summary }) as const;
const box = { record: 'box', summary: 'box as planned' } as const;
const result = { choice: resultNames, summary: 'what is asked of it' } as const;
const spreads = {
  cms: sigma('standard spread of the compliance, as a share'),
  bl: sigma('standard spread of the force factor'),
  mms: sigma('standard spread of the moving mass'),
  re: sigma('standard spread of the coil resistance'),
  volume: sigma('standard spread of the box volume'),
} as const;
const linked = {
  source: 'own',
  at: 'Fs, Q and Vas from their causes: Fs ∝ 1/√(Mms·Cms), Qes ∝ √(Mms/Cms)·Re/Bl², Vas ∝ Cms',
} as const;
const spreadDemo = `CLOSED.BOX(${demoDriver}, "12.1 L")`;

const moved = (planned: Box, causes: Causes): Box => ({
  ...planned,
  driver: drifted(planned.driver, causes),
  volume: planned.volume * causes.volume,
});

export const spreadDriver = define({
  name: 'SPREAD.DRIVER',
  summary: 'A driver whose physical causes have moved, with everything that follows from them.',
  parameters: {
    driver: { record: 'driver', summary: 'driver as printed' },
    cms: factor('factor on the compliance, 0.8 for a fifth stiffer'),
    bl: factor('factor on the force factor'),
    mms: factor('factor on the moving mass'),
    re: factor('factor on the coil resistance'),
  },
  returns: { record: 'driver', summary: 'the driver after the change' },
  source: linked,
  example: { formula: `=SPREAD.DRIVER(${demoDriver}, 0.8)`, gives: { fs: 42.5 } },
  remarks:
    'Resonance, Q and Vas never move alone: a stiffer suspension raises Fs and Q and lowers Vas together, and the box hardly notices.',
  compute: (given) => drifted(given.driver, given),
});

/** Factors of one run. Lognormal, so that no factor turns negative; for small spreads the same as normal. */
const drawn = (sigmas: Causes, next: () => number): Causes => {
  const draw = (share: number): number => Math.exp(share * next());
  return {
    cms: draw(sigmas.cms),
    bl: draw(sigmas.bl),
    mms: draw(sigmas.mms),
    re: draw(sigmas.re),
    volume: draw(sigmas.volume),
  };
};

const drawing = {
  ...spreads,
  runs: { quantity: 'ratio', whole: true, min: 10, max: 20000, default: 2000, summary: 'number of runs' },
  seed: { quantity: 'ratio', whole: true, min: 0, max: 1e9, default: 1, summary: 'start of the random numbers' },
} as const;

const drawingRemarks =
  'Spreads are one standard deviation, as a share: 0.12 for 12 %. The same seed draws the same drivers, so that several results belong together run by run. A run without a value counts as one that fails.';

interface Drawing extends Causes {
  readonly box: Box;
  readonly runs: number;
  readonly seed: number;
}

function sampleOf(given: Drawing, asked: Asked): Sample | Problem {
  const next = normalNumbers(given.seed);
  const values = new Float64Array(given.runs);
  for (let run = 0; run < values.length; run += 1) {
    const value = asked.of(moved(given.box, drawn(given, next)));
    values[run] = value instanceof Problem ? Number.NaN : value;
  }
  if (values.every((value) => Number.isNaN(value))) {
    const why = asked.of(given.box);
    return new Problem(why instanceof Problem ? why.message : say`No run has a ${asked.words}.`, 'box');
  }
  return { kind: 'sample', title: `Spread of ${asked.words}`, quantity: asked.quantity, values, seed: given.seed };
}

export const spreadFall = define({
  name: 'SPREAD.FALL',
  summary: 'Where the bass of a box has fallen by some decibels, over many runs with spread causes.',
  parameters: {
    box,
    fall: { quantity: 'level', min: 0.01, max: 100, default: 3, summary: 'fall below 0 dB: 3 dB for F3' },
    ...drawing,
  },
  returns: { record: 'sample', of: 'frequency', summary: 'one frequency a run' },
  source: linked,
  example: { formula: `=SPREAD.FALL(${spreadDemo}, , 0.12, 0.03, 0.03, 0.02)`, gives: { count: 2000 } },
  remarks: drawingRemarks,
  compute: (given) =>
    sampleOf(given, { quantity: 'frequency', words: `F${String(given.fall)}`, of: fallOf(given.fall) }),
});

/** A result of a box over many runs. */
const spreadOf = <const Q extends QuantityName>(name: string, result: ResultName, of: Q, summary: string) =>
  define({
    name,
    summary,
    parameters: { box, ...drawing },
    returns: { record: 'sample', of, summary: 'one value a run' },
    source: linked,
    example: { formula: `=${name}(${spreadDemo}, 0.12, 0.03, 0.03, 0.02)`, gives: { count: 2000 } },
    remarks: drawingRemarks,
    compute: (given) => sampleOf(given, results[result]),
  });

export const spreadResonance = spreadOf(
  'SPREAD.RESONANCE',
  'resonance',
  'frequency',
  'Resonance of a box over many runs with spread causes.',
);
export const spreadQtc = spreadOf(
  'SPREAD.QTC',
  'qtc',
  'ratio',
  'Total Q of a closed box over many runs with spread causes.',
);
export const spreadPeak = spreadOf(
  'SPREAD.PEAK',
  'peak',
  'level',
  'Peak of the response of a box over many runs with spread causes.',
);
export const spreadLevel = spreadOf(
  'SPREAD.LEVEL',
  'level',
  'level',
  'Level of a box for 2.83 V over many runs with spread causes.',
);

export const spreadCauses = define({
  name: 'SPREAD.CAUSES',
  summary: 'Which cause of spread matters most for a result of a box.',
  parameters: { box, result, ...spreads },
  returns: { record: 'table', summary: 'cause, what one standard spread of it does, its share of the variance' },
  source: { source: 'own', at: 'first-order error propagation: variance is the sum of the squared effects' },
  example: { formula: `=SPREAD.CAUSES(${spreadDemo}, "f3", 0.12, 0.03, 0.03, 0.02)`, gives: { rows: 5 } },
  compute(given): TableRecord | Problem {
    const asked: Asked = results[given.result];
    const effects: { cause: keyof Causes; effect: number }[] = [];
    for (const cause of Object.keys(causeNames) as (keyof Causes)[]) {
      const step = 1e-3;
      const up = asked.of(moved(given.box, { ...nominal, [cause]: 1 + step }));
      const down = asked.of(moved(given.box, { ...nominal, [cause]: 1 - step }));
      if (up instanceof Problem) return new Problem(up.message, 'box');
      if (down instanceof Problem) return new Problem(down.message, 'box');
      effects.push({ cause, effect: ((up - down) / (2 * step)) * given[cause] });
    }
    const variance = effects.reduce((sum, { effect }) => sum + effect ** 2, 0);
    return {
      kind: 'table',
      title: `Causes of the spread of ${asked.words}`,
      columns: [
        { name: 'Cause', quantity: 'text' },
        { name: 'One standard spread does', quantity: asked.quantity },
        { name: 'Share of the variance', quantity: 'ratio' },
      ],
      rows: effects
        .sort((a, b) => Math.abs(b.effect) - Math.abs(a.effect))
        .map(({ cause, effect }) => [causeNames[cause], effect, variance === 0 ? 0 : effect ** 2 / variance]),
    };
  },
});
