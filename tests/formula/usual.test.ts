import { expect, test } from 'vitest';
import { engineFunctions } from '../../src/formula/engine-functions.ts';
import usual from '../../src/formula/usual.json' with { type: 'json' };
import { createEngine } from '../../src/engine/direct.ts';

const engine = createEngine();
const cells = new Map([
  ['A1', '1'],
  ['A2', '2'],
  ['A3', '3'],
  ['B1', '2'],
]);

test('every function of the engine that formulas can call is described, and no other', () => {
  expect(Object.keys(usual).toSorted()).toEqual([...engineFunctions].toSorted());
});

test.each(Object.entries(usual))(
  'the example of %s stands by itself and gives a result',
  async (name, { takes, example }) => {
    await engine.load([{ id: 's', name: 'Sheet', cells, names: new Map() }]);
    expect(example).toContain(`${name}(`);
    const { value, findings } = await engine.evaluate('s', example);
    expect(findings).toEqual([]);
    expect(value.kind).not.toBe('problem');
    // One argument less than is wanted is refused, so that what is said of them is true.
    const wanted = takes === '' ? [] : takes.split(', ').filter((each) => !/^\[|^…$/.test(each));
    if (wanted.length === 0) return;
    const few = await engine.evaluate(
      's',
      `=${name}(${wanted
        .slice(1)
        .map(() => 'A1')
        .join(', ')})`,
    );
    expect(few.value.kind).toBe('problem');
  },
);
