import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { onAxis, type Direction } from '../crossover/direction.ts';
import { usual } from '../usual.ts';
import { curveOf } from '../values/complex-curve.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { crossingsIn, extremeIn } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { panelField, type Panel } from './edge-field.ts';
import { distancesToEdges, offPanel, panel } from './panel.ts';

const diffraction = (given: Panel & Direction): Curve =>
  curveOf(
    { title: 'Edge diffraction', quantity: 'level', from: frequencies[0]!, to: frequencies.at(-1)! },
    panelField(given, given),
  );

/** Refuses a driver that is not on the flat of its panel. */
function misplaced(given: Panel): Problem | undefined {
  const off = offPanel(given);
  if (off) return off;
  const nearest = Math.min(...Object.values(distancesToEdges(given)));
  if (given.radius < nearest) return undefined;
  return new Problem(
    say`The rounding of ${measured(given.radius, 'length')} reaches under the middle of the driver, ${measured(nearest, 'length')} from the nearest edge; give a smaller radius or move the driver.`,
    'radius',
  );
}

const radius = {
  quantity: 'length',
  min: 0,
  max: 1,
  default: 0,
  summary: 'radius of the rounded edges',
  typical: [0, 0.075],
} as const;
const parameters = {
  ...panel,
  sd: { ...usual.area, min: 0, default: 0, summary: 'radiating area; a point when left out' },
  radius,
} as const;
const source = {
  source: 'miyamoto1962',
  at: 'boundary wave of Maggi and Rubinowicz for a source on the panel and a listener far away, 1 − ½·mean of e^(−jk·path) on the axis, as Kirchhoff’s integral over the panel comes to when it is done along each ray; a rounding spreads the turn along its arc',
} as const;
const angle = { quantity: 'angle', min: -Math.PI / 2, max: Math.PI / 2, default: 0 } as const;
const examplePlace = '"220 mm", "380 mm", "110 mm", "240 mm"';

export const edgeDiffraction = define({
  name: 'EDGE.DIFFRACTION',
  summary: 'What the edges of a rectangular front panel do to the level, on the axis or beside it: step and ripple.',
  parameters: {
    ...parameters,
    horizontal: { ...angle, summary: 'how far to the right of the axis of the panel' },
    vertical: { ...angle, summary: 'how far above it' },
  },
  returns: { record: 'curve', of: 'level', summary: 'level in dB: 0 as in a wide wall, −6 low down' },
  source,
  example: { formula: `=CURVE.AT(EDGE.DIFFRACTION(${examplePlace}), "1 kHz")`, gives: 2.49 },
  remarks:
    'Far away, first order only: each edge sends back what reaches it once. An estimate that shows where ripple comes from and what moving the driver does, not a measurement; the nearer to 90° off the axis, the rougher. A cone must lie on the panel. A wide one lights the edges less, and its own narrowing as a piston is in the level off the axis: add neither PISTON.OFF_AXIS nor EDGE.STEP.',
  compute: (given) => misplaced(given) ?? diffraction(given),
});

export const edgeRipple = define({
  name: 'EDGE.RIPPLE',
  summary: 'How far the level on the axis swings above the edge step.',
  parameters: {
    ...parameters,
    to: { ...usual.frequency, default: 20000, summary: 'highest frequency looked at' },
  },
  returns: { quantity: 'level', summary: 'highest less lowest level above the place where the step first is passed' },
  source,
  example: { formula: `=EDGE.RIPPLE(${examplePlace})`, gives: 5.3 },
  remarks: 'Compare places of the driver with it: the middle of a panel is the worst, uneven distances even out.',
  compute(given) {
    const wrong = misplaced(given);
    if (wrong) return wrong;
    const curve = diffraction({ ...given, ...onAxis });
    const [start] = crossingsIn(curve, { from: curve.from, to: curve.to }, 0, 'upwards');
    if (start === undefined || start >= given.to)
      return new Problem(
        say`Up to ${measured(given.to, 'frequency')} the step is not passed yet; look higher up.`,
        'to',
      );
    const band = { from: start, to: Math.min(given.to, curve.to) };
    return extremeIn(curve, band, 1).value - extremeIn(curve, band, -1).value;
  },
});

export const edgeRadius = define({
  name: 'EDGE.RADIUS_FREQUENCY',
  summary: 'The frequency above which rounding the edges with a radius begins to help.',
  parameters: { radius: { ...usual.length, summary: 'radius of the rounded edges', typical: [0.003, 0.075] } },
  returns: { quantity: 'frequency', summary: 'frequency where the radius is an eighth of a wavelength' },
  source: { source: 'practice', at: 'radius of an eighth of a wavelength, c/(8r)' },
  example: { formula: '=EDGE.RADIUS_FREQUENCY("19 mm")', gives: 2258 },
  remarks: 'A router bit of 6 mm begins above 7 kHz: it feels good and is hardly heard.',
  compute: (given) => soundSpeed / (8 * given.radius),
});
