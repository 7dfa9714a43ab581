/** Component tests in a real browser. Vite stands in front of the runner, so that tests see what the application sees. */
import { chromeLauncher } from '@web/test-runner-chrome';
import { defaultReporter } from '@web/test-runner';
import { rm, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { createServer } from 'vite';
import { findBrowser } from './packaged-browser.mjs';

const root = resolve(import.meta.dirname, '..');
const { executablePath, args, env } = await findBrowser();

/** What Vite puts in front of modules that import styles, without its wish to be told of changes. */
const quietClient = `
export const createHotContext = () => ({ accept() {}, prune() {}, dispose() {}, on() {}, data: {} });
export const injectQuery = (url) => url;
export const updateStyle = (id, text) => {
  const style = document.createElement('style');
  style.dataset.viteDevId = id;
  style.textContent = text;
  document.head.append(style);
};
export const removeStyle = () => {};
`;

/** The runner serves its own pages and the test framework; everything else is a module, a style or a file for Vite. */
const belongsToRunner = (path) =>
  path === '/' || path.startsWith('/__web-') || path.startsWith('/__wds-') || path.startsWith('/node_modules/@web/');

/** Prepared anew for every run: a package that a kept copy lacks would make Vite reload the page in the middle of a test. */
const cacheDir = resolve(root, `node_modules/.cache/browser-tests/${process.pid}`);

const vite = await createServer({
  root,
  configFile: false,
  publicDir: false,
  appType: 'custom',
  logLevel: 'warn',
  cacheDir,
  server: { middlewareMode: true, hmr: false, ws: false, watch: null },
  worker: { format: 'es' },
  // Every package is found before the first test.
  optimizeDeps: {
    entries: ['tests/browser/**/*.test.ts', 'src/**/*.ts', '!src/cli/**'],
    include: ['@open-wc/testing'],
    exclude: ['@web/test-runner-commands'],
  },
  plugins: [
    {
      name: 'octavo:leave-to-runner',
      enforce: 'pre',
      resolveId: (id) => (id.startsWith('/__web-') ? { id, external: true } : undefined),
    },
    {
      name: 'octavo:quiet-client',
      enforce: 'pre',
      load: (id) => (id.endsWith('/vite/dist/client/client.mjs') ? quietClient : undefined),
    },
  ],
});

async function throughVite(context, next) {
  if (belongsToRunner(context.path)) return next();
  context.respond = false;
  const handled = await new Promise((settle, reject) => {
    context.res.once('close', () => settle(true));
    vite.middlewares(context.req, context.res, (error) => (error ? reject(error) : settle(false)));
  });
  if (handled) return undefined;
  context.respond = true;
  return next();
}

const testsIn = (suite) => [...suite.tests, ...suite.suites.flatMap(testsIn)];
const testsOf = ({ testResults }) => (testResults ? testsIn(testResults) : []);
const hasFailed = (test) => !test.passed && !test.skipped;

/** Leaves the numbers of passed and failed tests for the closing line of `npm test`. */
function counter(path) {
  return {
    async onTestRunFinished({ sessions }) {
      const all = [...sessions];
      const tests = all.flatMap(testsOf);
      // A file that could not be loaded, or a page that broke, fails without a failed test.
      const broken = all.filter((session) => !session.passed && !testsOf(session).some(hasFailed)).length;
      const passed = tests.filter((test) => test.passed && !test.skipped).length;
      const failed = tests.filter(hasFailed).length;
      await writeFile(path, JSON.stringify({ passed, failed: failed + broken }));
    },
  };
}

const counts = process.env['OCTAVO_COUNTS'];

export default {
  rootDir: root,
  files: ['tests/browser/**/*.test.ts'],
  nodeResolve: false,
  concurrency: 2,
  browserStartTimeout: 60_000,
  testsStartTimeout: 60_000,
  testsFinishTimeout: 120_000,
  browsers: [chromeLauncher({ launchOptions: { executablePath, args, env, headless: 'shell' } })],
  testFramework: { config: { timeout: 10_000 } },
  filterBrowserLogs: ({ args }) => !String(args[0]).startsWith('Lit is in dev mode'),
  middleware: [throughVite],
  reporters: [defaultReporter({ reportTestProgress: process.stdout.isTTY }), ...(counts ? [counter(counts)] : [])],
  plugins: [
    {
      name: 'octavo:close-vite',
      async serverStop() {
        await vite.close();
        await rm(cacheDir, { recursive: true, force: true });
      },
    },
  ],
};
