import { expect, test } from 'vitest';
import { compile } from '../../src/formula/compile.ts';
import { numberOf } from '../../src/formula/type-of.ts';
import { catalogue } from '../../functions/index.ts';
import { functionsByName, type Scope } from '../../src/formula/types.ts';

/** Vb is B4, a volume; D5 holds ohms, C4 a driver called Woofer. */
const scope: Scope = {
  functions: functionsByName(catalogue),
  sheet: 's',
  sheetNamed: () => undefined,
  cellsNamed: (_sheet, name) => ({ vb: 'B4', woofer: 'C4' })[name.toLowerCase()],
  namesOf: () => ['Vb', 'Woofer'],
  typeOf: (_sheet, cell) =>
    cell === 'C4' ? { kind: 'record', record: 'driver' } : numberOf(cell === 'B4' ? 'volume' : 'resistance'),
};
const messages = (text: string): string[] => compile(text, scope).findings.map(({ message }) => message);

test.each([
  ['=Vb*2', 'volume'],
  ['=Vb/0.2 ft3', 'ratio'],
  ['=SQRT(Vb/12 L)*38 Hz', 'frequency'],
  ['=Woofer.fs', 'frequency'],
  ['=SUM(D5:D6)', 'resistance'],
])('%s gives %s', (text, quantity) => {
  const { type, findings } = compile(text, scope);
  expect(findings).toEqual([]);
  expect(type).toMatchObject({ kind: 'number', quantity });
});

test.each([
  ['=Vb+5', /5 L/],
  ['=Vb+D5', /Ohms cannot be added to a volume/],
  ['=CLOSED.QTC(0.386, Vb)', /lacks its argument 3/],
  ['=CLOSED.QTD(1)', /CLOSED\.QTC/],
  ['=Vbb*2', /Vb\?/],
  ['=SUM(1', /closing bracket/],
])('%s is refused with a remedy', (text, remedy) => {
  expect(messages(text).join(' ')).toMatch(remedy);
});

test('a zero needs no unit', () => {
  expect(messages('=Vb+0')).toEqual([]);
});
