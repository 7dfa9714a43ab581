import { define, type Context, type Table } from '../define.ts';
import { need } from '../driver/need.ts';
import { trebleFloor } from '../level/treble.ts';
import { pistonNarrowing } from '../radiation/narrowing.ts';
import { spacingBetween, spacingLimit } from '../radiation/spacing.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Limit } from '../values/window.ts';
import { windowOf } from './window.ts';

const rules = ['resonance', 'travel', 'narrowing', 'break-up', 'spacing'] as const;
type Rule = (typeof rules)[number];
type Ends = readonly [rule: number, stretched: number];

/** The rule and the stretched rule of each limit, in their order. */
function readRules(table: Table): Readonly<Record<Rule, Ends>> | Problem {
  if (table.length !== rules.length || table.some((row) => row.length !== 2))
    return new Problem(
      say`The rules have ${String(table.length)} rows of ${String(table[0]?.length ?? 0)}; give five rows of two, rule and stretched: resonance, travel, narrowing, break-up, spacing.`,
      'rules',
    );
  const bad = table.findIndex((row) => row.some((cell) => typeof cell !== 'number' || !(cell > 0 && cell < 1e6)));
  if (bad !== -1)
    return new Problem(say`The rule for ${rules[bad]!} needs two numbers above 0, by the rule and stretched.`, 'rules');
  return Object.fromEntries(rules.map((name, index) => [name, table[index]])) as unknown as Record<Rule, Ends>;
}

/** A limit worked out by its rule and by the stretched one. */
function limitOf(name: Rule, [rule, stretched]: Ends, at: (rule: number) => number | Problem): Limit | Problem {
  const [plain, bent] = [at(rule), at(stretched)];
  if (plain instanceof Problem) return plain;
  return bent instanceof Problem ? bent : { name, at: plain, stretched: bent };
}

export const pairByRules = define({
  name: 'PAIR.BY_RULES',
  summary: 'The window of two drivers by the five usual rules, straight from their data.',
  parameters: {
    lower: { record: 'driver', summary: 'driver below the hand-over' },
    upper: { record: 'driver', summary: 'driver above it' },
    target: { ...usual.level, summary: 'level at 1 m that the travel must reach' },
    slope: { choice: ['LR2', 'LR4'], summary: 'acoustic slope' },
    angle: { quantity: 'angle', min: 0.01, max: Math.PI / 2, summary: 'angle at which the lower driver narrows' },
    gap: { quantity: 'length', min: 0, max: 100, summary: 'gap between the flanges' },
    rules: {
      table: true,
      summary:
        'five rows of two, rule and stretched: × Fs, share of Xmax, dB off axis, share of the break-up, wavelengths of spacing',
    },
  },
  returns: { record: 'window', summary: 'the window and the limits that set it' },
  source: { source: 'practice', at: 'resonance, travel, narrowing, break-up and spacing' },
  example: {
    formula: '=PAIR.BY_RULES(DRIVER(A1:A3, B1:B3), DRIVER(A4:A7, B4:B7), "100 dB", "LR4", "45°", "4 mm", C1:D5)',
    cells: {
      A1: 'Sd',
      B1: '132 cm²',
      A2: 'First break-up',
      B2: '5200 Hz',
      A3: 'Flange diameter',
      B3: '166 mm',
      A4: 'Fs',
      B4: '850 Hz',
      A5: 'Sd',
      B5: '7 cm²',
      A6: 'Xmax',
      B6: '0.35 mm',
      A7: 'Flange diameter',
      B7: '104 mm',
      C1: '2',
      D1: '1.5',
      C2: '0.7',
      D2: '1',
      C3: '3 dB',
      D3: '6 dB',
      C4: '0.5',
      D4: '0.6667',
      C5: '1',
      D5: '1.4',
    },
    gives: { octaves: 0.178 },
  },
  remarks:
    'The same limits as worked out one by one for PAIR.WINDOW, for grids of many pairs. The rules are yours: they stand in cells.',
  compute(given, context: Context) {
    const ends = readRules(given.rules);
    if (ends instanceof Problem) return ends;
    const lower = need(given.lower, ['sd', 'breakup', 'flange'], 'lower');
    if (lower instanceof Problem) return lower;
    const upper = need(given.upper, ['fs', 'sd', 'xmax', 'flange'], 'upper');
    if (upper instanceof Problem) return upper;
    const { target: level, slope, angle } = given;
    const spacing = spacingBetween.compute(
      { flangeA: lower.flange, flangeB: upper.flange, gap: given.gap },
      context,
    ) as number;
    const limits = [
      limitOf('resonance', ends.resonance, (factor) => factor * upper.fs),
      limitOf('travel', ends.travel, (share) =>
        trebleFloor.compute({ sd: upper.sd, xmax: upper.xmax, level, slope, share }, context),
      ),
      limitOf('narrowing', ends.narrowing, (loss) => pistonNarrowing.compute({ sd: lower.sd, angle, loss }, context)),
      limitOf('break-up', ends['break-up'], (share) => share * lower.breakup),
      limitOf('spacing', ends.spacing, (wavelengths) => spacingLimit.compute({ spacing, wavelengths }, context)),
    ];
    const problem = limits.find((each) => each instanceof Problem);
    if (problem) return problem;
    const read = limits as readonly Limit[];
    return windowOf(read.slice(0, 2), read.slice(2));
  },
});
