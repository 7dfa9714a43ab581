import { HyperFormula } from 'hyperformula';
import { expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { language } from '../../src/engine/language.ts';
import { engineFunctions } from '../../src/formula/engine-functions.ts';
import { sheetWith } from './sheet.ts';

const bare = HyperFormula.buildEmpty({ licenseKey: 'gpl-v3', language: language(catalogue) });

test.each([...engineFunctions])('the engine knows %s', (name) => {
  expect(HyperFormula.getFunctionPlugin(name)).toBeDefined();
  // Without its arguments a function says that they are missing; one that is not there is an unknown name.
  expect(bare.calculateFormula(`=${name}()`, bare.getSheetId(bare.addSheet()) ?? 0)).not.toMatchObject({
    type: 'NAME',
  });
});

test('no function of ours has the name of one of the engine', () => {
  expect(catalogue.map(({ name }) => name).filter((name) => engineFunctions.has(name))).toEqual([]);
});

test.each([
  ['=SUM(2,3)*MAX(1,4)', 20],
  ['=SUMPRODUCT(A1:A3,B1:B3)', 32],
  ['=INDEX(B1:B3,MATCH(2,A1:A3,0))', 5],
  ['=VLOOKUP(3,A1:B3,2,FALSE)', 6],
  ['=XLOOKUP(1,A1:A3,B1:B3)', 4],
  ['=ROUND(LOG10(1000)+LN(EXP(1)),6)', 4],
  ['=SUMIF(A1:A3,">1",B1:B3)', 11],
  ['=MEDIAN(B1:B3)+MOD(7,4)+INT(PI())', 11],
  ['=IFS(A1>1,10,A1=1,20)+SWITCH(A2,1,1,2,2)', 22],
])('%s is %d', async (formula, expected) => {
  const engine = createEngine();
  await engine.load(sheetWith({ A1: '1', A2: '2', A3: '3', B1: '4', B2: '5', B3: '6' }));
  expect((await engine.evaluate('s', formula)).value).toEqual({ kind: 'number', value: expected });
});

test('texts can be put together from numbers', async () => {
  const engine = createEngine();
  await engine.load(sheetWith({ A1: '2.5' }));
  const { value } = await engine.evaluate('s', '=CONCATENATE("about ",TEXT(A1,"0.00"))');
  expect(value).toEqual({ kind: 'text', text: 'about 2.50' });
});

test('a function that the engine has and formulas may not call is refused with the nearest that they may', async () => {
  const engine = createEngine();
  await engine.load(sheetWith({ A1: '1' }));
  const { value } = await engine.evaluate('s', '=SUMSQX(A1)');
  expect(value).toMatchObject({ kind: 'problem', message: 'There is no function SUMSQX: did you mean SUMSQ?' });
  expect((await engine.evaluate('s', '=PMT(1,2,3)')).value).toMatchObject({ kind: 'problem' });
});
