import { parseAst } from 'vite';

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [part: string]: unknown;
}
/** A method, or all of a class that is no method: what it says counts once it is reached. */
interface Piece {
  readonly file: string;
  readonly owner: string;
  /** Absent for the class itself. */
  readonly name: string | undefined;
  readonly words: ReadonlySet<string>;
  readonly from: number;
  readonly to: number;
}

/** The program without those methods that nothing can reach: nowhere outside other such methods is their name said, or
 *  that of their class. A name that is said as anything else, as a property or in quotes, counts as a call.
 *
 * @param sources - Modules by their files.
 * @param roots - What is said elsewhere. */
export function withoutUnreached(
  sources: ReadonlyMap<string, string>,
  roots: Iterable<string>,
): { readonly sources: ReadonlyMap<string, string>; readonly said: ReadonlySet<string> } {
  // JavaScript calls these of its own accord.
  const said = new Set([...roots, 'toString', 'toJSON', 'valueOf']);
  let waiting: readonly Piece[] = [...sources].flatMap(([file, code]) => piecesOf(file, code, said));
  for (let count = -1; count !== waiting.length;) {
    count = waiting.length;
    const isReached = ({ owner, name }: Piece): boolean => said.has(owner) && (name === undefined || said.has(name));
    const reached = waiting.filter(isReached);
    waiting = waiting.filter((piece) => !isReached(piece));
    for (const { words } of reached) for (const word of words) said.add(word);
  }
  const lean = new Map(sources);
  for (const { file, name, from, to } of waiting.toSorted((a, b) => b.from - a.from)) {
    const code = lean.get(file) ?? '';
    if (name !== undefined) lean.set(file, code.slice(0, from) + code.slice(to));
  }
  return { sources: lean, said };
}

/** The classes of a module in pieces; what it says outside them is said. */
function piecesOf(file: string, code: string, said: Set<string>): Piece[] {
  const pieces: Piece[] = [];
  /** Begins a piece; gives what it will have said. */
  const piece = (owner: string, name: string | undefined, { start, end }: Node): Set<string> => {
    const words = new Set<string>();
    pieces.push({ file, owner, name, words, from: start, to: end });
    return words;
  };
  const hear = (node: unknown, words: Set<string>, owner = ''): void => {
    if (Array.isArray(node)) for (const each of node) hear(each, words, owner);
    if (!isNode(node)) return;
    if (node.type === 'ImportDeclaration' || node['declaration'] === null) return;
    if (node.type === 'ClassDeclaration') {
      const name = nameOf(node['id']);
      const own = piece(name, undefined, node);
      for (const part of [node['superClass'], node['body']]) hear(part, own, name);
    } else if (
      node.type === 'MethodDefinition' &&
      owner !== '' &&
      node['kind'] !== 'constructor' &&
      node['computed'] === false
    ) {
      hear(node['value'], piece(owner, nameOf(node['key']), node));
    } else if (node.type === 'Identifier') words.add(nameOf(node));
    else if (node.type === 'Literal') {
      if (typeof node['value'] === 'string' && /^[\w$]+$/.test(node['value'])) words.add(node['value']);
    } else for (const part of Object.values(node)) hear(part, words, owner);
  };
  hear(parseAst(code).body, said);
  return pieces;
}

/** Every word of a code but those of its comments. */
export const wordsOf = (code: string): Set<string> =>
  new Set(code.replaceAll(/\/\*[^]*?\*\/|^\s*\/\/.*$/gm, ' ').match(/[A-Za-z_$][\w$]*/g));

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;
const nameOf = (identifier: unknown): string => (identifier as { readonly name?: string }).name ?? '';
