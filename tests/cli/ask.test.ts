import { expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { run } from '../../src/cli/run.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { templates } from '../../templates/index.ts';

async function outcome(...given: string[]): Promise<{ status: number; out: string; error: string }> {
  const out: string[] = [];
  const error: string[] = [];
  const status = await run(given, {
    out: (text) => out.push(text),
    error: (text) => error.push(text),
    read: () => Promise.resolve(undefined),
    newEngine: createEngine,
    catalogue,
    templates: new Map(templates.map(({ id, content }) => [id, content])),
  });
  return { status, out: out.join('\n'), error: error.join('\n') };
}

const box = 'closed-box-bench';

test('a value is sought in words and by flags alike', async () => {
  const words = await outcome(box, 'seek', '--ask', 'which litres give Qtc 0.707?');
  const flags = await outcome(box, 'seek', '--input', 'Volume', '--result', 'Qtc', '--target', '0.707');
  const found = (text: string): string[] =>
    (JSON.parse(text) as { found: { set: { text: string } }[] }).found.map(({ set }) => set.text);
  expect(found(words.out)).toEqual(found(flags.out));
  expect(found(words.out)).toHaveLength(1);
});

test('a sweep, a scatter and what drives a result come as JSON', async () => {
  const sweep = await outcome(
    box,
    'sweep',
    '--input=Volume',
    '--from',
    '5 L',
    '--to',
    '20 L',
    '--steps',
    '4',
    '--result',
    'Qtc',
  );
  expect(JSON.parse(sweep.out)).toMatchObject({
    values: [0.005, 0.01, 0.015, 0.02].map((value) => expect.closeTo(value, 12) as number),
  });
  const scatter = await outcome(
    box,
    'scatter',
    '--spread',
    'Woofer=cms 0.1',
    '--spread',
    'Volume=0.02',
    '--result',
    'Qtc',
    '--runs',
    '20',
  );
  expect(JSON.parse(scatter.out)).toMatchObject({ runs: 20, seed: 1, isCompiled: true });
  const drives = await outcome(box, 'drives', '--result', 'Qtc');
  expect(JSON.parse(drives.out)).toMatchObject({ result: { name: 'Qtc' } });
});

test.each([
  [[box, 'seek', '--sideways'], 'does not take --sideways'],
  [[box, 'seek', '--input', 'Volume'], 'wants --target'],
  [[box, 'seek', '--ask', 'which bananas give Qtc 1?'], 'No input that fits'],
  [[box, 'sweep', '--input', 'Volume', '--from', 'low', '--to', '1 L', '--result', 'Qtc'], 'is no quantity'],
  [[box, 'scatter', '--spread', 'Woofer=luck 1', '--result', 'Qtc'], 'names no causes'],
  [['none', 'drives', '--result', 'Qtc'], 'There is no file'],
])('%j is refused with the reason', async (given, reason) => {
  const { status, error } = await outcome(...given);
  expect(status).toBe(1);
  expect(error).toContain(reason);
});
