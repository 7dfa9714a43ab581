import type { Plugin } from 'vite';

const HELPER = '\0vite/preload-helper.js';

/** Fetches ahead, once, the scripts that a script imports which is fetched when it is asked for. */
const code = `
const ahead = new Set();
export const __vitePreload = (ask, files, from) => {
  for (const file of files ?? []) {
    const { href } = new URL(file, from);
    if (ahead.has(href)) continue;
    ahead.add(href);
    document.head.append(Object.assign(document.createElement('link'), { rel: 'modulepreload', crossOrigin: '', href }));
  }
  return ask();
};`;

/** Puts a few lines in the place of what the build has for this, which also waits for style sheets and tells of failures:
 *  the page has its one style sheet from the start, and whoever asks hears of the failure. */
export function leanPreload(): Plugin {
  return {
    name: 'octavo:lean-preload',
    apply: 'build',
    enforce: 'pre',
    load: (id) => (id === HELPER ? code : undefined),
    generateBundle(_, bundle) {
      for (const each of Object.values(bundle)) {
        if (each.type === 'chunk' && each.isDynamicEntry && (each.viteMetadata?.importedCss.size ?? 0) > 0)
          this.error(`${each.fileName} has a style sheet of its own, which nothing would fetch with it.`);
      }
    },
  };
}
