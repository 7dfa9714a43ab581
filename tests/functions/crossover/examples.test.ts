import { expect, test } from 'vitest';
import { crossoverFunctions } from '../../../functions/crossover/index.ts';
import { levelFunctions } from '../../../functions/level/index.ts';
import { fieldOf } from '../../../functions/values/fields.ts';
import { createEngine } from '../../../src/engine/direct.ts';

/** Half a unit of the last digit that a number is written with. */
const halfDigit = (value: number): number => 0.5 * 10 ** -(String(value).split('.')[1]?.length ?? 0) * 1.0001;

function holds(actual: unknown, wanted: unknown): void {
  if (typeof wanted !== 'number') return expect(actual).toBe(wanted);
  expect(Math.abs((actual as number) - wanted), `${String(actual)} for ${String(wanted)}`).toBeLessThanOrEqual(
    halfDigit(wanted),
  );
}

test.each([...crossoverFunctions, ...levelFunctions].map((each) => [each.name, each] as const))(
  'the worked example of %s comes out of the engine as it says',
  async (name, { example }) => {
    expect(example.formula).toContain(`${name}(`);
    const engine = createEngine();
    await engine.load([{ id: 's', name: 'Sheet', cells: new Map(), names: new Map() }]);
    const { value } = await engine.evaluate('s', example.formula);
    engine.dispose();
    if (value.kind === 'number') return holds(value.value, example.gives);
    if (value.kind === 'text') return holds(value.text, example.gives);
    if (value.kind !== 'record') throw new Error(JSON.stringify(value));
    expect(typeof example.gives).toBe('object');
    for (const [field, wanted] of Object.entries(example.gives)) holds(fieldOf(value.record, field), wanted);
  },
);
