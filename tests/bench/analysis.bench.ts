import { bench, describe } from 'vitest';
import { scatter } from '../../src/analysis/scatter/scatter.ts';
import { DocumentModel } from '../../src/analysis/model/document-model.ts';
import { shortlist } from '../../src/analysis/shortlist/shortlist.ts';
import type { Candidate } from '../../src/analysis/types.ts';
import { usualRules as rules } from '../../src/analysis/shortlist/usual-rules.ts';
import { named, templateNamed } from '../analysis/documents.ts';

const once = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 } as const;

/** Invented drivers that differ by their number. */
const drivers = (count: number, [fs, sd, xmax, flange, breakup]: readonly number[]): Candidate[] =>
  Array.from({ length: count }, (_, index) => {
    const share = 0.7 + 0.6 * ((index * 0.618) % 1);
    const other = 0.7 + 0.6 * ((index * 0.414) % 1);
    const times = (value = 0, by = share): string => String(Number((value * by).toPrecision(5)));
    return {
      id: `${fs} ${index}`,
      name: `D-${index}`,
      rows: {
        Fs: `${times(fs)} Hz`,
        Qms: '4',
        Qes: times(0.42, other),
        Vas: '28 L',
        Sd: `${times(sd, other)} cm²`,
        Xmax: `${times(xmax)} mm`,
        'Flange diameter': `${times(flange, other)} mm`,
        'First break-up': `${times(breakup)} Hz`,
        Level: `${times(90, 0.9 + 0.1 * other)} dB`,
        'Level basis': 'at 2.83 V',
        Re: `${times(5.8, other)} Ω`,
        Price: `${times(60)} ¤`,
        'Nominal ohms': '8 Ω',
        'Heat limit Pe': '60 W',
      },
    };
  });
const woofers = (count: number): Candidate[] => drivers(count, [38, 132, 5.5, 166, 5200]);
const mids = (count: number): Candidate[] => drivers(count, [120, 60, 3, 110, 9000]);
const tweeters = (count: number): Candidate[] => drivers(count, [850, 7, 0.35, 104, 22000]);

async function timed(name: string, of: number, run: (first: () => void) => Promise<unknown>): Promise<void> {
  const started = performance.now();
  const busy = process.cpuUsage();
  let first = Number.NaN;
  await run(() => {
    first = performance.now() - started;
  });
  const took = performance.now() - started;
  const { user, system } = process.cpuUsage(busy);
  const heap = process.memoryUsage().rss / 1e6;
  console.log(
    `${name}: ${took.toFixed(0)} ms (${((user + system) / 1000).toFixed(0)} ms of processor), ${((1000 * of) / took).toFixed(0)} a second, ${Number.isNaN(first) ? '' : `first rows after ${first.toFixed(0)} ms, `}${heap.toFixed(0)} MB in all`,
  );
}

describe('shortlists', () => {
  bench(
    'pairs, from ten thousand to ten million, and teams',
    async () => {
      const ranking = 'window*10-price/100';
      for (const count of [100, 316, 1000, 3162]) {
        const question = { lists: [woofers(count), tweeters(count)], rules, ranking, most: 100 };
        await timed(`${count ** 2} pairs`, count ** 2, (first) => shortlist(question, {}, first));
      }
      const team = { lists: [woofers(100), mids(100), tweeters(100)], rules, ranking, most: 100 };
      await timed('1000000 teams of three', 1e6, (first) => shortlist(team, {}, first));
    },
    once,
  );
});

describe('scatter', () => {
  bench(
    'the two-driver check with its curves and verdicts',
    async () => {
      const document = templateNamed('two-driver-check');
      const model = await DocumentModel.open(document);
      const causes = { cms: 0.12, bl: 0.03, mms: 0.03, re: 0.02 };
      const spreads = ['Woofer', 'Tweeter'].map((name) => ({
        kind: 'driver' as const,
        at: named(document, name),
        causes,
      }));
      const results = model.subject.results.filter(({ kind }) => kind === 'curve' || kind === 'verdict');
      for (const runs of [500, 5000])
        await timed(`${runs} runs`, runs, () => scatter(model, { document, spreads, results, runs, seed: 1 }));
      model.dispose();
    },
    once,
  );
});
