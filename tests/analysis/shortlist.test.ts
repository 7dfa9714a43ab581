import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BestRows, Front } from '../../src/analysis/best-rows.ts';
import { driverOfCandidate } from '../../src/analysis/shortlist/candidate-driver.ts';
import { shortlist } from '../../src/analysis/shortlist/shortlist.ts';
import type { Candidate, ShortlistQuestion } from '../../src/analysis/types.ts';
import { usualRules as rules } from '../../src/analysis/shortlist/usual-rules.ts';
import { pairByRules } from '../../functions/pairing/by-rules.ts';
import { pairVerdict } from '../../functions/pairing/verdict.ts';
import { Problem } from '../../functions/values/problem.ts';

const driver = (
  name: string,
  [fs, sd, xmax, flange, breakup, level, re, price]: readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ],
): Candidate => ({
  id: name,
  name,
  rows: {
    'Resonance Fs': `${fs} Hz`,
    'Radiating area Sd': `${sd} cm²`,
    'One-way travel Xmax': `${xmax} mm`,
    'Flange diameter': `${flange} mm`,
    'First break-up': `${breakup} Hz`,
    'Level at 1 m': `${level} dB`,
    'Level basis': 'at 2.83 V',
    'Coil resistance Re': `${re} Ω`,
    'Price each': `${price} ¤`,
  },
});

const none: Candidate = { id: '', name: 'none', rows: {} };

const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => Number(value.toPrecision(4)));
const woofer = fc.tuple(
  between(20, 90),
  between(50, 500),
  between(2, 12),
  between(120, 320),
  between(1500, 9000),
  between(82, 95),
  between(3, 7),
  between(20, 200),
);
const tweeter = fc.tuple(
  between(400, 1800),
  between(4, 12),
  between(0.2, 0.8),
  between(60, 130),
  between(15e3, 3e4),
  between(86, 96),
  between(3, 7),
  between(15, 120),
);
const question = (part: Partial<ShortlistQuestion>): ShortlistQuestion => ({
  lists: [],
  rules,
  ranking: 'window*10-price/100',
  most: 1000,
  ...part,
});

