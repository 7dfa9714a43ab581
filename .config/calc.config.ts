import { defineConfig } from 'vite';
import { resolve } from 'node:path';
import { leanEngine } from './lean-engine.ts';

/** The command line as one file that holds everything, the engine too: Node starts it much faster than the many files of
 *  the packages. */
export default defineConfig({
  root: resolve(import.meta.dirname, '..'),
  publicDir: false,
  plugins: [leanEngine()],
  build: {
    ssr: 'src/cli/main.ts',
    target: 'node20',
    write: false,
    rolldownOptions: { output: { entryFileNames: 'main.js', codeSplitting: false } },
  },
  ssr: { noExternal: true },
});
