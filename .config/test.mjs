/** `npm test`: installs what is missing, then runs every check in turn and stops at the first that fails. */
import './node-version.mjs';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { ensureInstalled, root } from './install.mjs';

const counts = join(root, 'node_modules/.cache/counts');
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

/** Each check is a script of package.json; those with tests leave a file of counts. */
const checks = [
  { title: 'Formatting', script: 'format:check' },
  { title: 'Lint', script: 'lint' },
  { title: 'Types', script: 'types' },
  { title: 'Types in templates', script: 'types:templates' },
  { title: 'Unused files, exports and packages', script: 'unused' },
  { title: 'Tests without a browser', script: 'test:unit', count: countVitest },
  { title: 'Tests in a browser', script: 'test:browser', count: countBrowser },
  { title: 'Build', script: 'build' },
  { title: 'Size', script: 'size' },
  { title: 'Journeys through the built application', script: 'test:journeys', count: countVitest },
];

ensureInstalled();
rmSync(counts, { recursive: true, force: true });
mkdirSync(counts, { recursive: true });

const total = { passed: 0, failed: 0 };
const stopped = checks.find((check) => !succeeds(check));
if (stopped) console.log(`\nStopped at: ${stopped.title}. Run it alone with: npm run ${stopped.script}\n`);
else console.log('\nEverything holds.\n');
console.log(`${total.passed} passed, ${total.failed} failed`);
process.exitCode = stopped ? 1 : 0;

function succeeds({ title, script, count }) {
  console.log(`\n━━ ${title} ━━`);
  const file = join(counts, `${script.replace(':', '-')}.json`);
  const reporters = count === countVitest ? ` --reporter=default --reporter=json --outputFile.json="${file}"` : '';
  const { status } = spawnSync(scripts[script] + reporters, {
    cwd: root,
    stdio: 'inherit',
    shell: true,
    env: {
      ...process.env,
      PATH: join(root, 'node_modules/.bin') + delimiter + process.env.PATH,
      OCTAVO_COUNTS: file,
    },
  });
  if (count && existsSync(file)) {
    const { passed, failed } = count(JSON.parse(readFileSync(file, 'utf8')));
    total.passed += passed;
    total.failed += failed;
  }
  return status === 0;
}

/** A file that could not even be loaded counts as one failed test. */
function countVitest({ numPassedTests, numFailedTests, testResults }) {
  const unloaded = testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && !assertionResults.length,
  );
  return { passed: numPassedTests, failed: numFailedTests + unloaded.length };
}

function countBrowser(numbers) {
  return numbers;
}
