import { defineConfig } from 'vitest/config';
import { resolve } from 'node:path';

/** What a user goes through from beginning to end, in the built application. */
export default defineConfig({
  root: resolve(import.meta.dirname, '..'),
  cacheDir: 'node_modules/.cache/journeys',
  test: {
    include: ['tests/journeys/**/*.journey.ts'],
    globalSetup: ['.config/journeys-setup.mjs'],
    // Each file has a browser of its own, and waits most of the time.
    maxWorkers: 2,
    // Patience for machines several times slower than those we write on.
    expect: { poll: { timeout: 15_000 } },
    testTimeout: 240_000,
    hookTimeout: 240_000,
  },
});
