import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { density } from './parameters.ts';

/** The panel of a cabinet as a plate: its material and how its edges are held. */
const size = {
  length: { ...usual.length, summary: 'one edge of the panel' },
  width: { ...usual.length, summary: 'the other edge' },
  thickness: { ...usual.length, summary: 'thickness of the panel', typical: [0.003, 0.06] },
} as const;
const material = {
  edges: {
    choice: ['supported', 'clamped'],
    default: 'supported',
    summary: 'how the edges are held; a glued cabinet lies between',
  },
  stiffness: {
    quantity: 'pressure',
    min: 1e6,
    max: 1e12,
    default: 3e9,
    typical: [5e8, 2e10],
    summary: 'elastic modulus; 3 GPa is a common fibreboard',
  },
  density,
  poisson: { quantity: 'ratio', min: 0, max: 0.5, default: 0.3, summary: "Poisson's ratio" },
} as const;

interface Plate {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly edges: string;
  readonly stiffness: number;
  readonly density: number;
  readonly poisson: number;
}

/** First resonance of a thin rectangular plate. */
function firstMode({ length, width, thickness, edges, stiffness, density: mass, poisson }: Plate): number {
  const bending = (stiffness * thickness ** 3) / (12 * (1 - poisson ** 2));
  const [a, b] = [length ** -2, width ** -2];
  const shape = edges === 'clamped' ? Math.sqrt(504 * (a * a + b * b + (4 / 7) * a * b)) : Math.PI ** 2 * (a + b);
  return (shape / (2 * Math.PI)) * Math.sqrt(bending / (mass * thickness));
}

export const panelMode = define({
  name: 'PANEL.MODE',
  summary: 'First resonance of a cabinet panel without braces.',
  parameters: { ...size, ...material },
  returns: { quantity: 'frequency', summary: 'frequency of its first bending mode' },
  source: {
    source: 'leissa1969',
    at: 'simply supported: ω = π²(1/a² + 1/b²)√(D/ρh), exact; clamped: one-term Galerkin solution, 0.4 % high at most',
  },
  example: { formula: '=PANEL.MODE("360 mm", "280 mm", "18 mm")', gives: 353 },
  remarks:
    'Supported edges give the lowest answer, clamped ones the highest; a real panel lies between. Thin-plate theory, without the air on both sides.',
  compute: (given) => firstMode(given),
});

export const panelBraced = define({
  name: 'PANEL.BRACED',
  summary: 'First resonance of a panel with a brace across it: that of the larger part.',
  parameters: {
    ...size,
    at: { ...usual.length, summary: 'distance of the brace from one end, along the first edge' },
    ...material,
  },
  returns: { quantity: 'frequency', summary: 'frequency of the first mode of the larger part' },
  source: { source: 'leissa1969', at: 'simply supported or clamped plate, span by span' },
  example: { formula: '=PANEL.BRACED("360 mm", "280 mm", "18 mm", "198 mm")', gives: 659 },
  remarks:
    'A brace off the middle leaves two unequal parts, whose resonances do not add up at one frequency. The brace is taken as stiff.',
  compute(given) {
    if (given.at > given.length)
      return new Problem(
        say`A brace at ${measured(given.at, 'length')} lies beyond the panel of ${measured(given.length, 'length')}; place it on the panel.`,
        'at',
      );
    return firstMode({ ...given, length: Math.max(given.at, given.length - given.at) });
  },
});
