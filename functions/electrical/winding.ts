import { define } from '../define.ts';
import { usual } from '../usual.ts';

const core = { ...usual.length, typical: [0.005, 0.2], summary: 'diameter of the core that it is wound on' } as const;
const width = { ...usual.length, typical: [0.003, 0.1], summary: 'length of the winding along the core' } as const;
const depth = { ...usual.length, typical: [0.002, 0.1], summary: 'depth of the winding' } as const;
const source = {
  source: 'wheeler1928',
  at: 'many layers: L[µH] = 0.8·a²·N²/(6a + 9b + 10c) in inches; within about 1 % when the three terms are alike',
} as const;
const inch = 0.0254;

/** Henries of one turn squared. */
function perTurn({ core, width, depth }: { core: number; width: number; depth: number }): number {
  const [radius, along, deep] = [(core + depth) / 2 / inch, width / inch, depth / inch];
  return (0.8e-6 * radius ** 2) / (6 * radius + 9 * along + 10 * deep);
}

export const coilInductance = define({
  name: 'COIL.INDUCTANCE',
  summary: 'The inductance of an air coil of many layers as wound.',
  parameters: {
    turns: { quantity: 'ratio', min: 1, max: 1e6, typical: [10, 2000], summary: 'turns' },
    core,
    width,
    depth,
  },
  returns: { quantity: 'inductance', summary: 'inductance' },
  source,
  example: { formula: '=COIL.INDUCTANCE(150, "30 mm", "15 mm", "15 mm")', gives: 0.000854 },
  remarks:
    'Width is along the core, depth away from it: mixing them up is the usual slip. Wind a little more, then take off turns with a meter.',
  compute: (given) => perTurn(given) * given.turns ** 2,
});

export const coilTurnsOn = define({
  name: 'COIL.TURNS_ON',
  summary: 'The turns that an inductance takes on a core with a winding of stated size.',
  parameters: {
    inductance: { quantity: 'inductance', min: 1e-9, max: 10, typical: [1e-5, 0.02], summary: 'inductance' },
    core,
    width,
    depth,
  },
  returns: { quantity: 'ratio', summary: 'turns' },
  source,
  example: { formula: '=COIL.TURNS_ON("0.854 mH", "30 mm", "15 mm", "15 mm")', gives: 150 },
  remarks: 'The wire must fill that winding: its pitch is the root of width times depth over turns.',
  compute: (given) => Math.sqrt(given.inductance / perTurn(given)),
});
