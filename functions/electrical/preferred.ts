const e24 = [
  1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2,
  9.1,
];
const every = (step: number): readonly number[] => e24.filter((_, index) => index % step === 0);
/** E48 and E96 are the rounded geometric series; the coarser ones are not, and E192 has one exception, 9.20 for 9.19. */
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
  E192: rounded(192).map((value) => (value === 9.19 ? 9.2 : value)),
} as const;

export type Series = keyof typeof preferred;

export const seriesNames = ['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192'] as const satisfies readonly Series[];

/** The tolerance that each series goes with. */
export const toleranceOf: Readonly<Record<Series, number>> = {
  E3: 0.4,
  E6: 0.2,
  E12: 0.1,
  E24: 0.05,
  E48: 0.02,
  E96: 0.01,
  E192: 0.005,
};

const decades = new Map<string, readonly number[]>();

/** The standard values of one decade, from 10^power. */
function decadeOf(series: Series, power: number): readonly number[] {
  const key = `${series}e${String(power)}`;
  const known = decades.get(key);
  if (known) return known;
  const made = preferred[series].map((number) => Number(`${String(number)}e${String(power)}`));
  decades.set(key, made);
  return made;
}

/** Standard values of the decade of a value and of so many to either side, ascending. */
export function standardAround(wanted: number, series: Series, beside = 1): readonly number[] {
  const power = Math.floor(Math.log10(wanted));
  return Array.from({ length: 2 * beside + 1 }, (_, index) => decadeOf(series, power - beside + index)).flat();
}

/** The standard values next to a value, up to so many below and above it, ascending. */
export function standardNear(wanted: number, series: Series, count: number): readonly number[] {
  const power = Math.floor(Math.log10(wanted));
  const decade = decadeOf(series, power);
  const above = decade.findIndex((each) => each >= wanted);
  const middle = (above < 0 ? decade.length : above) + decade.length;
  const all = [...decadeOf(series, power - 1), ...decade, ...decadeOf(series, power + 1)];
  return all.slice(Math.max(0, middle - count), middle + count);
}
