import { expect, test } from 'vitest';
import { preferred } from '../../functions/electrical/preferred.ts';
import { subjectOf } from '../../src/analysis/subject/subject.ts';
import { typedValues } from '../../src/analysis/subject/typed-value.ts';
import { documentOf } from './documents.ts';

const document = documentOf({
  A1: { text: '10 L', range: ['1 L', '100 L'] },
  A2: { text: 'LR2', choices: ['LR2', 'LR4'] },
  A3: { text: '4.7 Ω', range: ['1 Ω', '99 Ω'] },
});
const { inputs } = subjectOf(document, () => undefined);
const values = (text: string, index = 0) => {
  const input = inputs[index];
  if (!input) throw new Error('There is no such input.');
  return typedValues(text, input);
};

test.each([
  ['8 L, 12,5 L', 0, [0.008, 0.0125]],
  ['8, 10', 0, [0.008, 0.01]],
  ['8 L; 0.5 ft3', 0, [0.008, 0.5 * 0.3048 ** 3]],
  ['5 L..20 L/4', 0, [0.005, 0.01, 0.015, 0.02]],
  ['5 to 20 L in 4', 0, [0.005, 0.01, 0.015, 0.02]],
  ['0 L to 1 L in 4', 0, [0, 0.000333333, 0.000666667, 0.001]],
  ['LR4', 1, ['LR4']],
  ['LR2, LR4', 1, ['LR2', 'LR4']],
] as const)('“%s” is read', (text, index, wanted) => {
  const read = values(text, index);
  expect(read).toHaveLength(wanted.length);
  for (const [at, value] of read.entries()) {
    const expected = wanted[at];
    if (typeof expected === 'number') expect(value).toBeCloseTo(expected, 12);
    else expect(value).toBe(expected);
  }
});

test('the values of a shop are those of its series within the plausible range', () => {
  // IEC 60063 by way of the table of preferred numbers: two decades from 1 Ω to 91 Ω.
  expect(values('e12', 2)).toEqual(
    [1, 10].flatMap((decade) => preferred.E12.map((each) => Number((each * decade).toPrecision(2)))),
  );
});

test.each([
  ['', 0, 'Type a value'],
  ['8 Hz', 0, 'is the unit of'],
  ['8 L, some', 0, 'is no quantity'],
  ['5 L to 20 L in 1', 0, 'from 2 to'],
  ['LR3', 1, 'takes LR2, LR4'],
  ['E12', 1, 'above 0'],
])('“%s” is refused with the reason', (text, index, reason) => {
  expect(() => values(text, index)).toThrow(reason);
});