describe('the shortlist of pairs', () => {
  test('gives each pair the window and verdict of the sheet functions', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(woofer, { minLength: 1, maxLength: 4 }),
        fc.array(tweeter, { minLength: 1, maxLength: 4 }),
        async (low, high) => {
          const woofers = low.map((each, index) => driver(`W${index}`, each));
          const tweeters = high.map((each, index) => driver(`T${index}`, each));
          const { rows, judged } = await shortlist(question({ lists: [woofers, tweeters] }));
          expect(judged).toBe(low.length * high.length);
          for (const {
            members: [w = -1, t = -1],
            windows: [window],
            status,
            word,
            pads,
            level,
          } of rows) {
            const [lower, upper] = [driverOfCandidate(woofers[w] ?? none), driverOfCandidate(tweeters[t] ?? none)];
            if ('why' in lower || 'why' in upper) throw new Error('no driver');
            const table = [rules.resonance, rules.travel, rules.narrowing, rules.breakup, rules.spacing];
            const { target, slope, angle, gap } = rules;
            const wanted = pairByRules.compute(
              { lower, upper, target, slope, angle, gap, rules: table },
              { quantity: 'ratio' },
            );
            if (wanted instanceof Problem) throw new Error('no window');
            expect(window?.octaves).toBe(wanted.octaves);
            expect(window?.stretchedOctaves).toBe(wanted.stretchedOctaves);
            expect([window?.floor, window?.ceiling]).toEqual([wanted.low.name, wanted.high.name]);
            const verdict = pairVerdict.compute({ window: wanted, comfortable: 0.5 }, { quantity: 'ratio' });
            expect(verdict).toMatchObject({ status, word });
            expect(pads[0]).toBe((upper.level ?? 0) - level);
          }
        },
      ),
      { numRuns: 60 },
    );
  }, 60_000);

  test('ranks by the formula, tells who has no partner and why, and what cannot take part', async () => {
    const woofers = [
      driver('W', [38, 132, 5.5, 166, 5200, 89.2, 5.8, 62]),
      driver('Deep', [20, 2000, 12, 460, 900, 92, 5, 200]),
    ];
    const { rows: bare } = { rows: { Name: 'Bare', Fs: '40 Hz' } };
    const tweeters = [
      driver('T', [850, 7, 0.35, 104, 22000, 90, 5.6, 34]),
      driver('Dear', [850, 7, 0.35, 104, 22000, 90, 5.6, 340]),
    ];
    const { rows, partners, counts } = await shortlist(
      question({ lists: [[...woofers, { id: 'b', name: 'Bare', rows: bare }], tweeters], ranking: '-price' }),
    );
    expect(rows.map(({ names }) => names.join(' '))).toEqual(['W T', 'Deep T', 'W Dear', 'Deep Dear']);
    expect(partners[0]?.[0]?.best?.names).toEqual(['W', 'T']);
    expect(partners[0]?.[1]?.why).toContain('begins low enough');
    expect(partners[0]?.[2]?.why).toContain('Bare has no Sd');
    expect(counts).toEqual({ good: 0, caution: 2, fail: 2, problem: 2 });
  });

  test('a team of three has the narrower of the two windows of its pairs', async () => {
    const woofers = [driver('W', [30, 330, 8, 260, 2500, 90, 5.8, 90])];
    const mids = [driver('M', [90, 80, 3, 130, 8000, 90, 5.8, 60])];
    const tweeters = [driver('T', [850, 7, 0.35, 104, 22000, 90, 5.6, 34])];
    const [team] = (await shortlist(question({ lists: [woofers, mids, tweeters] }))).rows;
    const [low] = (await shortlist(question({ lists: [woofers, mids] }))).rows;
    const [high] = (await shortlist(question({ lists: [mids, tweeters] }))).rows;
    expect(team?.windows).toEqual([...(low?.windows ?? []), ...(high?.windows ?? [])]);
    expect(team?.price).toBe(2 * 184);
  });

  test('one driver in two places is no team', async () => {
    const [a, b] = [
      driver('A', [52, 85, 4.5, 132, 6500, 88.6, 5.9, 38]),
      driver('B', [60, 85, 4.5, 132, 6500, 88.6, 5.9, 38]),
    ];
    const tweeters = [driver('T', [850, 7, 0.35, 104, 22000, 90, 5.6, 34])];
    const { rows, outside, judged } = await shortlist(question({ lists: [[a, b], [a, b], tweeters] }));
    expect(rows.map(({ names }) => names.join(' ')).sort()).toEqual(['A B T', 'B A T']);
    expect([outside, judged]).toEqual([2, 2]);
  });

  test('a formula that cannot be read is refused, and a long list can be given up', async () => {
    await expect(shortlist(question({ ranking: 'loudness*2' }))).rejects.toThrow('cannot be read');
    await expect(shortlist(question({ ranking: 'window*(' }))).rejects.toThrow('cannot be read');
    const many = Array.from({ length: 200 }, (_, index) =>
      driver(`D${index}`, [500, 30, 1, 100 + index, 9000, 90, 5, 10]),
    );
    const control = new AbortController();
    const watch = { signal: control.signal, progress: () => control.abort() };
    await expect(shortlist(question({ lists: [many, many] }), watch)).rejects.toThrow('given up');
  });
});

test('the best few and the front are those of brute force', () => {
  const point = fc.tuple(
    ...([0, 1, 2, 3].map(() => fc.integer({ min: 0, max: 5 })) as [
      fc.Arbitrary<number>,
      fc.Arbitrary<number>,
      fc.Arbitrary<number>,
      fc.Arbitrary<number>,
    ]),
  );
  fc.assert(
    fc.property(fc.array(point, { maxLength: 60 }), fc.integer({ min: 1, max: 8 }), (points, most) => {
      const best = new BestRows(most);
      const front = new Front();
      for (const [id, [a, b, c, d]] of points.entries()) {
        best.offer(a, id);
        front.offer(id, a, b, c, d);
      }
      const order = points.map(([a], id) => ({ id, score: a })).sort((x, y) => y.score - x.score || x.id - y.id);
      expect(best.sorted()).toEqual(order.slice(0, most));
      const isBeaten = (one: readonly number[]): boolean =>
        points.some(
          (other) =>
            other.every((value, index) => value >= (one[index] ?? 0)) &&
            other.some((value, index) => value > (one[index] ?? 0)),
        );
      expect(front.ids.sort((x, y) => x - y)).toEqual(points.flatMap((each, id) => (isBeaten(each) ? [] : [id])));
    }),
  );
});
