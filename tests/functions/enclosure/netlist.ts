import { Simulation } from 'eecircuit-engine';

/** A driver by its elements, SI, with a lossy voice coil. */
export interface Elements {
  readonly re: number;
  readonly le: number;
  readonly le2: number;
  readonly re2: number;
  readonly bl: number;
  readonly mms: number;
  readonly cms: number;
  readonly rms: number;
  readonly sd: number;
}

/** A volume by its acoustic elements: compliance, and what is beside it. */
export interface Acoustics {
  readonly compliance: number;
  /** In series with the compliance. */
  readonly absorption?: number;
  readonly leak?: number;
  /** Parts in series: mass, resistance, compliance. */
  readonly opening?: { readonly mass: number; readonly resistance: number; readonly compliance?: number };
}

/** The elements from a node of pressure to the room: named by a letter, currents measured by VC, VL and VO. */
function chamber(node: string, tag: string, of: Acoustics): string[] {
  const { compliance, absorption = 0, leak, opening } = of;
  return [
    `Vc${tag} ${node} ${tag}1 0`,
    `Ra${tag} ${tag}1 ${tag}2 ${String(absorption + 1e-6)}`,
    `Ca${tag} ${tag}2 0 ${String(compliance)}`,
    `Vl${tag} ${node} ${tag}3 0`,
    `Rl${tag} ${tag}3 0 ${String(leak ?? 1e18)}`,
    ...(opening === undefined
      ? []
      : [
          `Vo${tag} ${node} ${tag}4 0`,
          `Lo${tag} ${tag}4 ${tag}5 ${String(opening.mass)}`,
          ...(opening.compliance === undefined
            ? [`Ro${tag} ${tag}5 0 ${String(opening.resistance + 1e-6)}`]
            : [
                `Ro${tag} ${tag}5 ${tag}6 ${String(opening.resistance)}`,
                `Co${tag} ${tag}6 0 ${String(opening.compliance)}`,
              ]),
        ]),
  ];
}

/** Impedance analogue: voltage is force and pressure, current is velocity and volume velocity. One volt of drive. */
export function netlist(of: Elements, series: number, rear: Acoustics, front?: Acoustics): string[] {
  const size = String(of.sd);
  return [
    'Vs s 0 AC 1',
    `Rg s t ${String(series + 1e-9)}`,
    `Re t e1 ${String(of.re)}`,
    `Le e1 e2 ${String(of.le)}`,
    `L2 e2 e3 ${String(of.le2)}`,
    `R2 e2 e3 ${String(of.re2)}`,
    'Vi e3 e4 0',
    `Hb e4 0 Vv ${String(of.bl)}`,
    `Hf m1 0 Vi ${String(of.bl)}`,
    `Lm m1 m2 ${String(of.mms)}`,
    `Cm m2 m3 ${String(of.cms)}`,
    `Rm m3 m4 ${String(of.rms)}`,
    'Vv m4 m5 0',
    `Ep m6 m5 pb 0 ${size}`,
    ...(front === undefined ? ['Vm m6 0 0'] : [`Ef m6 0 pf 0 ${size}`, `Ff 0 pf Vv ${size}`]),
    `Fu pb 0 Vv ${size}`,
    ...chamber('pb', 'b', rear),
    ...(front === undefined ? [] : chamber('pf', 'f', front)),
  ];
}

export interface Complex {
  readonly real: number;
  readonly img: number;
}

/** Alternating-current results by name, lower case: `v(t)`, `i(vi)`. */
export async function simulate(lines: readonly string[], sweep = 'dec 16 10 2000'): Promise<Map<string, Complex[]>> {
  const simulation = new Simulation();
  await simulation.start();
  simulation.setNetList(['box', ...lines, `.ac ${sweep}`, '.save all', '.end', ''].join('\n'));
  const result = await simulation.runSim();
  if (result.dataType !== 'complex') throw new Error('the simulator gave no alternating-current result');
  return new Map(result.data.map(({ name, values }) => [name.toLowerCase(), values as Complex[]]));
}

export const times = (a: Complex, b: Complex): Complex => ({
  real: a.real * b.real - a.img * b.img,
  img: a.real * b.img + a.img * b.real,
});
export const over = (a: Complex, b: Complex): Complex => {
  const size = b.real ** 2 + b.img ** 2;
  return times(a, { real: b.real / size, img: -b.img / size });
};
export const plus = (a: Complex, b: Complex): Complex => ({ real: a.real + b.real, img: a.img + b.img });
