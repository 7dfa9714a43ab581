/** Holds the built JavaScript to its budget, in gzipped kilobytes of 1000 bytes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';

const built = resolve(import.meta.dirname, '../dist');
/** What is fetched of its own accord, and then all that there is: pages that are fetched when they are asked for included. */
const budget = [
  { name: 'before the first grid is painted', of: ['index.html'], limit: 60 },
  {
    name: 'with the engine, the catalogue, the editor and the plots',
    of: ['index.html', 'src/app/after-first-paint.ts', 'src/engine/worker.ts'],
    limit: 285,
  },
  { name: 'in all', limit: 430 },
];

const manifest = JSON.parse(readFileSync(join(built, '.vite/manifest.json'), 'utf8'));
const kilobytes = (file) => gzipSync(readFileSync(join(built, file)), { level: 9 }).length / 1000;

/** A part and what it imports statically. */
function withImports(key, seen = new Set()) {
  if (seen.has(key)) return seen;
  seen.add(key);
  for (const imported of manifest[key].imports ?? []) withImports(imported, seen);
  return seen;
}

const filesOf = (keys) => [...new Set(keys.flatMap((key) => [...withImports(key)]))].map((key) => manifest[key].file);
const files = readdirSync(built, { recursive: true, encoding: 'utf8' });
const all = files.filter((file) => file.endsWith('.js'));
const data = files.filter((file) => /^assets.*\.json$/.test(file));
const sum = (files) => files.reduce((total, file) => total + kilobytes(file), 0);
for (const file of all) console.log(`${kilobytes(file).toFixed(1).padStart(8)} kB  ${file}`);
for (const { name, of, limit } of budget) {
  const size = sum(of ? filesOf(of) : all);
  console.log(`${size.toFixed(1).padStart(8)} kB  ${name}, of ${limit} kB`);
  if (size > limit) {
    console.error(`The JavaScript ${name} is ${(size - limit).toFixed(1)} kB above its budget of ${limit} kB.`);
    process.exitCode = 1;
  }
}
console.log(
  `${sum(data).toFixed(1).padStart(8)} kB  of data beside it: the starter sheets, and what is said of functions`,
);
