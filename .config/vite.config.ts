import { defineConfig, type Plugin } from 'vite';
import { resolve } from 'node:path';
import { licences } from './licences.ts';
import { offlineCopy } from './offline-copy.ts';

/** What a built page may load: its own files and nothing else. A frame-ancestors rule cannot stand in a meta tag. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Only built pages carry the policy: the development server needs inline styles. */
const policy: Plugin = {
  name: 'octavo:content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
      injectTo: 'head-prepend',
    },
  ],
};

const { collect, emit } = licences();

/** The page must never wait for the formula engine: it belongs to the worker, which is bundled apart from these chunks. */
const engineStaysInWorker: Plugin = {
  name: 'octavo:engine-stays-in-worker',
  apply: 'build',
  generateBundle(_, bundle) {
    for (const chunk of Object.values(bundle)) {
      const engine = chunk.type === 'chunk' && chunk.moduleIds.find((id) => id.includes('/node_modules/hyperformula/'));
      if (engine) this.error(`${chunk.fileName} contains ${engine}: only the worker may import the engine.`);
    }
  },
};

export default defineConfig(({ command }) => {
  // Journeys build inside a test runner, which would otherwise make this a development build.
  if (command === 'build') process.env['NODE_ENV'] = 'production';
  return {
    root: resolve(import.meta.dirname, '..'),
    base: './',
    publicDir: false,
    cacheDir: 'node_modules/.cache/vite',
    plugins: [policy, engineStaysInWorker, collect(), emit, offlineCopy()],
    worker: { format: 'es', plugins: () => [collect()] },
    build: {
      target: 'es2022',
      manifest: true,
      // Fonts and icons stay files: the policy above lets no font come from a data address.
      assetsInlineLimit: 0,
      chunkSizeWarningLimit: 1000,
      reportCompressedSize: false,
    },
  };
});
