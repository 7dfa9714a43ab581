import { parseAddress } from '../formula/address.ts';
import type { Refusal } from './command.ts';

const LONGEST = 60;

/** Why cells cannot be called that; nothing where they can. */
export function checkName(name: string): Refusal | undefined {
  if (name === '') return { refused: 'A name needs at least one character.' };
  if (name.length > LONGEST) {
    return { refused: `A name has at most ${LONGEST} characters; "${name}" has ${name.length}.` };
  }
  if (/^\p{N}/u.test(name)) return { refused: `A name begins with a letter, not with a figure: "${name}".` };
  const odd = /[^\p{L}\p{N}_]/u.exec(name)?.[0];
  if (odd !== undefined) {
    const shown = /\s/.test(odd) ? 'a space' : `"${odd}"`;
    return { refused: `A name holds letters, figures and _ only; "${name}" holds ${shown}.` };
  }
  if (parseAddress(name)) return { refused: `"${name}" is the address of a cell; choose a name such as ${name}_1.` };
  if (/^(true|false)$/i.test(name)) return { refused: `"${name}" already means a truth; choose another name.` };
  return undefined;
}
