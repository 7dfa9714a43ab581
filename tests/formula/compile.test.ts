import { expect, test } from 'vitest';
import { compile } from '../../src/formula/compile.ts';
import { referencesIn } from '../../src/formula/references-in.ts';
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
  textOf: () => '',
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
  ['=SUM($D$6:D5)', 'resistance'],
  ['=$C$4.fs', 'frequency'],
  ['=Vb^(1/3)', 'length'],
  ['=Vb^(2/3)/1 m', 'length'],
  ['=(Vb*1 L)^50%', 'volume'],
  ['=SQRT(Vb)*SQRT(Vb)', 'volume'],
  ['=IF(D5>8 Ω, Vb, "")', 'volume'],
  ['=IF(D5>8 Ω, Vb, 0)', 'volume'],
  ['=SWITCH(1, 1, Vb, 2, 12 L, 0)', 'volume'],
  ['=IFERROR(1/D5, 0)', undefined],
  ['=1/(2*PI()*SQRT(1 mH*10 µF))', 'frequency'],
  ['=89 dB+20*LOG10(2)', 'level'],
  ['=10^(89 dB/20)', 'ratio'],
  ['=ROUND(Vb/1 L, 1)*1 L', 'volume'],
  ['=MROUND(Vb, 0.5 L)', 'volume'],
  ['=5 cu ft', 'volume'],
  ['=25 °C-20 °C', 'warming'],
  ['=(25 °C-20 °C)*2', 'warming'],
  ['=25 °C-5 K', 'temperature'],
  ['=(25 °C-20 °C)+20 °C', 'temperature'],
  ['=20 °C+(25 °C-20 °C)', 'temperature'],
  ['=20 °C-(25 °C-20 °C)', 'temperature'],
  ['=IF(D5>8 Ω, "none", 1 mH)', 'inductance'],
  ['=IFS(D5>8 Ω, Vb, D5>4 Ω, "small")', 'volume'],
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
  ['=20 m/s2', /20 m\/s2 divides by the cell S2: write 20 m\/1 s\/1 s for the unit, or 20 m \/ S2/],
  ['=2*1.2 kg/s2', /1\.2 kg\/1 s\/1 s/],
  ['=SUM(1', /closing bracket/],
  ['=FILTER.SLOPE("2 kHz", "LR5", "low")', /“LR5” is no choice there\. Did you mean LR\d\? Choose one of /],
  ['=FILTER.SLOPE("2 kHz", "steepest", "low")', /“steepest” is no choice there\. Choose one of .*LR4/],
])('%s is refused with a remedy', (text, remedy) => {
  expect(messages(text).join(' ')).toMatch(remedy);
});

/** The place is what stands between the bars. */
test.each([
  ['=|Vb+0 Hz|', /A frequency cannot be added to a volume/],
  ['=D5+|#REF!|', /where a cell was deleted/],
  ['=|D5:D6|', /D5:D6 is several cells/],
  ['=1+|#N/A|', /is no value/],
  ['=ABS(|Vbb|)', /Vb\?/],
  ['=|INT(Vb)|', /INT\(\(Vb\)\/1 L\)\*1 L/],
  ['=|ROUND(Vb, 1)|', /ROUND\(\(Vb\)\/1 L, 1\)\*1 L/],
  ['="Net: "&|Vb|', /bare number in m³.* & " L"/],
  ['=2*|5 cm^2|', /read as 5 cm²/],
  ['=|1/2 in|', /1 divided by 2 in: write 1\/2\*1 in if/],
  ['=3*(|1/3oct|)', /write 1\/3\*1 oct if/],
  ['=2|,|5*3', /decimal mark is a point/],
  ['=CONCATENATE(|"|abc)', /opened and not closed/],
  ['=SUM(|Box|!A1)', /no sheet called “Box”/],
  ['=2*|A1000001|', /A1000001 lies beyond the last row of a sheet, 1000000: refer to a cell above it/],
  ['=SUM(|A1:A1000001|)', /A1000001 lies beyond/],
  ['=1+|A99999999|', /A99999999 lies beyond/],
  ['=SUM(|A1:B500000|)', /A1:B500000 is 1000000 cells, but a range holds at most 500000: refer to fewer/],
])('%s is questioned where it stands', (marked, message) => {
  const [before = '', placed = ''] = marked.split('|');
  const found = compile(marked.replaceAll('|', ''), scope).findings;
  expect(found).toHaveLength(1);
  expect(found[0]?.message).toMatch(message);
  expect([found[0]?.from, found[0]?.to]).toEqual([before.length, before.length + placed.length]);
});

test('a quotient that reads like no part of a unit is none', () => {
  for (const text of ['=1/2 Hz', '=3*1/2 in', '=1/(2 in)', '=1/2*1 in']) expect(messages(text)).toEqual([]);
});

test('a bracket in a text is no bracket', () => {
  expect(messages('=SUM("((",1)+')).toEqual([expect.stringMatching(/ends where a value should follow/)]);
});

test.each([
  ['brackets', (count: number) => `=${'('.repeat(count)}1${')'.repeat(count)}`],
  ['calls', (count: number) => `=${'ABS('.repeat(count)}1${')'.repeat(count)}`],
  ['signs', (count: number) => `=${'-'.repeat(count)}1`],
  ['sums', (count: number) => `=1${'+1'.repeat(count)}`],
] as const)('%s beyond reason are refused, however many', (_, formula) => {
  expect(messages(formula(90))).toEqual([]);
  for (const count of [400, 3000, 20_000])
    expect(messages(formula(count))).toEqual([
      expect.stringMatching(/^(More than|The formula has more than|A closing)/),
    ]);
});

test('a sheet may be called like a truth or a cell', () => {
  const around = { ...scope, sheetNamed: (name: string) => ({ true: 't', b4: 'u' })[name.toLowerCase()] };
  expect(compile('=TRUE!A1+B4!A1', around).references).toEqual([
    { sheet: 't', cells: 'A1' },
    { sheet: 'u', cells: 'A1' },
  ]);
});

test('every reference is found, that of a part of a record too', () => {
  expect(referencesIn('=$C$4.fs+Woofer.fs+Vb', scope).map(({ cells }) => cells)).toEqual(['C4', 'C4', 'B4']);
});

test('a cell that is meant as one is divided by', () => {
  for (const text of ['=20 m/S2', '=20 m / s2', '=2/s2', '=20 m/b2']) expect(messages(text)).toEqual([]);
});

test('a zero needs no unit', () => {
  expect(messages('=Vb+0')).toEqual([]);
});
