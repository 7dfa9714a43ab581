import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { frequencies } from '../values/grid.ts';

/** Width times the frequency at which the step is half done, m/s. */
const widthTimesFrequency = 115;

/** The frequency at which half of the step of a panel is passed. */
export const middleOfStep = (width: number): number => widthTimesFrequency / width;

const width = { ...usual.length, summary: 'width of the front panel', typical: [0.08, 1] } as const;
const makeUp = {
  quantity: 'level',
  min: 0,
  max: 60,
  summary: 'how much of the step is made up',
  typical: [0, 6],
} as const;
const ohms = { ...usual.ohms, summary: 'ohms of the driver near the step' } as const;

const shelfOhms = (makeUpLevel: number, load: number): number => load * (10 ** (makeUpLevel / 20) - 1);

export const edgeFrequency = define({
  name: 'EDGE.FREQUENCY',
  summary: 'The frequency at which half of the edge step of a front panel is passed.',
  parameters: { width },
  returns: { quantity: 'frequency', summary: 'frequency of the middle of the step' },
  source: {
    source: 'practice',
    at: '115 m/s over the width, as articles on the diffraction step give it after Olson 1969',
  },
  example: { formula: '=EDGE.FREQUENCY("220 mm")', gives: 523 },
  remarks: 'For a driver well inside a panel taller than wide, far from walls. Ripple from the edges comes on top.',
  compute: (given) => middleOfStep(given.width),
});

export const edgeStep = define({
  name: 'EDGE.STEP',
  summary: 'The loss of level towards low frequencies as sound wraps round the cabinet.',
  parameters: { width },
  returns: { record: 'curve', of: 'level', summary: 'level in dB: 0 high up, −6 low down' },
  source: { source: 'own', at: 'first-order step from half to full pressure, −3.01 dB at EDGE.FREQUENCY' },
  example: { formula: '=EDGE.STEP("220 mm")', gives: { quantity: 'level', title: 'Edge step' } },
  remarks:
    'Smooth mean of what a real panel does. Near a wall behind, less is lost: make up 3 to 4.5 dB rather than 6.',
  compute(given) {
    const middle = middleOfStep(given.width);
    const tangents = frequencies.map((frequency) => (Math.SQRT1_2 * frequency) / middle);
    return {
      kind: 'curve' as const,
      title: 'Edge step',
      quantity: 'level' as const,
      y: tangents.map((t) => 10 * Math.log10((0.25 + t ** 2) / (1 + t ** 2))),
      phase: tangents.map((t) => Math.atan(2 * t) - Math.atan(t)),
      from: frequencies[0]!,
      to: frequencies[frequencies.length - 1]!,
    };
  },
});

export const edgeShelfResistance = define({
  name: 'EDGE.SHELF_RESISTANCE',
  summary: 'The resistor of the shelf in series with a driver that makes up the edge step.',
  parameters: { width, makeUp, ohms },
  returns: { quantity: 'resistance', summary: 'resistor across the coil' },
  source: { source: 'own', at: 'loss of a series resistor, R = Z·(10^(A/20) − 1)' },
  example: { formula: '=EDGE.SHELF_RESISTANCE("220 mm", "4.5 dB", "6.4 Ω")', gives: 4.3 },
  remarks:
    'Take the ohms above the step, where the resistor works, not the nominal ohms. The width does not change it; it stands here so that resistor and coil take the same arguments.',
  compute: (given) => shelfOhms(given.makeUp, given.ohms),
});

export const edgeShelfInductance = define({
  name: 'EDGE.SHELF_INDUCTANCE',
  summary: 'The coil of the shelf in series with a driver that makes up the edge step.',
  parameters: { width, makeUp, ohms },
  returns: { quantity: 'inductance', summary: 'coil across the resistor' },
  source: { source: 'own', at: 'half of the loss in dB at EDGE.FREQUENCY, L = R·10^(−A/40)/(2πf)' },
  example: { formula: '=EDGE.SHELF_INDUCTANCE("220 mm", "4.5 dB", "6.4 Ω")', gives: 0.00102 },
  remarks:
    'For a load that is a resistance around the step; a rising impedance moves the shelf. Choose a coil of low resistance.',
  compute: (given) =>
    (shelfOhms(given.makeUp, given.ohms) * 10 ** (-given.makeUp / 40)) / (2 * Math.PI * middleOfStep(given.width)),
});
