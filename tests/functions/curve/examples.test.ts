import { expect, test } from 'vitest';
import { catalogue } from '../../../functions/index.ts';
import { createEngine } from '../../../src/engine/direct.ts';

const families = /^(PISTON|LINE|SPACING|EDGE|ROOM|AROUND|RULE|TEAM|SUBS|RANK|LEVEL|TREBLE|PAIR|OVERLAP|CHECK|FILTER)\./;

/** Half a unit of the last digit that a number is written with. */
const halfDigit = (value: number): number => 0.5 * 10 ** -(String(value).split('.')[1]?.length ?? 0) * 1.0001;

test.each(catalogue.filter((each) => families.test(each.name)).map((each) => [each.name, each] as const))(
  'the worked example of %s comes out of the engine as it says',
  async (_, { example }) => {
    const engine = createEngine();
    await engine.load([{ id: 's', name: 'Sheet', cells: new Map(), names: new Map() }]);
    const { value } = await engine.evaluate('s', example.formula);
    engine.dispose();
    if (typeof example.gives === 'number') {
      if (value.kind !== 'number') throw new Error(JSON.stringify(value));
      expect(Math.abs(value.value - example.gives)).toBeLessThanOrEqual(halfDigit(example.gives));
      return;
    }
    if (value.kind !== 'record') throw new Error(JSON.stringify(value));
    const record = value.record as unknown as Record<string, unknown>;
    for (const [field, wanted] of Object.entries(example.gives)) {
      if (typeof wanted === 'number')
        expect(Math.abs((record[field] as number) - wanted)).toBeLessThanOrEqual(halfDigit(wanted));
      else expect(record[field]).toBe(wanted);
    }
  },
);
