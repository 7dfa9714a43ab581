import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, posix, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

/**
 * Who may import whom: data flows down the page, imports point only back up it. What is not named is refused. The keys
 * are layers; `files` lists layers or single files, `packages` the beginnings of package names.
 */
const layers: Record<string, { files: readonly string[]; packages: readonly string[] }> = {
  'functions/numeric': { files: ['functions'], packages: ['@stdlib/', 'pure-rand'] },
  functions: { files: ['functions'], packages: [] },
  'src/units': { files: ['functions'], packages: [] },
  'src/formula': { files: ['functions', 'src/units'], packages: ['@lezer/'] },
  'src/engine': { files: ['functions', 'src/units', 'src/formula'], packages: ['hyperformula'] },
  'src/document': { files: ['functions', 'src/units', 'src/formula', 'src/engine/types.ts'], packages: [] },
  'src/analysis': {
    files: ['functions', 'src/units', 'src/formula', 'src/engine', 'src/document'],
    packages: ['fmin'],
  },
  'src/storage': { files: ['src/document'], packages: ['idb-keyval'] },
  'src/exchange': { files: ['functions', 'src/units', 'src/formula', 'src/document'], packages: [] },
  'src/components': {
    files: ['functions', 'src/units', 'src/formula', 'src/document'],
    packages: ['lit', '@lezer/'],
  },
  'src/app': {
    files: [
      'functions',
      'src/units',
      'src/formula',
      'src/engine',
      'src/document',
      'src/analysis',
      'src/storage',
      'src/exchange',
      'src/components',
      'templates',
    ],
    packages: ['lit'],
  },
  'src/cli': {
    files: [
      'functions',
      'src/units',
      'src/formula',
      'src/engine',
      'src/document',
      'src/analysis',
      'src/storage',
      'src/exchange',
      'templates',
    ],
    packages: ['node:'],
  },
  'src/main.ts': { files: ['functions', 'src', 'templates'], packages: ['lit'] },
  templates: { files: ['src/document/types.ts'], packages: [] },
};

/** A library is touched in few files, so that it can be understood, and replaced, in one sitting. */
const touchedIn: Record<string, { files: number; of: string }> = {
  hyperformula: { files: 4, of: 'src' },
  'idb-keyval': { files: 1, of: 'src' },
  fmin: { files: 1, of: 'src' },
};

const topLevel = [
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'index.html',
  'src',
  'functions',
  'tests',
  'templates',
];
/** Made by the commands and left out of the repository. */
const made = ['node_modules', 'dist', 'coverage'];

/** Written by the grammar generator, which knows no limit of length. */
const generated = ['src/formula/parser.ts'];
const longest = 300;

const root = resolve(import.meta.dirname, '..');

function sourcesIn(folder: string): string[] {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => posix.join(folder, name.replaceAll('\\', '/')))
    .filter((name) => name.endsWith('.ts'));
}

const sources = ['functions', 'src', 'templates'].flatMap(sourcesIn);
const textOf = new Map(sources.map((source) => [source, readFileSync(join(root, source), 'utf8')]));

interface Import {
  readonly from: string;
  /** As written, without the query that tells the build how to take the file. */
  readonly named: string;
  /** The file meant, from the top of the repository; nothing for a package. */
  readonly file?: string;
}

function importsOf(source: string): Import[] {
  const text = textOf.get(source) ?? '';
  const written = ts.preProcessFile(text, true, true).importedFiles.map(({ fileName }) => fileName);
  const addressed = [...text.matchAll(/new URL\(\s*'(\.[^']+)',\s*import\.meta\.url/g)].map(([, name]) => name ?? '');
  return [...written, ...addressed].map((name) => {
    const named = name.split('?')[0] ?? name;
    return named.startsWith('.')
      ? { from: source, named, file: posix.join(posix.dirname(source), named) }
      : { from: source, named };
  });
}

const imports = sources.flatMap(importsOf);

/** The most exact layer that holds the file. */
function layerOf(file: string): string | undefined {
  return Object.keys(layers)
    .filter((layer) => isWithin(file, layer))
    .toSorted((a, b) => b.length - a.length)[0];
}

function isWithin(file: string, layer: string): boolean {
  return file === layer || file.startsWith(`${layer}/`);
}

function isPackage(name: string, allowed: string): boolean {
  return /[/:]$/.test(allowed) ? name.startsWith(allowed) : name === allowed || name.startsWith(`${allowed}/`);
}

function isAllowed({ from, named, file }: Import): boolean {
  const layer = layerOf(from);
  const rule = layer === undefined ? undefined : layers[layer];
  if (layer === undefined || rule === undefined) return false;
  if (file === undefined) return rule.packages.some((allowed) => isPackage(named, allowed));
  return isWithin(file, layer) || rule.files.some((allowed) => isWithin(file, allowed));
}

describe('the architecture', () => {
  test('there are sources to look at, and every one belongs to a layer', () => {
    expect(sources).toContain('functions/define.ts');
    expect(sources.filter((source) => layerOf(source) === undefined)).toEqual([]);
  });

  test('imports point only where the allow-list says', () => {
    const refused = imports.filter((entry) => !isAllowed(entry));
    expect(refused.map(({ from, named }) => `${from} must not import ${named}`)).toEqual([]);
  });

  test('an import names a file that is there, with its ending', () => {
    const missing = imports.filter(({ file }) => file !== undefined && !existsSync(join(root, file)));
    expect(missing.map(({ from, named }) => `${from} imports ${named}`)).toEqual([]);
  });

  test('no file leads back to itself', () => {
    expect(cycles()).toEqual([]);
  });

  test.each(Object.entries(touchedIn))('%s is touched in few files', (name, { files, of }) => {
    const touching = new Set(
      imports.filter(({ from, named }) => isWithin(from, of) && isPackage(named, name)).map(({ from }) => from),
    );
    expect([...touching].slice(files)).toEqual([]);
  });

  test(`no file is longer than ${longest} lines`, () => {
    const long = [...sources, ...sourcesIn('tests')]
      .filter((source) => !generated.includes(source))
      .map((source) => ({ source, lines: readFileSync(join(root, source), 'utf8').trimEnd().split('\n').length }))
      .filter(({ lines }) => lines > longest);
    expect(long).toEqual([]);
  });

  test('the top level stays readable', () => {
    const unknown = readdirSync(root).filter(
      (name) => !name.startsWith('.') && !topLevel.includes(name) && !made.includes(name),
    );
    expect(unknown).toEqual([]);
  });
});

/** Every circle of imports found on a walk through all files, types included. */
function cycles(): string[] {
  const next = new Map<string, string[]>();
  for (const { from, file } of imports) if (file !== undefined) next.set(from, [...(next.get(from) ?? []), file]);
  const found: string[] = [];
  const done = new Set<string>();
  const walk = (file: string, path: readonly string[]): void => {
    const start = path.indexOf(file);
    if (start >= 0) found.push([...path.slice(start), file].join(' -> '));
    if (start >= 0 || done.has(file)) return;
    for (const following of next.get(file) ?? []) walk(following, [...path, file]);
    done.add(file);
  };
  for (const source of sources) walk(source, []);
  return found;
}
