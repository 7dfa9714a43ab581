import { checkWorst } from '../check/together.ts';
import { define, type Context, type Table } from '../define.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { measured, say, type Sentence } from '../values/say.ts';
import type { Verdict } from '../values/verdict.ts';
import { ruleTravel } from './rules.ts';
import { ruleBand, rulePad } from './rules-of-team.ts';
import { pairHandoverVerdict, pairVerdict } from './verdict.ts';

/** Reads a row or column of numbers. */
function numbersOf(table: Table, what: string, parameter: string): readonly number[] | Problem {
  const cells = table.flat();
  const at = cells.findIndex((cell) => typeof cell !== 'number' || !Number.isFinite(cell));
  if (at === -1) return cells as readonly number[];
  return new Problem(
    say`Cell ${String(at + 1)} of the ${what} holds no number; fill it or shorten the range.`,
    parameter,
  );
}

/** The same verdict with what it is about in front. */
const about = (subject: Sentence, verdict: Verdict): Verdict => ({
  ...verdict,
  reason: say`${subject}: ${verdict.reason}`,
});

const names = { 2: 'two-way', 3: 'three-way', 4: 'four-way', 5: 'five-way' } as const;

/** The first problem among results, or all the verdicts. */
function allOf(results: readonly (Verdict | Problem)[]): readonly Verdict[] | Problem {
  const problem = results.find((each) => each instanceof Problem);
  return problem ?? (results as readonly Verdict[]);
}

const worst = (results: readonly (Verdict | Problem)[], context: Context): Verdict | Problem => {
  const verdicts = allOf(results);
  return verdicts instanceof Problem ? verdicts : checkWorst.compute({ verdicts }, context);
};

export const teamVerdict = define({
  name: 'TEAM.VERDICT',
  summary: 'Whether the drivers of a loudspeaker of two to five ways work together, and what decides it.',
  parameters: {
    handovers: { table: true, of: 'frequency', summary: 'hand-overs, from low to high' },
    levels: {
      table: true,
      of: 'level',
      summary: 'level of each driver for 2.83 V, from low to high; the first less its make-up',
    },
    comfortable: {
      quantity: 'octaves',
      min: 0,
      max: 10,
      default: 0.5,
      summary: 'width of a window that is comfortable',
    },
    band: { quantity: 'octaves', min: 0, max: 12, default: 3, summary: 'octaves between hand-overs that are good' },
    pad: { quantity: 'level', min: 0, max: 60, default: 10, summary: 'pad above which there is a caution' },
    windows: { record: 'window', many: true, summary: 'window of each pair of neighbours, from low to high' },
  },
  returns: { record: 'verdict', summary: 'the worst of all checks, with a count of the others' },
  source: { source: 'practice', at: 'window, hand-over, band and level of every driver' },
  example: {
    formula:
      '=TEAM.VERDICT(C1, A1:B1, , , , PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz))',
    cells: { A1: '84.7 dB', B1: '90 dB', C1: '1808 Hz' },
    gives: { status: 'caution', word: 'Tight' },
  },
  remarks:
    'Every window is judged, every hand-over in its window, every band between two hand-overs, every pad. Each of them can be asked for alone: PAIR.VERDICT, PAIR.HANDOVER_VERDICT, RULE.BAND, RULE.PAD. Join the load and the travel to it with CHECK.WORST.',
  compute(given, context) {
    const { windows, comfortable } = given;
    const handovers = numbersOf(given.handovers, 'hand-overs', 'handovers');
    if (handovers instanceof Problem) return handovers;
    const levels = numbersOf(given.levels, 'levels', 'levels');
    if (levels instanceof Problem) return levels;
    if (
      handovers.length < 1 ||
      windows.length !== handovers.length ||
      levels.length !== handovers.length + 1 ||
      handovers.length > 4
    )
      return new Problem(
        say`There are ${String(levels.length)} levels, ${String(handovers.length)} hand-overs and ${String(windows.length)} windows; a team of n drivers, two to five, has n levels and one less of each other.`,
        'handovers',
      );
    const wrong = handovers.findIndex((each, index) => !(each > (handovers[index - 1] ?? 0)));
    if (wrong !== -1)
      return new Problem(
        say`Hand-over ${String(wrong + 1)}, ${measured(handovers[wrong]!, 'frequency')}, is not above ${wrong === 0 ? '0 Hz' : 'the one before it'}; list them from low to high.`,
        'handovers',
      );
    const pair = (index: number): Sentence => say`Drivers ${String(index + 1)} and ${String(index + 2)}`;
    const driver = (index: number): Sentence => say`Driver ${String(index + 1)}`;
    const results = [
      ...windows.flatMap((window, index) => [
        about(pair(index), pairVerdict.compute({ window, comfortable }, context) as Verdict),
        about(pair(index), pairHandoverVerdict.compute({ frequency: handovers[index]!, window }, context) as Verdict),
      ]),
      ...levels.slice(1).map((level, index) => {
        const judged = rulePad.compute({ system: levels[0]!, level, most: given.pad }, context);
        return judged instanceof Problem ? judged : about(driver(index + 1), judged);
      }),
      ...handovers.slice(1).map((high, index) => {
        const low = handovers[index]!;
        const judged = ruleBand.compute({ low, high, good: given.band, caution: Math.min(1, given.band) }, context);
        return judged instanceof Problem ? judged : about(driver(index + 1), judged);
      }),
    ];
    const found = worst(results, context);
    if (found instanceof Problem || found.status !== 'good') return found;
    const count = levels.length as keyof typeof names;
    return { ...found, reason: say`This ${names[count]} holds: ${found.reason}` };
  },
});

