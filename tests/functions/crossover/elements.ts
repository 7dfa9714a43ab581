import type { Elements } from './circuit.ts';

// The drivers of a three-way as the elements of a circuit.
export const woofer: Elements = {
  re: 5.7,
  le: 0.00062,
  bl: 7.3,
  mms: 0.0158,
  cms: 0.00092,
  rms: 1.35,
  sd: 0.0137,
  volume: 0.009,
};
export const tweeter: Elements = { re: 5.1, le: 3.5e-5, bl: 2.9, mms: 0.00034, cms: 8.5e-5, rms: 0.45, sd: 0.00071 };
export const middle: Elements = {
  re: 5.8,
  le: 0.00025,
  bl: 5.5,
  mms: 0.0046,
  cms: 0.00106,
  rms: 0.58,
  sd: 0.0054,
  volume: 0.004,
};
