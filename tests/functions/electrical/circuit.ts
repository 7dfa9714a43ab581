import { Simulation } from 'eecircuit-engine';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';

interface Complex {
  readonly re: number;
  readonly im: number;
}

/** A circuit of element values at alternating current; `sweep` as the simulator writes it, `dec 24 10 40k`. */
export async function simulate(
  elements: readonly string[],
  sweep: string,
): Promise<{ readonly frequency: readonly number[]; readonly of: (name: string) => readonly Complex[] }> {
  const simulation = new Simulation();
  await simulation.start();
  simulation.setNetList(['circuit', ...elements, `.ac ${sweep}`, '.save all', '.end', ''].join('\n'));
  const result = await simulation.runSim();
  if (result.dataType !== 'complex') throw new Error('the simulator gave no result at alternating current');
  const found = new Map(
    result.data.map(({ name, values }) => [name.toLowerCase(), values.map(({ real, img }) => ({ re: real, im: img }))]),
  );
  const of = (name: string): readonly Complex[] => {
    const values = found.get(name);
    if (!values) throw new Error(`no ${name} among ${[...found.keys()].join(', ')}`);
    return values;
  };
  return { frequency: of('frequency').map(({ re }) => re), of };
}

/** An impedance curve from real and imaginary ohms. */
export const ohmsCurve = (z: (frequency: number) => readonly [number, number], title = 'Load'): Curve => ({
  kind: 'curve',
  title,
  quantity: 'resistance',
  y: frequencies.map((f) => Math.hypot(...z(f))),
  phase: frequencies.map((f) => Math.atan2(z(f)[1], z(f)[0])),
  from: frequencies[0]!,
  to: frequencies.at(-1)!,
});
