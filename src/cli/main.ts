import { readFile } from 'node:fs/promises';
import { catalogue } from '../../functions/index.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };
import { templates } from '../../templates/index.ts';
import { createEngine } from '../engine/direct.ts';
import { run } from './run.ts';

/** Nothing where there is no such file. */
async function read(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === 'ENOENT' || code === 'ENOTDIR') return undefined;
    throw new Error(`"${path}" ${code === 'EISDIR' ? 'is a folder: name a file in it' : 'cannot be read'}.`, {
      cause: error,
    });
  }
}

try {
  process.exitCode = await run(process.argv.slice(2), {
    out: (text) => console.log(text),
    error: (text) => console.error(text),
    read,
    newEngine: createEngine,
    catalogue,
    drivers,
    templates: new Map(templates.map(({ id, content }) => [id, content])),
  });
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}
