import type { Plugin } from 'vite';

/** Takes the remarks and the room between rules out of the styles that stand in scripts, as is done to style sheets. */
export function leanStyles(): Plugin {
  return {
    name: 'octavo:lean-styles',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!id.includes('/src/') || id.includes('/node_modules/')) return undefined;
      return code.replaceAll(/\bcss`[^`]*`/g, lean);
    },
  };
}

const lean = (styles: string): string =>
  styles
    .replaceAll(/\/\*.*?\*\//gs, '')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/ ?([{};>]) ?/g, '$1')
    .replaceAll(';}', '}')
    .replaceAll(/([:,]) /g, '$1')
    .replace('` ', '`');
