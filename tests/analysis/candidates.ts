import fc from 'fast-check';
import type { Candidate } from '../../src/analysis/types.ts';

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true }).map((value) => Number(value.toPrecision(4)));

interface Numbers {
  readonly fs: number;
  readonly qes: number;
  readonly sd: number;
  readonly xmax: number;
  readonly flange: number;
  readonly breakup: number;
  readonly level: number;
  readonly pe: number;
  readonly price: number;
}

const candidate = (name: string, { fs, qes, sd, xmax, flange, breakup, level, pe, price }: Numbers): Candidate => ({
  id: name,
  name,
  rows: {
    'Resonance Fs': `${fs} Hz`,
    Qms: '4',
    Qes: String(qes),
    Vas: '25 L',
    'Radiating area Sd': `${sd} cm²`,
    'One-way travel Xmax': `${xmax} mm`,
    'Flange diameter': `${flange} mm`,
    'First break-up': `${breakup} Hz`,
    'Level at 1 m': `${level} dB`,
    'Level basis': 'at 2.83 V',
    'Nominal ohms': '8 Ω',
    'Heat limit Pe': `${pe} W`,
    'Coil resistance Re': '5.8 Ω',
    'Price each': `${price} ¤`,
  },
});

const name = fc.string({ minLength: 1, maxLength: 6 });

export const wooferOf: fc.Arbitrary<Candidate> = fc
  .tuple(
    name,
    fc.record({
      fs: between(20, 90),
      qes: between(0.25, 1.2),
      sd: between(50, 500),
      xmax: between(2, 12),
      flange: between(120, 320),
      breakup: between(1500, 9000),
      level: between(82, 95),
      pe: between(20, 200),
      price: between(20, 200),
    }),
  )
  .map(([called, numbers]) => candidate(`W ${called}`, numbers));

export const tweeterOf: fc.Arbitrary<Candidate> = fc
  .tuple(
    name,
    fc.record({
      fs: between(400, 1800),
      qes: between(0.5, 2),
      sd: between(4, 12),
      xmax: between(0.2, 0.8),
      flange: between(60, 130),
      breakup: between(15e3, 3e4),
      level: between(86, 96),
      pe: between(4, 20),
      price: between(15, 120),
    }),
  )
  .map(([called, numbers]) => candidate(`T ${called}`, numbers));

/** Too few numbers for any question. */
export const bare: Candidate = { id: 'bare', name: 'Bare', rows: { Fs: '40 Hz' } };
