/** What stands for the syntax trees of the parser's package in what is built: as much of them as a walk through a formula
 *  needs. Nothing is parsed anew in parts, and no node has properties. */

export interface NodeType {
  readonly name: string;
  readonly isTop: boolean;
  readonly isError: boolean;
  /** A repetition: the parser takes any number of those in one go. */
  readonly isAnonymous: boolean;
}

export interface TreeNode {
  readonly type: NodeType;
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** From the last to the first, as they are read. */
  readonly backwards: readonly TreeNode[];
}

/** Goes backwards through what the parser has written: each node behind those in it. */
interface Cursor {
  readonly id: number;
  readonly start: number;
  readonly end: number;
  /** Of the node and all in it, in numbers of the buffer; below zero for what is no node. */
  readonly size: number;
  readonly pos: number;
  next(): void;
}

interface Written {
  readonly buffer: Cursor;
  readonly nodeSet: NodeSet;
  readonly topID: number;
  readonly length: number;
  /** From here on they are repetitions, which are no nodes. */
  readonly minRepeatType: number;
}

interface Walk {
  enter(node: TreeNode): void;
  leave(node: TreeNode): void;
}

export class Tree {
  readonly #top: TreeNode;

  constructor(top: TreeNode) {
    this.#top = top;
  }

  static build({ buffer, nodeSet, topID, length, minRepeatType }: Written): Tree {
    const nodeOf = (id: number, from: number, to: number, backwards: readonly TreeNode[]): TreeNode => {
      const type = nodeSet.types[id] as NodeType;
      return { type, name: type.name, from, to, backwards };
    };
    const read = (until: number): readonly TreeNode[] => {
      const nodes: TreeNode[] = [];
      while (buffer.pos > until) {
        const { id, start, end, size, pos } = buffer;
        buffer.next();
        if (size < 0) continue;
        const inside = read(pos - size);
        if (id >= minRepeatType) nodes.push(...inside);
        else nodes.push(nodeOf(id, start, end, inside));
      }
      return nodes;
    };
    return new Tree(nodeOf(topID, 0, length, read(0)));
  }

  iterate({ enter, leave }: Walk): void {
    const visit = (node: TreeNode): void => {
      enter(node);
      for (const each of node.backwards.toReversed()) visit(each);
      leave(node);
    };
    visit(this.#top);
  }
}

/** A parse under way. */
interface Parse {
  advance(): Tree | null;
}

interface Input {
  readonly length: number;
  chunk(from: number): string;
  read(from: number, to: number): string;
}

export abstract class Parser {
  abstract createParse(
    input: Input,
    fragments: readonly never[],
    ranges: readonly { readonly from: number; readonly to: number }[],
  ): Parse;

  parse(text: string): Tree {
    const { length } = text;
    const input = {
      length,
      lineChunks: false,
      chunk: (from: number) => text.slice(from),
      read: (from: number, to: number) => text.slice(from, to),
    };
    const parse = this.createParse(input, [], [{ from: 0, to: length }]);
    let done: Tree | null;
    do done = parse.advance();
    while (!done);
    return done;
  }
}

export class NodeSet {
  readonly types: readonly NodeType[];

  constructor(types: readonly NodeType[]) {
    this.types = types;
  }
}

export const NodeType = {
  define: ({ name, top = false, error = false }: { name?: string; top?: boolean; error?: boolean }): NodeType => ({
    name: name ?? '',
    isTop: top,
    isError: error,
    isAnonymous: name === undefined,
  }),
};
export const NodeProp = {};
export const DefaultBufferLength = 1024;
