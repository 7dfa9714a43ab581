import { afterAll, describe, expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { sources } from '../../functions/sources.ts';
import { fieldOf } from '../../functions/values/fields.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { halfDigit } from '../witnesses/witness.ts';

const engine = createEngine();
const sheetWith = (cells: Readonly<Record<string, string>>) =>
  engine.load([{ id: 's', name: 'Sheet', cells: new Map(Object.entries(cells)), names: new Map() }]);
afterAll(() => engine.dispose());

const named = catalogue.map((definition) => [definition.name, definition] as const);

test('every name is one of its own, FAMILY.NOUN or the FAMILY itself', () => {
  const names = catalogue.map(({ name }) => name);
  expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  expect(names.filter((name) => !/^[A-Z]+(\.[A-Z][A-Z0-9_]*)?$/.test(name))).toEqual([]);
});

test('every entry of the bibliography is cited', () => {
  const cited = new Set<string>(catalogue.map(({ source }) => source.source));
  expect(Object.keys(sources).filter((key) => !cited.has(key))).toEqual([]);
});

describe.each(named)('%s', (_, definition) => {
  test('says what it does, takes and gives in words, with a source that is in the bibliography', () => {
    expect(definition.summary).toMatch(/^[A-Z].*\.$/s);
    const summaries = [...Object.values(definition.parameters), definition.returns].map(({ summary }) => summary);
    for (const summary of summaries) expect(summary).toMatch(/[^.]$/);
    expect(Object.keys(sources)).toContain(definition.source.source);
    expect(definition.source.at).not.toBe('');
  });

  test('says what a curve that it gives holds', () => {
    const { returns } = definition;
    if ('record' in returns && (returns.record === 'curve' || returns.record === 'sample'))
      expect(returns.of).toBeDefined();
  });

  test('has a worked example of itself that comes out as it says', async () => {
    const { formula, cells = {}, gives } = definition.example;
    await sheetWith(cells);
    expect(formula).toContain(`${definition.name}(`);
    const state = await engine.evaluate('s', formula);
    const { value } = state;
    expect(state.findings.filter(({ level }) => level === 'error')).toEqual([]);
    switch (value.kind) {
      case 'number':
        expect(gives).toBeTypeOf('number');
        expect(Math.abs(value.value - (gives as number)), String(value.value)).toBeLessThanOrEqual(
          halfDigit(gives as number),
        );
        break;
      case 'text':
        expect(value.text).toBe(gives);
        break;
      case 'truth':
        expect(value.truth).toBe(gives);
        break;
      case 'record':
        for (const [field, wanted] of Object.entries(gives)) {
          const held = fieldOf(value.record, field) ?? (value.record as unknown as Record<string, unknown>)[field];
          if (typeof wanted === 'number')
            expect(Math.abs((held as number) - wanted), `${field} ${String(held)}`).toBeLessThanOrEqual(
              halfDigit(wanted),
            );
          else expect(held).toBe(wanted);
        }
        break;
      default:
        throw new Error(JSON.stringify(value));
    }
  });
});
