import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { frequencies } from '../values/grid.ts';

/** Width times the frequency at which the step is half done, m/s. */
const widthTimesFrequency = 115;

/** The frequency at which half of the step of a panel is passed. */
export const middleOfStep = (width: number): number => widthTimesFrequency / width;

export const width = { ...usual.length, summary: 'width of the front panel', typical: [0.08, 1] } as const;
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
