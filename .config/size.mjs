/** Holds the built JavaScript to its budget, in gzipped kilobytes of 1000 bytes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';

const built = resolve(import.meta.dirname, '../dist');
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

/** The tools beside the sheet: what asks it backwards, the shortlist, the shelf, the review. */
const tools = [
  'src/analysis/worker.ts',
  'src/app/ask/ask-page.ts',
  'src/app/shortlist/shortlist-page.ts',
  'src/app/pages/shelf-page.ts',
  'src/app/pages/review-page.ts',
];
const entries = Object.keys(manifest).filter((key) => manifest[key].isEntry || manifest[key].isDynamicEntry);
const forTools = new Set(filesOf(tools));
for (const file of filesOf(entries.filter((key) => !tools.includes(key)))) forTools.delete(file);

/** Each with all of those above. */
const budget = [
  { name: 'before the first grid is painted', of: filesOf(['index.html']), limit: 60 },
  {
    name: 'with what else is fetched of its own accord: the engine, the catalogue, the editor, the plots',
    of: filesOf(['index.html', 'src/app/after-first-paint.ts', 'src/engine/worker.ts']),
    limit: 272,
  },
  {
    name: 'the whole calculation sheet, with what it opens when it is asked for: guide, gallery, forms, files, tour',
    of: all.filter((file) => !forTools.has(file)),
    limit: 336,
  },
  { name: 'all, with the tools beside it: questions, shortlist, shelf, review', of: all, limit: 415 },
];
const data = files.filter((file) => /^assets.*\.json$/.test(file));
const sum = (files) => files.reduce((total, file) => total + kilobytes(file), 0);
for (const file of all) console.log(`${kilobytes(file).toFixed(1).padStart(8)} kB  ${file}`);
for (const { name, of, limit } of budget) {
  const size = sum(of);
  console.log(`${size.toFixed(1).padStart(8)} kB  ${name}, of ${limit} kB`);
  if (size > limit) {
    console.error(`The JavaScript of “${name}” is ${(size - limit).toFixed(1)} kB above its budget of ${limit} kB.`);
    process.exitCode = 1;
  }
}
console.log(
  `${sum(data).toFixed(1).padStart(8)} kB  of data beside it: the starter sheets, and what is said of functions`,
);
