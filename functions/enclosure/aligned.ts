import { define } from '../define.ts';
import { need, type With } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import type { Driver } from '../values/driver.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { bessel, butterworth, c4, coincident, qb3, rippled, type Alignment } from './alignment.ts';
import { boxFields } from './box-driver.ts';
import { demoDriver, driver, fill, leakageQ, seriesResistance } from './parameters.ts';
import { seriesQts } from './qtc.ts';
import { usual } from '../usual.ts';

const fixedFamilies = ['B4', 'Bessel', 'C4'] as const;
const families = ['flattest', 'QB3', 'C4', 'SC4', 'B4', 'Bessel', 'SBB4'] as const;
type FamilyName = (typeof families)[number];

const source = { source: 'small1973vented', at: 'fourth-order responses with leakage losses' } as const;

/** How near a total Q must lie to one that an alignment fixes, relative. */
const near = 0.005;

/** One alignment at a fixed total Q, or what to do about a driver that has another. */
function only(found: Alignment, total: number, known: With<'qms' | 'qes' | 're'>): Alignment | Problem {
  if (Math.abs(total / found.qts - 1) <= near) return found;
  const wanted = measured(found.qts, 'ratio');
  const more = seriesFor(known, found.qts);
  const remedy =
    more !== undefined && total < found.qts
      ? say`${measured(more, 'resistance')} in series brings it there, or take QB3, which suits every lower Qts.`
      : say`Resistance only raises it: take flattest, or a driver with a lower Qts.`;
  return new Problem(
    say`This response needs a Qts of ${wanted}, but the driver has ${measured(total, 'ratio')} with its series resistance. ${remedy}`,
    'family',
  );
}

/** The series resistance that brings a driver to a total Q above its own; `undefined` where none can. */
function seriesFor({ qms, qes, re }: With<'qms' | 'qes' | 're'>, wanted: number): number | undefined {
  const electrical = 1 / (1 / wanted - 1 / qms);
  return electrical > 0 ? re * (electrical / qes - 1) : undefined;
}

/** The alignment of a family for a driver with its series resistance. */
export function alignmentFor(
  given: Driver,
  family: FamilyName,
  leakage: number,
  series: number,
): { readonly known: With<(typeof boxFields)[number]>; readonly found: Alignment } | Problem {
  const known = need(given, boxFields);
  if (known instanceof Problem) return known;
  const total = seriesQts(known, series);
  if (total instanceof Problem) return total;
  const flattest = butterworth(leakage);
  const open: Record<Exclude<FamilyName, 'B4' | 'Bessel'>, () => Alignment | undefined> = {
    flattest: () => (total <= flattest.qts ? qb3(total, leakage) : c4(total, leakage)),
    QB3: () => qb3(total, leakage),
    C4: () => (total >= flattest.qts * (1 - near) ? c4(total, leakage) : undefined),
    SC4: () => (total <= flattest.qts * (1 + near) ? c4(total, leakage) : undefined),
    SBB4: () => coincident(total, leakage),
  };
  if (family === 'B4' || family === 'Bessel') {
    const found = only(family === 'B4' ? flattest : bessel(leakage), total, known);
    return found instanceof Problem ? found : { known, found };
  }
  const found = open[family]();
  if (found !== undefined) return { known, found };
  const edge = measured(flattest.qts, 'ratio');
  const side =
    family === 'C4' && total < flattest.qts
      ? say`C4 begins at ${edge}: take QB3 or SC4 for a lower one.`
      : family === 'SC4' && total > flattest.qts
        ? say`SC4 ends at ${edge}: take C4 for a higher one.`
        : say`A closed box suits a driver of a higher Qts, less loss or another family one of a lower.`;
  return new Problem(say`No ${family} box exists for a Qts of ${measured(total, 'ratio')}. ${side}`, 'family');
}

/** A driver in the vented box of a family, or why there is none. */
export function alignedBox(
  given: Driver,
  family: FamilyName,
  leakage: number,
  series: number,
  filling: number,
): Box | Problem {
  const result = alignmentFor(given, family, leakage, series);
  if (result instanceof Problem) return result;
  const { known, found } = result;
  return {
    kind: 'box',
    style: 'vented',
    driver: known,
    volume: known.vas / found.ratio / filling,
    tuning: known.fs * found.tuning,
    fill: filling,
    seriesResistance: series,
    leakageQ: leakage,
    absorptionQ: Infinity,
    portQ: Infinity,
  };
}

