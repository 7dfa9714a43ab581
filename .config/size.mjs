/** Holds the built JavaScript to its budget, in gzipped kilobytes of 1000 bytes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';

const built = resolve(import.meta.dirname, '../dist');
/** Of the whole, half is the engine in its worker with the catalogue of functions, which grows with what the tool knows. */
const budget = { 'before the first grid is painted': 60, 'in all': 500 };

const manifest = JSON.parse(readFileSync(join(built, '.vite/manifest.json'), 'utf8'));
const kilobytes = (file) => gzipSync(readFileSync(join(built, file)), { level: 9 }).length / 1000;

/** The entry and what it imports statically; workers and lazy chunks are fetched after the first paint. */
function blocking(key, seen = new Set()) {
  if (seen.has(key)) return seen;
  seen.add(key);
  for (const imported of manifest[key].imports ?? []) blocking(imported, seen);
  return seen;
}

const first = [...blocking('index.html')].map((key) => manifest[key].file);
const all = readdirSync(built, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.js'));
const sum = (files) => files.reduce((total, file) => total + kilobytes(file), 0);
const measured = { 'before the first grid is painted': sum(first), 'in all': sum(all) };

for (const file of all) console.log(`${kilobytes(file).toFixed(1).padStart(8)} kB  ${file}`);
for (const [what, limit] of Object.entries(budget)) {
  const size = measured[what];
  console.log(`${size.toFixed(1).padStart(8)} kB  ${what}, of ${limit} kB`);
  if (size > limit) {
    console.error(`The JavaScript ${what} is ${(size - limit).toFixed(1)} kB above its budget of ${limit} kB.`);
    process.exitCode = 1;
  }
}
