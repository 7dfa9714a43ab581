import { parseAst } from 'vite';
import { hear, isNode, nameOf, nothingSaid, type Node, type Said } from './said.ts';

/** A method, or all of a class that is no method, or a function of a module: what it says counts once it is reached. */
interface Piece extends Said {
  readonly file: string;
  readonly owner: string;
  /** Absent for the class itself, and for a function. */
  readonly method: string | undefined;
  /** What is asked of a class, as `Class.method`: by itself, which may be any that it extends or that extends it, or by its name. */
  readonly ofClasses: Set<string>;
  readonly from: number;
  readonly to: number;
}

interface Program {
  /** Modules by their files. */
  readonly sources: ReadonlyMap<string, string>;
  /** What is said elsewhere; a property that is asked for there may be one of anything. */
  readonly roots: readonly Said[];
  /** Whether the methods of a class are called by itself, by its name and by names in quotes only. */
  readonly isClosed?: (owner: string) => boolean;
  /** Methods that are named, as `Class.method`, but never called. */
  readonly unasked?: ReadonlySet<string>;
}

/** The program without those methods that nothing can reach: nowhere outside other such methods is a property of their
 *  name asked for, or their class named. A name in quotes counts as asked for. */
export function withoutUnreached({
  sources,
  roots,
  isClosed = () => false,
  unasked = new Set(),
}: Program): ReadonlyMap<string, string> {
  const all = nothingSaid();
  // JavaScript calls these of its own accord.
  for (const name of ['toString', 'toJSON', 'valueOf', 'next', 'return', 'then']) all.quoted.add(name);
  const ofClasses = new Set<string>();
  const parents = new Map<string, string>();
  /** The first of all that a class extends. */
  const first = (owner: string): string => {
    const parent = parents.get(owner);
    return parent === undefined ? owner : first(parent);
  };
  const say = (said: Said): void => {
    for (const kind of ['names', 'properties', 'quoted'] as const) for (const each of said[kind]) all[kind].add(each);
  };
  for (const { names, properties, quoted } of roots)
    say({ names, properties, quoted: new Set([...properties, ...quoted]) });
  let waiting: readonly Piece[] = [...sources].flatMap(([file, code]) => {
    const { said, pieces } = piecesOf(file, code, parents);
    say(said);
    return pieces;
  });
  const isReached = ({ owner, method }: Piece): boolean => {
    if (!all.names.has(owner)) return false;
    if (method === undefined) return true;
    if (unasked.has(`${owner}.${method}`)) return false;
    if (all.quoted.has(method) || ofClasses.has(`${first(owner)}.${method}`)) return true;
    return all.properties.has(method) && !isClosed(owner);
  };
  for (let count = -1; count !== waiting.length;) {
    count = waiting.length;
    const reached = waiting.filter(isReached);
    waiting = waiting.filter((piece) => !isReached(piece));
    for (const piece of reached) {
      say(piece);
      for (const [owner = '', method = ''] of [...piece.ofClasses].map((each) => each.split('.')))
        ofClasses.add(`${first(owner)}.${method}`);
    }
  }
  const lean = new Map(sources);
  for (const { file, method, from, to } of waiting.toSorted((a, b) => b.from - a.from)) {
    const code = lean.get(file) ?? '';
    if (method !== undefined) lean.set(file, code.slice(0, from) + code.slice(to));
  }
  return lean;
}

/** The classes and functions of a module in pieces, and what it says outside them.
 *
 * @param parents - Takes what each class extends. */
function piecesOf(
  file: string,
  code: string,
  parents: Map<string, string>,
): { readonly said: Said; readonly pieces: readonly Piece[] } {
  const said = nothingSaid();
  const pieces: Piece[] = [];
  const begin = (owner: string, method: string | undefined, { start, end }: Node): Piece => {
    const piece = { ...nothingSaid(), file, owner, method, ofClasses: new Set<string>(), from: start, to: end };
    pieces.push(piece);
    return piece;
  };
  /** Within a class, whose `this` it is. */
  const inClass = (part: unknown, by: Piece): void =>
    hear(part, by, (node) => {
      if (node.type === 'FunctionExpression' || node.type === 'FunctionDeclaration') {
        // It has a `this` of its own.
        hear([node['params'], node['body']], by);
        return true;
      }
      const asked = node['object'];
      if (node.type !== 'MemberExpression' || node['computed'] === true || !isNode(asked)) return false;
      const isItself = asked.type === 'ThisExpression' || asked.type === 'Super';
      by.ofClasses.add(`${isItself ? by.owner : nameOf(asked)}.${nameOf(node['property'])}`);
      return isItself;
    });
  const classIn = (node: Node): void => {
    const owner = nameOf(node['id']);
    const own = begin(owner, undefined, node);
    hear(node['superClass'], own);
    const parent = nameOf(node['superClass'] ?? {});
    if (parent !== '') parents.set(owner, parent);
    for (const member of (node['body'] as { readonly body: readonly Node[] }).body) {
      const isMethod = member.type === 'MethodDefinition';
      const isNamed = isMethod && member['kind'] !== 'constructor' && member['computed'] === false;
      const by = isNamed ? begin(owner, nameOf(member['key']), member) : own;
      if (member['computed'] === true) hear(member['key'], by);
      const value = member['value'] ?? member['body'];
      inClass(isMethod && isNode(value) ? [value['params'], value['body']] : value, by);
    }
  };
  hear(parseAst(code).body, said, (node) => {
    if (node.type === 'ClassDeclaration') classIn(node);
    else if (node.type === 'FunctionDeclaration')
      hear([node['params'], node['body']], begin(nameOf(node['id']), undefined, node));
    else return false;
    return true;
  });
  return { said, pieces };
}
