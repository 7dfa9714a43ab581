import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { measured, say, type Sentence } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import type { Verdict } from '../values/verdict.ts';
import { expected } from './audit.ts';
import { culprits, gapOf, givenOf, type Culprit } from './culprit.ts';
import { parameterOf } from './parameters.ts';
import { linked, type Parameters } from './relations.ts';

const driver = { record: 'driver', summary: 'the driver, with all that its datasheet prints' } as const;
const source = { source: 'small1972direct', at: 'relations between the small-signal parameters' } as const;
const cells = {
  A1: 'Fs',
  B1: '35 Hz',
  A2: 'Qms',
  B2: '5',
  A3: 'Qes',
  B3: '0.5',
  A4: 'Qts',
  B4: '0.40',
} as const;

const over = (given: Parameters): boolean =>
  linked.some((field) => given[field] !== undefined && expected(field, given) !== undefined);

const nothing = (): Problem =>
  new Problem(
    say`Nothing in this data can be checked against the rest: add more of what the datasheet prints, such as Qts, Mms, Cms, Bl or the level.`,
    'driver',
  );

export const driverAudit = define({
  name: 'DRIVER.AUDIT',
  summary: 'Every printed value of a driver that the others determine, beside what they make of it.',
  parameters: { driver },
  returns: { record: 'table', summary: 'parameter, printed, from the others, gap and judgement, a row each' },
  source,
  example: {
    formula: '=DRIVER.AUDIT(DRIVER(A1:A4, B1:B4))',
    cells,
    gives: { title: 'Audit of the datasheet', rows: 1 },
  },
  remarks:
    'Gaps are counted in usual spreads of that value (common practice, no source): 3 % for Fs, Qts and Re, 4 % for Sd and Mms, 5 % for Qes and Bl, 10 % for Qms, Vas, Cms and Rms, 1.5 dB for the level. “likely wrong” stands where the others agree once it is left out.',
  compute: (given): TableRecord | Problem => {
    const printed = givenOf(given.driver);
    if (!over(printed)) return nothing();
    const found = culprits(printed);
    return {
      kind: 'table',
      title: 'Audit of the datasheet',
      columns: [
        { name: 'Parameter', quantity: 'text' },
        { name: 'Unit', quantity: 'text' },
        { name: 'Printed', quantity: 'ratio' },
        { name: 'From the others', quantity: 'ratio' },
        { name: 'Gap', quantity: 'ratio' },
        { name: 'Gap in spreads', quantity: 'ratio' },
        { name: 'Judgement', quantity: 'text' },
      ],
      rows: linked.flatMap((field) => {
        const value = printed[field];
        const culprit = found.find((each) => each.field === field);
        // A sound value is judged by the sound ones alone.
        const others = culprit === undefined ? soundOf(printed, found) : undefined;
        const computed = culprit?.computed ?? (others === undefined ? undefined : expected(field, others));
        if (value === undefined || computed === undefined) return [];
        const { symbol, quantity } = parameterOf(field);
        const gap = field === 'level' ? value - computed : value / computed - 1;
        const place = culprit === undefined ? -1 : found.indexOf(culprit);
        const judgement = place < 0 ? 'agrees' : place === 0 ? 'likely wrong, first of all' : 'likely wrong';
        return [[symbol, units[quantity] ?? '', value, computed, gap, gapOf(field, value, computed), judgement]];
      }),
    };
  },
});

/** SI units of the values in the table: its columns hold unlike quantities side by side. */
const units: Readonly<Record<string, string>> = {
  frequency: 'Hz',
  volume: 'm³',
  resistance: 'Ω',
  area: 'm²',
  mass: 'kg',
  compliance: 'm/N',
  mechanicalResistance: 'kg/s',
  forceFactor: 'T·m',
  level: 'dB',
};

function soundOf(printed: Parameters, found: readonly Culprit[]): Parameters {
  const sound: Parameters = { ...printed };
  for (const { field } of found) delete sound[field];
  return sound;
}

const saying = ({ field, printed, computed }: Culprit): Sentence => {
  const { symbol, quantity } = parameterOf(field);
  return say`${symbol} is printed as ${measured(printed, quantity)}, the others give ${measured(computed, quantity)}`;
};

export const driverCulprit = define({
  name: 'DRIVER.CULPRIT',
  summary: 'Whether the printed values of a driver agree, and which of them is likeliest wrong.',
  parameters: { driver },
  returns: { record: 'verdict', summary: 'judgement that names the likeliest culprit' },
  source,
  example: { formula: '=DRIVER.CULPRIT(DRIVER(A1:A4, B1:B4))', cells, gives: { word: 'Check Qts' } },
  remarks:
    'With three values in one relation any of them may be at fault: the one is named that a datasheet computes from the others.',
  compute: (given): Verdict | Problem => {
    const printed = givenOf(given.driver);
    if (!over(printed)) return nothing();
    const found = culprits(printed);
    const [first, ...more] = found;
    if (first === undefined) {
      return {
        kind: 'verdict',
        status: 'good',
        word: 'Consistent',
        reason: say`Every printed value that can be checked lies within its usual spread of what the others give.`,
      };
    }
    const far = found.some((each) => Math.abs(gapOf(each.field, each.printed, each.computed)) > 2);
    const rest =
      more.length === 0
        ? say``
        : say` Then: ${more.flatMap((each, index) => (index === 0 ? saying(each) : say`; ${saying(each)}`))}.`;
    return {
      kind: 'verdict',
      status: far ? 'fail' : 'caution',
      word: `Check ${parameterOf(first.field).symbol}`,
      reason: say`${saying(first)}, and agree best without it.${rest}`,
    };
  },
});
