/** `npm run reference`: writes every function with its sources, witnesses and disagreements to dist/reference.md. */
import './node-version.mjs';
import { createServer } from 'vite';
import { ensureInstalled, root } from './install.mjs';

ensureInstalled();
process.chdir(root);
const server = await createServer({
  root,
  configFile: false,
  logLevel: 'error',
  appType: 'custom',
  cacheDir: 'node_modules/.cache/reference',
  optimizeDeps: { noDiscovery: true },
  server: { middlewareMode: true, hmr: false, ws: false, watch: null },
});
try {
  await server.ssrLoadModule('/tests/witnesses/print-page.ts');
  console.log('dist/reference.md');
} finally {
  await server.close();
}
