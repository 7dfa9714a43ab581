/** `npm run bench`: the benchmarks that need no page, then every script that measures the page. */
import './node-version.mjs';
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, root } from './install.mjs';

ensureInstalled();
const folder = join(root, 'tests/bench');
const files = existsSync(folder) ? readdirSync(folder).toSorted() : [];
const vitest = ['node_modules/vitest/vitest.mjs', 'bench', '--run', '--config', '.config/vitest.config.ts'];
const runs = [
  ...(files.some((file) => file.endsWith('.bench.ts')) ? [vitest] : []),
  ...files.filter((file) => file.endsWith('.page.mjs')).map((file) => [join('tests/bench', file)]),
];

for (const run of runs) {
  console.log(`\n━━ ${run[0].startsWith('tests') ? run[0] : 'without a page'} ━━`);
  const { status } = spawnSync(process.execPath, run, { cwd: root, stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
