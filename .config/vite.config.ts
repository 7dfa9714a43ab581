import { defineConfig, type Plugin } from 'vite';
import { resolve } from 'node:path';
import { chunkGroups } from './chunk-groups.ts';
import { leanBessel } from './lean-bessel.ts';
import { leanEngine } from './lean-engine.ts';
import { leanParser } from './lean-parser.ts';
import { leanPreload } from './lean-preload.ts';
import { leanStyles } from './lean-styles.ts';
import { leanTemplates } from './lean-templates.ts';
import { leanWords } from './lean-words.ts';
import { licences } from './licences.ts';
import { offlineCopy } from './offline-copy.ts';
import { sharedChunks } from './shared-chunks.ts';

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

/** The page must never wait for the formula engine: nothing that the page fetches may lead to it, only the worker does. */
const engineStaysInWorker: Plugin = {
  name: 'octavo:engine-stays-in-worker',
  apply: 'build',
  generateBundle(_, bundle) {
    const fetched = new Set(
      Object.values(bundle).flatMap((each) =>
        each.type === 'chunk' && each.facadeModuleId?.endsWith('index.html') ? [each.fileName] : [],
      ),
    );
    for (const name of fetched) {
      const chunk = bundle[name];
      if (chunk?.type !== 'chunk') continue;
      const engine = chunk.moduleIds.find((id) => id.includes('/node_modules/hyperformula/'));
      if (engine) this.error(`${name} contains ${engine}: only the worker may import the engine.`);
      for (const next of [...chunk.imports, ...chunk.dynamicImports]) fetched.add(next);
    }
    if (fetched.size === 0) this.error('The page is not among what was built.');
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
    plugins: [
      policy,
      leanBessel(),
      leanEngine(),
      leanParser(),
      leanPreload(),
      leanStyles(),
      leanTemplates(),
      leanWords(),
      sharedChunks(),
      chunkGroups(),
      engineStaysInWorker,
      licences(),
      offlineCopy(),
    ],
    build: {
      target: 'es2022',
      // No getter does anything but give.
      rolldownOptions: { treeshake: { propertyReadSideEffects: false } },
      // What browsers of that year cannot fetch ahead, they fetch when it is asked for.
      modulePreload: { polyfill: false },
      manifest: true,
      // Fonts and icons stay files: the policy above lets no font come from a data address.
      assetsInlineLimit: 0,
      chunkSizeWarningLimit: 1000,
      reportCompressedSize: false,
    },
  };
});
