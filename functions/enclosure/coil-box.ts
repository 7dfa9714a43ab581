import { define } from '../define.ts';
import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { alignedBox, family } from './aligned.ts';
import { closedVolumeFor, closedBox } from './closed.ts';
import { solveImpedance } from './impedance-curve.ts';
import { boxFields } from './box-driver.ts';
import { modelOf } from './circuit-of.ts';
import { demoDriver, driver, fill, leakageQ, qtc } from './parameters.ts';
import { usual } from '../usual.ts';

const handover = { ...usual.frequency, typical: [100, 5000], summary: 'hand-over that the coil is for' } as const;
const shape = {
  quantity: 'ratio',
  min: 0.1,
  max: 10,
  default: 1,
  typical: [0.5, 2],
  summary: 'coil in units of |Z|/(2π·f): 1 for first order, 2 for an LR2 slope',
} as const;
const sample = {
  quantity: 'inductance',
  min: 1e-6,
  max: 1,
  summary: 'inductance of a coil of the wire and shape at hand',
} as const;
const ohms = { quantity: 'resistance', min: 1e-4, max: 100, summary: 'its resistance' } as const;
const cable = {
  quantity: 'resistance',
  min: 0,
  max: 100,
  default: 0,
  summary: 'further resistance, cable and contacts',
} as const;

interface Coil {
  readonly handover: number;
  readonly shape: number;
  readonly sample: number;
  readonly ohms: number;
  readonly cable: number;
}

/** Resistance of the coil that the driver in a box asks for. Same wire and shape: inductance goes with the fifth power of
 *  size, length of wire with the third. */
function resistanceFor(of: Box, coil: Coil): number {
  const { y } = solveImpedance(modelOf(of), Float64Array.of(coil.handover));
  const inductance = (coil.shape * y[0]!) / (2 * Math.PI * coil.handover);
  return coil.ohms * (inductance / coil.sample) ** 0.6 + coil.cable;
}

/** The box that suits the coil that suits the box: repeated until the resistance stands still. */
function closedLoop(boxFor: (series: number) => Box | Problem, coil: Coil): Box | Problem {
  let series = coil.cable;
  for (let round = 0; round < 100; round += 1) {
    const found = boxFor(series);
    if (found instanceof Problem) return found;
    const next = resistanceFor(found, coil);
    if (Math.abs(next - series) <= 1e-12 * (1 + next)) return found;
    series = next;
  }
  return new Problem(
    say`Box and coil do not settle: the coil has come to ${measured(series, 'resistance')}. Take thicker wire.`,
    'ohms',
  );
}

const source = {
  source: 'own',
  at: 'fixed point of coil resistance, Q and litres; resistance as inductance to the 3/5',
} as const;
const remarks =
  'The resistance of the coil raises Qes, which asks for other litres, in which the driver has another impedance at the hand-over. Read the volume and the series resistance off the box. Common practice, no source: a bass coil of more than 5 % of Re deserves thicker wire.';

export const closedCoilBox = define({
  name: 'CLOSED.COIL_BOX',
  summary: 'The closed box for a wanted total Q together with the coil ahead of its driver, each suiting the other.',
  parameters: { driver, qtc, handover, sample, ohms, shape, cable, fill },
  returns: { record: 'box', summary: 'the box, with the resistance of the coil in it' },
  source,
  example: {
    formula: `=CLOSED.COIL_BOX(${demoDriver}, 0.75, "400 Hz", "1 mH", "0.3 ohm", 2)`,
    gives: { qtc: 0.75 },
  },
  remarks,
  compute: (given): Box | Problem => {
    const known = need(given.driver, boxFields);
    if (known instanceof Problem) return known;
    return closedLoop((series) => {
      const shared = { driver: known, seriesResistance: series, fill: given.fill };
      const context = { quantity: 'ratio' } as const;
      const volume = closedVolumeFor.compute({ ...shared, qtc: given.qtc }, context);
      return volume instanceof Problem
        ? volume
        : closedBox.compute({ ...shared, volume, leakageQ: undefined, absorptionQ: undefined }, context);
    }, given);
  },
});

export const ventedCoilBox = define({
  name: 'VENTED.COIL_BOX',
  summary:
    'The vented box of a family of responses together with the coil ahead of its driver, each suiting the other.',
  parameters: { driver, family, handover, sample, ohms, shape, cable, leakageQ, fill },
  returns: { record: 'box', summary: 'the box, with the resistance of the coil in it' },
  source,
  example: {
    formula: `=VENTED.COIL_BOX(${demoDriver}, "QB3", "400 Hz", "1 mH", "0.3 ohm", 2)`,
    gives: { style: 'Vented box' },
  },
  remarks,
  compute: (given) =>
    closedLoop((series) => alignedBox(given.driver, given.family, given.leakageQ, series, given.fill), given),
});
