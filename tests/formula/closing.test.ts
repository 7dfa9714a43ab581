import { expect, test } from 'vitest';
import { withClosing } from '../../src/formula/closing.ts';

test.each([
  ['=SQRT(2*(Vb+1', '=SQRT(2*(Vb+1))'],
  ['=CLOSED.QTC(0.386, "28.52 L", "12.1 L"', '=CLOSED.QTC(0.386, "28.52 L", "12.1 L")'],
  ["=SUM('A (old)'!B4", "=SUM('A (old)'!B4)"],
])('the brackets that alone are missing at the end of %s are put there', (typed, kept) => {
  expect(withClosing(typed)).toBe(kept);
});

test.each(['=CONCATENATE("(', '=SUM(1))', '=SUM(1)', '=2*(', '(12', 'Woofer (old', ''])(
  '%s stays as it was typed',
  (typed) => {
    expect(withClosing(typed)).toBe(typed);
  },
);
