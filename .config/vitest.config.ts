import { defineConfig } from 'vitest/config';
import { resolve } from 'node:path';
import { pairedLines } from './paired-lines.ts';

/** Everything that needs no page: functions, engine, document, storage, exchange, command line. */
export default defineConfig({
  root: resolve(import.meta.dirname, '..'),
  cacheDir: 'node_modules/.cache/vitest',
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'], reporters: [pairedLines] },
    setupFiles: ['.config/same-samples.ts'],
    testTimeout: 20_000,
    // Its files name one another without their endings, which Node does not read.
    server: { deps: { inline: ['fmin'] } },
  },
});