export const teamMainsVerdict = define({
  name: 'TEAM.MAINS_VERDICT',
  summary: 'Whether mains and subs work together at their hand-over, and what decides it.',
  parameters: {
    handover: { ...usual.frequency, summary: 'hand-over between subs and mains', typical: [40, 150] },
    mainsF3: { ...usual.frequency, summary: 'where the mains are 3 dB down without a filter' },
    travel: { ...usual.travel, min: 0, summary: 'largest one-way travel of the mains through the high-pass' },
    xmax: { ...usual.travel, summary: 'one-way travel that the mains allow' },
    count: {
      quantity: 'ratio',
      whole: true,
      min: 1,
      max: 1000,
      summary: 'subs that are needed, as SUBS.COUNT gives it',
    },
    volts: { ...usual.volts, summary: 'voltage that each sub needs' },
    amplifier: { ...usual.volts, summary: 'voltage that its amplifier has' },
    sag: {
      quantity: 'ratio',
      min: 0,
      max: 10,
      default: 1.1,
      summary: 'F3 of the mains over the hand-over, good up to',
    },
    share: { quantity: 'ratio', min: 0, max: 1, default: 0.7, summary: 'share of the travel, good up to' },
    many: { quantity: 'ratio', min: 1, max: 1000, default: 4, summary: 'subs above which there is a caution' },
  },
  returns: { record: 'verdict', summary: 'the worst of four checks, with a count of the others' },
  source: { source: 'practice', at: 'mains that reach the hand-over, travel, number of subs, voltage' },
  example: {
    formula: '=TEAM.MAINS_VERDICT("85 Hz", "87 Hz", "2.9 mm", "4.5 mm", 2, "28 V", "40 V")',
    gives: { status: 'good', word: 'Good' },
  },
  remarks: 'A guess without the room: where subs and seats stand matters as much.',
  compute(given, context) {
    const verdict = (status: Verdict['status'], word: string, reason: Sentence): Verdict => ({
      kind: 'verdict',
      status,
      word,
      reason,
    });
    const at = measured(given.handover, 'frequency');
    const f3 = measured(given.mainsF3, 'frequency');
    const volts = measured(given.volts, 'voltage');
    const amplifier = measured(given.amplifier, 'voltage');
    return worst(
      [
        given.volts > given.amplifier * (1 + 1e-9)
          ? verdict(
              'fail',
              'Fail',
              say`Each sub needs ${volts}, and its amplifier has ${amplifier}. Take more subs, a larger amplifier or a lower target.`,
            )
          : verdict('good', 'Good', say`Each sub needs ${volts} of the ${amplifier} that its amplifier has.`),
        ruleTravel.compute({ travel: given.travel, xmax: given.xmax, good: given.share, caution: 1 }, context),
        given.mainsF3 > given.sag * given.handover * (1 + 1e-9)
          ? verdict(
              'caution',
              'Caution',
              say`The mains are 3 dB down at ${f3} and sag already at the hand-over ${at}. Hand over higher.`,
            )
          : verdict('good', 'Good', say`The mains reach ${f3}, low enough for the hand-over at ${at}.`),
        given.count > given.many
          ? verdict(
              'caution',
              'Caution',
              say`${measured(given.count, 'ratio')} subs are more than ${measured(given.many, 'ratio')}: take larger ones or a lower target.`,
            )
          : verdict(
              'good',
              'Good',
              say`${measured(given.count, 'ratio')} subs, no more than ${measured(given.many, 'ratio')}.`,
            ),
      ],
      context,
    );
  },
});
