import { expect, test } from 'vitest';
import { countVerdicts, type Counts } from '../../src/document/verdicts.ts';
import { openTemplate } from '../templates/open-template.ts';

test('a verdict that cannot be given is counted as such, and not left out', async () => {
  const opened = await openTemplate('two-driver-check');
  const counts = (): Counts => countVerdicts([...opened.sheet().cells.keys()].map((cell) => opened.state(cell)));
  const { good, caution, fail, open } = counts();
  expect(open).toBe(0);
  await opened.write({ C5: 'banana' });
  const broken = counts();
  expect(broken.open).toBeGreaterThan(0);
  expect(broken.good + broken.caution + broken.fail + (broken.open ?? 0)).toBe(good + caution + fail);
});
