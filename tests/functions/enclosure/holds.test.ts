import { expect, test } from 'vitest';
import type { Box } from '../../../functions/values/box.ts';
import type { Way } from '../../../functions/values/way.ts';
import { curve, network, run, way } from '../crossover/run.ts';
import { woofer } from './call.ts';

test.each([
  ['CLOSED.BOX', 0.0121],
  ['VENTED.BOX', 0.0223, 39.6],
  ['VENTED.ALIGNED', 'QB3'],
  ['CLOSED.COIL_BOX', 0.75, 400, 0.001, 0.3],
  ['VENTED.COIL_BOX', 'QB3', 400, 0.001, 0.3],
  ['RADIATOR.BOX', 0.02, 0.021, 0.12, 0.0009, 1.5],
  ['BANDPASS.BOX', 0.012, 0.008, 70],
  ['BAFFLE.BOX'],
])('%s holds the driver it was given, all its numbers untouched', (name, ...given) => {
  const made = run(name, woofer, ...given) as Box;
  expect(made).toMatchObject({ kind: 'box', driver: woofer });
  expect(run('BOX.HIGH_PASS', made, 30, 2)).toEqual({ ...made, highPass: { frequency: 30, order: 2 } });
  // The coils of a filter bring their own resistance.
  expect(run('WAY.OF', made)).toMatchObject({ kind: 'way', driver: woofer, box: { ...made, seriesResistance: 0 } });
});

test('an active filter leaves all else of a way as it was', () => {
  const bare = way('WAY.OF', run('CLOSED.BOX', woofer, 0.0121), network('NETWORK.LOW', 'LR2', 1900, 5.8), 0.1, 0.2);
  const active = curve('FILTER.SLOPE', 300, 'LR4', 'low');
  expect<Way>(way('WAY.ACTIVE', bare, active)).toEqual({ ...bare, active });
});
