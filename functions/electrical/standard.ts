import { define } from '../define.ts';

const e24 = [
  1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2,
  9.1,
];
const every = (step: number): readonly number[] => e24.filter((_, index) => index % step === 0);
/** E48 and E96 are the rounded geometric series; the coarser ones are not. */
const rounded = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => Math.round(100 * 10 ** (index / count)) / 100);

/** The preferred numbers of one decade, from 1 to below 10. */
export const preferred = {
  E3: every(8),
  E6: every(4),
  E12: every(2),
  E24: e24,
  E48: rounded(48),
  E96: rounded(96),
} as const;

type Series = keyof typeof preferred;

const value = { quantity: 'any', min: 1e-15, max: 1e15, summary: 'wanted value' } as const;
const series = {
  choice: ['E3', 'E6', 'E12', 'E24', 'E48', 'E96'],
  default: 'E12',
  summary: 'series of preferred numbers',
} as const;
const source = { source: 'iec60063', at: 'series E3 to E96' } as const;

/** Standard values around a value, ascending: those of its decade and one to either side. */
function around(wanted: number, name: string): readonly number[] {
  const decade = Math.floor(Math.log10(wanted));
  return [decade - 1, decade, decade + 1].flatMap((power) =>
    preferred[name as Series].map((number) => Number(`${number}e${power}`)),
  );
}

const slack = 1e-9;

export const standardNearest = define({
  name: 'STANDARD.NEAREST',
  summary: 'The nearest value that resistors, coils or capacitors are made in.',
  parameters: { value, series },
  returns: { quantity: 'any', summary: 'preferred value, nearest by ratio' },
  source,
  example: { formula: '=STANDARD.NEAREST("2.78 Ω", "E12")', gives: 2.7 },
  remarks:
    'Nearest by ratio, not by difference. E12 is sold everywhere; E24 and finer less so in large resistors. Coils are often made in other values.',
  compute: (given) =>
    around(given.value, given.series).reduce((best, next) =>
      Math.abs(Math.log(next / given.value)) < Math.abs(Math.log(best / given.value)) ? next : best,
    ),
});

export const standardBelow = define({
  name: 'STANDARD.BELOW',
  summary: 'The largest standard value that is not above a value.',
  parameters: { value, series },
  returns: { quantity: 'any', summary: 'preferred value, at most the given one' },
  source,
  example: { formula: '=STANDARD.BELOW("7.27 Ω", "E12")', gives: 6.8 },
  remarks: 'A value that is itself standard stays.',
  compute: (given) =>
    around(given.value, given.series)
      .filter((each) => each <= given.value * (1 + slack))
      .at(-1)!,
});

export const standardAbove = define({
  name: 'STANDARD.ABOVE',
  summary: 'The smallest standard value that is not below a value.',
  parameters: { value, series },
  returns: { quantity: 'any', summary: 'preferred value, at least the given one' },
  source,
  example: { formula: '=STANDARD.ABOVE("7.27 Ω", "E12")', gives: 8.2 },
  remarks: 'A value that is itself standard stays.',
  compute: (given) => around(given.value, given.series).find((each) => each >= given.value * (1 - slack))!,
});
