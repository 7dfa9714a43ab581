import { expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { compile } from '../../src/formula/compile.ts';
import { numberOf, TEXT } from '../../src/formula/type-of.ts';
import { functionsByName, type CellType, type Scope } from '../../src/formula/types.ts';

const types: Readonly<Record<string, CellType>> = {
  B4: numberOf('frequency'),
  C4: { kind: 'record', record: 'driver' },
  D4: { kind: 'record', record: 'window' },
  E4: { kind: 'record', record: 'verdict' },
  F4: TEXT,
};

/** A frequency, a driver called Woofer, a window, a verdict, a word. */
const scope: Scope = {
  functions: functionsByName(catalogue),
  sheet: 's',
  sheetNamed: () => undefined,
  cellsNamed: (_sheet, name) => (name.toLowerCase() === 'woofer' ? 'C4' : undefined),
  namesOf: () => ['Woofer'],
  textOf: () => '',
  typeOf: (_sheet, cell) => types[cell] ?? { kind: 'empty' },
};

const driver = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28 L", "5.8 Ω", "132 cm²", "5 mm")';

/** What a beginner writes, what the message advises, and the same with the advice taken: it must have nothing to say against that. */
test.each([
  ['=2**3', 'write ^ for a power', '=2^3'],
  ['=2²', 'write ^ for a power', '=2^2'],
  ['=3x4', 'write * for times', '=3*4'],
  ['=2(3+4)', 'write * for times', '=2*(3+4)'],
  ['=8÷2', 'write / for divided by', '=8/2'],
  ['=√2', 'called “√2”', '=SQRT(2)'],
  ['=2√2', 'write SQRT(…)', '=2*SQRT(2)'],
  ['=1==1', 'comparisons are written', '=1=1'],
  ['=IF(1=>2,1,2)', 'comparisons are written', '=IF(1>=2,1,2)'],
  ['=12,5 L', 'write 12.5, not 12,5', '=12.5 L'],
  ['=12 L in ft3', 'chosen in the menu of the cell', '=12 L'],
  ['=5 foo', 'that is no unit', '=5 ft'],
  ['=6k8', 'write the unit behind the number, as in 6.8 kΩ', '=6.8 kΩ'],
  ['=6.5"', 'write inches as 6.5 in', '=6.5 in'],
  ["=5'", 'write feet as 5 ft', '=5 ft'],
  ['=SUM(1 2)', 'a sign or a comma between two values', '=SUM(1, 2)'],
  ['=SUM 1', 'put brackets round what a function takes', '=SUM(1)'],
  ['=SUM(A:A)', 'a range with both its corners', '=SUM(A1:A9)'],
  ['=[B4]', 'write cells as B4', '=B4'],
  [`=${driver}.fs`, 'write FIELD(…, "fs")', `=FIELD(${driver}, "fs")`],
  [`=${driver}*2`, `FIELD(${driver}, "fs")`, `=FIELD(${driver}, "fs")*2`],
  ['=pi*2', 'written PI()', '=PI()*2'],
  ['=€62', 'written 62 €', '=62 €'],
  ['=SUM', 'written SUM(…)', '=SUM(1)'],
  ['=Woofr.fs', 'did you mean Woofer.fs?', '=Woofer.fs'],
  ['=Woofer(fs)', 'a part of it is written with a point, as in Woofer.fs', '=Woofer.fs'],
  ['="a"+1', 'write a number there', '=1+1'],
  ['=D4+1 Hz', 'such as D4.low', '=D4.low+1 Hz'],
  ['=IF(E4="Good",1,2)', 'such as E4.status', '=IF(E4.status="good",1,2)'],
  ['=IF(B4>"2 kHz",1,2)', 'without the quotes', '=IF(B4>2 kHz,1,2)'],
  ['=IF(F4=LR4,1,2)', 'write "LR4" if the word is meant', '=IF(F4="LR4",1,2)'],
  ['=FILTER.SLOPE(B4, LR4, "low")', 'write "LR4" for the word', '=FILTER.SLOPE(B4, "LR4", "low")'],
  ['=COUNTIF(E4:E5, "Good")', 'CHECK.COUNT("good", …)', '=CHECK.COUNT("good", E4:E5)'],
  ['=TEXT(B4, "0")', 'write ROUND((B4)/1 Hz, 2) & " Hz"', '=ROUND((B4)/1 Hz, 2) & " Hz"'],
])('%s is told what to write, and that can be written', (wrong, advice, right) => {
  const messages = compile(wrong, scope).findings.map(({ message }) => message);
  expect(messages.join('\n')).toContain(advice);
  expect(compile(right, scope).findings).toEqual([]);
});

test('whether a cell holds anything at all can be asked of records too', () => {
  for (const formula of ['=IF(C4="", 1, 2)', '=IF(""<>E4, 1, 2)', '=C4=C4', '=IF(B4="", 1, 2)'])
    expect(compile(formula, scope).findings).toEqual([]);
});
