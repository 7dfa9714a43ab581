/** `npm start`: installs what is missing, builds, and serves the application on this machine only. */
import './node-version.mjs';
import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { buildApplication, serveApplication } = await import('./application.mjs');

await buildApplication();
const { address } = await serveApplication({ port: 4173 });
console.log(`\nOctavo is ready at ${address}\nPress Ctrl+C to stop it.`);
