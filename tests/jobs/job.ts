import { afterAll, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import type { CellValue } from '../../src/engine/types.ts';

/** Something a practitioner wants to know, done in the cells of a sheet. */
export interface Job {
  readonly job: string;
  /** What is typed, in this order: under the name of the cell, or its address such as `D1`. */
  readonly cells: Readonly<Record<string, string>>;
  /** What cells then say: a number in SI with what it may be off, the word of a text, the status of a verdict, or words that
   *  the reason of a verdict holds. */
  readonly gives: Readonly<Record<string, readonly [value: number, within: number] | string | RegExp>>;
  /** How the numbers were come to without the functions. */
  readonly from: string;
}

const isAddress = (name: string): boolean => /^[A-Z]+\d+$/.test(name);

const spoken = (value: CellValue): string => {
  if (value.kind === 'text') return value.text;
  if (value.kind !== 'record') return JSON.stringify(value);
  const { record } = value;
  if (record.kind !== 'verdict') return JSON.stringify(record);
  const reason = record.reason.map((part) =>
    typeof part === 'string' ? part : String(Number(part.value.toPrecision(4))),
  );
  return `${record.status}: ${reason.join('')}`;
};

/** A test for each job: the sheet is typed anew, and its cells asked. */
export function testJobs(jobs: readonly Job[]): void {
  const engine = createEngine();
  afterAll(() => engine.dispose());
  test.each(jobs.map((each) => [each.job, each] as const))('%s', async (_, { cells, gives, from }) => {
    const typed = Object.entries(cells).map(
      ([name, text], row) => [name, isAddress(name) ? name : `A${String(row + 1)}`, text] as const,
    );
    await engine.load([
      {
        id: 's',
        name: 'Sheet',
        cells: new Map(typed.map(([, address, text]) => [address, text])),
        names: new Map(typed.filter(([name]) => !isAddress(name)).map(([name, address]) => [name, address])),
      },
    ]);
    for (const [name, expected] of Object.entries(gives)) {
      const { value } = await engine.evaluate('s', `=${name}`);
      const found = `${name} is ${spoken(value)}; ${from}`;
      if (expected instanceof RegExp) expect(spoken(value), found).toMatch(expected);
      else if (typeof expected === 'string') expect(spoken(value).split(':')[0], found).toBe(expected);
      else {
        expect(value.kind, found).toBe('number');
        if (value.kind === 'number')
          expect(Math.abs(value.value - expected[0]), found).toBeLessThanOrEqual(expected[1]);
      }
    }
  });
}
