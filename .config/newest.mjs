import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './install.mjs';

/** The latest change, in milliseconds, of the named files and of all files in the named folders. */
export function newest(paths) {
  const times = paths
    .map((path) => join(root, path))
    .filter((path) => existsSync(path))
    .map(changed);
  return Math.max(0, ...times);
}

function changed(path) {
  const entry = statSync(path);
  if (!entry.isDirectory()) return entry.mtimeMs;
  return Math.max(entry.mtimeMs, ...readdirSync(path).map((name) => changed(join(path, name))));
}
