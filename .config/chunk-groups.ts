import { resolve } from 'node:path';
import type { Plugin } from 'vite';

interface Graph {
  getModuleInfo(
    id: string,
  ): { readonly importedIds: readonly string[]; readonly dynamicallyImportedIds: readonly string[] } | null;
}

const source = (name: string): string => resolve(import.meta.dirname, `../src/${name}.ts`);
const page = source('main');
const next = source('app/after-first-paint');
const engine = source('engine/worker');
const analysis = source('analysis/worker');

/** Puts together what is fetched together, for small files compress badly: what comes before the first paint, what comes next,
 *  and what workers and the pages over the sheet share. Nothing is fetched earlier than it would be by itself. */
export function chunkGroups(): Plugin {
  return {
    name: 'octavo:chunk-groups',
    apply: 'build',
    config: () => ({
      build: {
        rolldownOptions: {
          // Each group has the imports of its modules in itself or in a group that comes before.
          output: {
            codeSplitting: {
              includeDependenciesRecursively: false,
              groups: [{ name: grouping(), debugName: 'by who fetches it' }],
            },
          },
        },
      },
    }),
  };
}

function grouping(): (id: string, graph: Graph) => string | null {
  const entries = new Map<string, ReadonlySet<string>>();
  return (id, graph) => {
    if (entries.size === 0) {
      for (const entry of [engine, analysis, page, ...fetchedFrom(page, graph)])
        entries.set(entry, importedBy(entry, graph));
    }
    const users = [...entries].flatMap(([entry, modules]) => (modules.has(id) ? [entry] : []));
    const isUsed = (...by: readonly string[]): boolean => by.some((entry) => users.includes(entry));
    if ([page, next, engine, analysis].includes(id)) return null;
    if (isUsed(page)) return isUsed(engine, analysis) ? 'base' : 'first';
    if (isUsed(next)) return isUsed(engine, analysis) ? 'formula' : 'next';
    const isOnPages = users.some((entry) => entry !== engine && entry !== analysis);
    if (isUsed(engine)) return isOnPages ? 'trade' : null;
    if (isUsed(analysis)) return isOnPages ? 'asking' : null;
    return users.length > 1 ? 'pages' : null;
  };
}

/** A module and all that its imports lead to. */
function importedBy(entry: string, graph: Graph): ReadonlySet<string> {
  const found = new Set([entry]);
  for (const id of found) for (const each of graph.getModuleInfo(id)?.importedIds ?? []) found.add(each);
  return found;
}

/** All that is fetched when it is first asked for, from there on. */
function fetchedFrom(entry: string, graph: Graph): ReadonlySet<string> {
  const fetched = new Set<string>();
  const found = new Set([entry]);
  for (const id of found) {
    const info = graph.getModuleInfo(id);
    for (const each of info?.dynamicallyImportedIds ?? []) fetched.add(each);
    for (const each of [...(info?.importedIds ?? []), ...(info?.dynamicallyImportedIds ?? [])]) found.add(each);
  }
  return fetched;
}
