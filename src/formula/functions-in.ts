import { parser } from './parser.ts';

/** The functions that a formula calls, in capitals, each once, in the order in which they are written. */
export function functionsIn(text: string): readonly string[] {
  const found = new Set<string>();
  if (!text.startsWith('=')) return [];
  parser.parse(text).iterate({
    enter: ({ name, from, to }) => {
      if (name === 'Function') found.add(text.slice(from, to).toUpperCase());
    },
  });
  return [...found];
}
