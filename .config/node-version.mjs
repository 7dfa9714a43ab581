/** Stops with a plain sentence on a Node that is too old; written so that an old Node can read it. */
import { readFileSync } from 'node:fs';

const { engines } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
const wanted = engines.node.replace('>=', '').split('.').map(Number);
const present = process.versions.node.split('.').map(Number);

if (present[0] < wanted[0] || (present[0] === wanted[0] && present[1] < (wanted[1] || 0))) {
  console.error(
    `Octavo needs Node ${engines.node.replace('>=', '')} or later, but this is Node ${process.versions.node}.`,
  );
  console.error('Install a current Node from https://nodejs.org and run the command again.');
  process.exit(1);
}
