import { parser } from './parser.ts';

/** A call in a formula, and which of its arguments are written: `F(1,,2)` has the first and the third. */
export interface CallIn {
  /** In capitals. */
  readonly name: string;
  readonly given: readonly boolean[];
}

/** Every call of a formula, outer ones before those inside them; nothing for what is no formula. */
export function callsIn(text: string): readonly CallIn[] {
  const found: CallIn[] = [];
  if (!text.startsWith('=')) return [];
  parser.parse(text).iterate({
    enter: ({ name, node }) => {
      if (name !== 'Call') return;
      const called = node.getChild('Function');
      const given: boolean[] = [false];
      for (let part = node.getChild('Arguments')?.firstChild; part; part = part.nextSibling) {
        if (part.name === 'Separator') given.push(false);
        else if (part.name === 'Argument') given[given.length - 1] = true;
      }
      if (called) found.push({ name: text.slice(called.from, called.to).toUpperCase(), given });
    },
  });
  return found;
}
