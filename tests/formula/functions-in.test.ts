import { expect, test } from 'vitest';
import { functionsIn } from '../../src/formula/functions-in.ts';

test.each([
  ['=CLOSED.QTC(0.386, vas, IF(A1>2, closed.qtc(1,2,3), 4))', ['CLOSED.QTC', 'IF']],
  ['=2+A1', []],
  ['CLOSED.QTC(1)', []],
  ['="PORT.LENGTH(1)"', []],
] as const)('%s calls %j', (formula, called) => {
  expect(functionsIn(formula)).toEqual(called);
});
