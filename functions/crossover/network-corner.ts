import { define } from '../define.ts';
import type { Leg, Network } from '../values/network.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { solveLadderAt } from './ladder.ts';
import { demoLow, network, ohms } from './parameters.ts';

interface Order {
  readonly pass: 'low' | 'high';
  readonly order: number;
}

/** Which filter a ladder of single coils and capacitors is, or why it is none. */
function orderOfLadder({ name, legs }: Network): Order | Problem {
  const other = new Problem(
    say`“${name}” is not a plain low-pass or high-pass of coils and capacitors in turn; give the filter without pad, flattening and traps.`,
    'network',
  );
  const sides = legs.map((leg): Order['pass'] | undefined => {
    if (leg.resistance !== undefined || (leg.inductance === undefined) === (leg.capacitance === undefined)) return;
    return (leg.place === 'series') === (leg.inductance !== undefined) ? 'low' : 'high';
  });
  const [first] = sides;
  const inTurn = legs.every((leg, index) => index === 0 || leg.place !== legs[index - 1]!.place);
  if (first === undefined || !inTurn || sides.some((side) => side !== first)) return other;
  return { pass: first, order: legs.length };
}

const ideal = (leg: Leg): Leg => ({ ...leg, coilResistance: 0 });

/** Far outside every filter, where only the last asymptote is left, in hertz. */
const far = { low: 1e9, high: 1e-5 } as const;

/** Where the asymptote of the stop band meets the pass band. */
function cornerOf(legs: readonly Leg[], { pass, order }: Order, resistance: number): number {
  const at = far[pass];
  const load = { re: Float64Array.of(resistance), im: Float64Array.of(0) };
  const { transfer } = solveLadderAt(legs.map(ideal), load, Float64Array.of(at));
  const size = Math.hypot(transfer.re[0]!, transfer.im[0]!);
  return pass === 'low' ? at * size ** (1 / order) : at / size ** (1 / order);
}

const source = { source: 'own', at: 'last asymptote of the ladder on a resistance' } as const;

export const networkCorner = define({
  name: 'NETWORK.CORNER',
  summary: 'Where the slope of a low-pass or high-pass meets its pass band, as its parts are.',
  parameters: { network, ohms },
  returns: { quantity: 'frequency', summary: 'corner; the hand-over of Butterworth and Linkwitz–Riley slopes' },
  source,
  example: { formula: `=NETWORK.CORNER(NETWORK.ROUND(${demoLow}), "6.3 ohm")`, gives: 1930 },
  remarks:
    'Wire resistances are left out. A few per cent beside the hand-over wanted are less than the drivers themselves are off.',
  compute: (given): number | Problem => {
    const order = orderOfLadder(given.network);
    return order instanceof Problem ? order : cornerOf(given.network.legs, order, given.ohms);
  },
});

export const networkQ = define({
  name: 'NETWORK.Q',
  summary: 'The Q of a second-order low-pass or high-pass on a resistance, as its parts are.',
  parameters: { network, ohms },
  returns: { quantity: 'ratio', summary: '0.5 for LR2, 0.707 for BW2' },
  source: { source: 'own', at: 'Q = R·√(C/L)' },
  example: { formula: `=NETWORK.Q(NETWORK.ROUND(${demoLow}), "6.3 ohm")`, gives: 0.52 },
  compute: (given): number | Problem => {
    const order = orderOfLadder(given.network);
    if (order instanceof Problem) return order;
    const [coil] = given.network.legs.flatMap((leg) => leg.inductance ?? []);
    const [capacitor] = given.network.legs.flatMap((leg) => leg.capacitance ?? []);
    if (order.order === 2 && coil !== undefined && capacitor !== undefined)
      return given.ohms * Math.sqrt(capacitor / coil);
    return new Problem(
      say`“${given.network.name}” is of order ${String(order.order)}, and only a filter of order 2 has one Q; look at its response instead.`,
      'network',
    );
  },
});
