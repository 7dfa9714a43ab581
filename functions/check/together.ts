import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import type { Status, Verdict } from '../values/verdict.ts';

const rank = { good: 0, caution: 1, fail: 2 } as const satisfies Record<Status, number>;
const source = { source: 'own', at: 'comparison of verdicts' } as const;

export const checkWorst = define({
  name: 'CHECK.WORST',
  summary: 'The worst of several verdicts, with a count of the others that are not good.',
  parameters: { verdicts: { record: 'verdict', many: true, summary: 'verdicts' } },
  returns: { record: 'verdict', summary: 'the worst verdict' },
  source,
  example: {
    formula: '=CHECK.WORST(CHECK.AT_LEAST(3, 2, , "Ratio"), CHECK.AT_LEAST(1, 2, , "Ratio"))',
    gives: { status: 'fail', word: 'Fail' },
  },
  remarks: 'Of several that are equally bad, the first is shown.',
  compute(given) {
    const [first, ...rest] = given.verdicts;
    if (!first) return new Problem(say`There is no verdict; give at least one.`, 'verdicts');
    const worst = rest.reduce<Verdict>((one, other) => (rank[other.status] > rank[one.status] ? other : one), first);
    const others = given.verdicts.filter((each) => each !== worst && each.status !== 'good').length;
    const count = given.verdicts.length;
    if (worst.status === 'good' && count > 1)
      return { ...worst, word: 'Good', reason: [`All ${count} checks are good.`] };
    if (others === 0) return worst;
    return {
      ...worst,
      reason: say`${worst.reason} ${others === 1 ? 'One other is' : `${others} others are`} not good.`,
    };
  },
});

export const checkCount = define({
  name: 'CHECK.COUNT',
  summary: 'How many verdicts in a range have a status.',
  parameters: {
    status: { choice: ['good', 'caution', 'fail'], summary: 'status to be counted' },
    verdicts: { table: true, many: true, summary: 'cells with verdicts' },
  },
  returns: { quantity: 'ratio', summary: 'number of verdicts' },
  source,
  example: { formula: '=CHECK.COUNT("good", CHECK.AT_LEAST(3, 2, , "Ratio"))', gives: 1 },
  remarks: 'Cells that hold something else are not counted.',
  compute: (given) =>
    given.verdicts
      .flat(2)
      .filter(
        (cell) => cell !== null && typeof cell === 'object' && cell.kind === 'verdict' && cell.status === given.status,
      ).length,
});
