/** Installs the packages of the lock file when they are missing or others than it names. Needs nothing but Node and npm. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '..');

const lock = join(root, 'package-lock.json');
const present = join(root, 'node_modules/.package-lock.json');

/** Compares versions, not dates: a fresh checkout gives every file the same date. */
function isInstalled() {
  if (!existsSync(present)) return false;
  const read = (path) => JSON.parse(readFileSync(path, 'utf8')).packages;
  const installed = read(present);
  return Object.entries(read(lock)).every(
    ([path, { version, optional, peer }]) => path === '' || optional || peer || installed[path]?.version === version,
  );
}

/** Speaks on the error stream only, so that what a command prints stays its own. */
export function ensureInstalled() {
  if (isInstalled()) return;
  console.error('Installing the packages Octavo is built with (npm ci); this takes a minute the first time.');
  const script = process.env['npm_execpath'];
  const [command, first] = script?.endsWith('npm-cli.js') ? [process.execPath, [script]] : ['npm', []];
  const { status } = spawnSync(command, [...first, 'ci', '--include=dev', '--no-fund', '--no-audit'], {
    cwd: root,
    stdio: ['ignore', process.stderr, process.stderr],
    shell: command === 'npm' && process.platform === 'win32',
  });
  if (status === 0) return;
  console.error(
    'The packages could not be installed: see the message of npm above. A network connection is needed once.',
  );
  process.exit(1);
}
