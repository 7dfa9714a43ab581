import { expect, test } from 'vitest';
import { callAt } from '../../src/formula/call-at.ts';

/** The place is where the bar stands. */
test.each([
  ['=CLOSED.QTC(|', 'CLOSED.QTC', 0],
  ['=closed.qtc(0.386, |', 'CLOSED.QTC', 1],
  ['=IF(A1>2; SUM(B1, B2)|; 3', 'IF', 1],
  ['=SUM(A1, ABS(|', 'ABS', 0],
  ['=SUM("a,b(", |', 'SUM', 1],
  ["=SUM('Box (old), new'!A1, |", 'SUM', 1],
  ['=SUM((1+|', 'SUM', 0],
])('%s', (written, name, argument) => {
  expect(callAt(written.replace('|', ''), written.indexOf('|'))).toEqual({ name, argument });
});

test.each(['=A1+|', '=SUM(A1)|', '|', '=(1+|'])('%s stands in no call', (written) => {
  expect(callAt(written.replace('|', ''), written.indexOf('|'))).toBeUndefined();
});
