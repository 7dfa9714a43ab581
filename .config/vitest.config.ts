import { defineConfig } from 'vitest/config';
import { resolve } from 'node:path';
import { pairedLines } from './paired-lines.ts';

/** Everything that needs no page: functions, engine, document, storage, exchange, command line. */
export default defineConfig(({ mode }) => ({
  root: resolve(import.meta.dirname, '..'),
  cacheDir: 'node_modules/.cache/vitest',
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'], reporters: [pairedLines] },
    setupFiles: ['.config/same-samples.ts'],
    testTimeout: 20_000,
    // Files share what they import, which is much, and none leaves anything behind in it. What is timed begins anew.
    isolate: mode === 'benchmark',
    // By itself it leaves one core idle, of two that is half.
    maxWorkers: mode === 'benchmark' ? 1 : '100%',
    // Its files name one another without their endings, which Node does not read.
    server: { deps: { inline: ['fmin'] } },
  },
}));
