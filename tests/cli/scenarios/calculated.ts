import { expect } from 'vitest';
import { catalogue } from '../../../functions/index.ts';
import { run } from '../../../src/cli/run.ts';
import { createEngine } from '../../../src/engine/direct.ts';
import { templates } from '../../../templates/index.ts';
import { typedDriver } from '../../references/demo-drivers.ts';

export interface Described {
  readonly kind: string;
  readonly value: number;
  readonly unit: string;
  readonly text: string;
}

/** What the command line prints as JSON for a starter sheet with these cells set. */
export async function calculated(
  template: string,
  set: Readonly<Record<string, string>>,
  ...get: readonly string[]
): Promise<(cell: string) => Described> {
  const out: string[] = [];
  const error: string[] = [];
  const given = [
    template,
    ...Object.entries(set).flatMap(([cell, text]) => ['--set', `${cell}=${text}`]),
    ...get.flatMap((cell) => ['--get', cell]),
    '--json',
  ];
  const status = await run(given, {
    out: (text) => out.push(text),
    error: (text) => error.push(text),
    read: async () => undefined,
    newEngine: createEngine,
    catalogue,
    templates: new Map<string, unknown>(templates.map(({ id, content }) => [id, content])),
  });
  // Some scenarios go to the edge of what is usual, and are asked about it.
  const refused = error.filter((text) => !text.startsWith('Doubtful, '));
  expect({ status, refused }).toEqual({ status: 0, refused: [] });
  const cells = JSON.parse(out.join('\n')) as Record<string, Described>;
  return (cell) => {
    const found = cells[cell];
    if (!found) throw new Error(`Nothing is printed for ${cell}`);
    return found;
  };
}

/** The rule of the scenarios: hertz, litres and millimetres within 2 %, dB within 0.2, octaves 0.03. */
export function expectNear(actual: Described, expected: number, tolerance: number): void {
  expect(Math.abs(actual.value - expected), `${actual.text}, not ${expected}`).toBeLessThanOrEqual(tolerance);
}
export const percent = (of: number): number => Math.abs(of) * 0.02;

export const inColumn = (column: string, id: string): Record<string, string> =>
  Object.fromEntries(typedDriver(id).map((text, index) => [`${column}${4 + index}`, text]));
export const pair = (woofer: string, tweeter: string): Record<string, string> => ({
  ...inColumn('B', woofer),
  ...inColumn('C', tweeter),
});