export const family = {
  choice: families,
  default: 'flattest',
  summary: 'family of responses: flattest takes QB3 up to the Qts of B4 and C4 above it',
} as const;

export const ventedAligned = define({
  name: 'VENTED.ALIGNED',
  summary:
    'A driver in the vented box of a family of responses, volume and tuning solved from its polynomial with losses.',
  parameters: { driver, family, leakageQ, seriesResistance, fill },
  returns: { record: 'box', summary: 'the box' },
  source,
  example: { formula: `=VENTED.ALIGNED(${demoDriver}, "SC4")`, gives: { volume: 0.0222 } },
  remarks:
    'B4 maximally flat, QB3 quasi third order, C4 equal ripple, which grows with Qts and is told by BOX.RIPPLE, SC4 its continuation below B4, SBB4 with two coincident pairs of poles and the tuning at Fs (from memory). B4 and Bessel exist for one Qts only: VENTED.ALIGNED_SERIES says how to come to it.',
  compute: (given) => alignedBox(given.driver, given.family, given.leakageQ, given.seriesResistance, given.fill),
});

const fixed = {
  choice: fixedFamilies,
  default: 'B4',
  summary: 'response: B4 maximally flat, Bessel, C4 of a ripple',
} as const;
const ripple = {
  ...usual.level,
  min: 1e-6,
  max: 6,
  default: 0.1,
  typical: [0.01, 3],
  summary: 'ripple wanted, for C4',
} as const;

const fixedAt = (name: string, wanted: number, leakage: number): Alignment | undefined =>
  name === 'B4' ? butterworth(leakage) : name === 'Bessel' ? bessel(leakage) : rippled(wanted, leakage);

const noSuch = (): Problem =>
  new Problem(
    say`No vented box with this leak has so much ripple: ask for less ripple or a higher leakage Q.`,
    'ripple',
  );

export const ventedAlignedQts = define({
  name: 'VENTED.ALIGNED_QTS',
  summary: 'The total Q that a driver must have for a maximally flat, a Bessel or an equal-ripple response.',
  parameters: { response: fixed, ripple, leakageQ },
  returns: { quantity: 'ratio', summary: 'total Q' },
  source: { source: 'thiele1971', at: 'table of alignments, B4 and C4 without losses; leakage after Small 1973' },
  example: { formula: '=VENTED.ALIGNED_QTS("B4")', gives: 0.4048 },
  compute: (given) => {
    const found = fixedAt(given.response, given.ripple, given.leakageQ);
    return found === undefined || found.ratio <= 0 ? noSuch() : found.qts;
  },
});

export const ventedAlignedSeries = define({
  name: 'VENTED.ALIGNED_SERIES',
  summary: 'The series resistance that brings a driver to a maximally flat, a Bessel or an equal-ripple response.',
  parameters: { driver, response: fixed, ripple, leakageQ },
  returns: { quantity: 'resistance', summary: 'series resistance' },
  source: { source: 'small1973vented', at: 'fourth-order responses; Qes grows by (Re + R)/Re' },
  example: { formula: `=VENTED.ALIGNED_SERIES(${demoDriver}, "B4")`, gives: 0.31 },
  remarks: 'Give it to VENTED.ALIGNED as its series resistance. It costs level: see BOX.SERIES_LOSS.',
  compute: (given) => {
    const known = need(given.driver, ['qms', 'qes', 're']);
    if (known instanceof Problem) return known;
    const found = fixedAt(given.response, given.ripple, given.leakageQ);
    if (found === undefined || found.ratio <= 0) return noSuch();
    const needed = seriesFor(known, found.qts);
    if (needed !== undefined && needed >= 0) return needed;
    const own = 1 / (1 / known.qms + 1 / known.qes);
    return needed === undefined
      ? new Problem(
          say`The driver's Qms of ${measured(known.qms, 'ratio')} is below the Qts of ${measured(found.qts, 'ratio')} that this response needs.`,
          'driver',
        )
      : new Problem(
          say`The driver's Qts of ${measured(own, 'ratio')} is above the ${measured(found.qts, 'ratio')} that this response needs, and resistance only raises it: take more ripple or a driver with a lower Qts.`,
          'driver',
        );
  },
});
