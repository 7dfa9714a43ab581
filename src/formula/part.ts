import type { SyntaxNode } from '@lezer/common';
import type { CellType, Finding, Reference, Scope } from './types.ts';

/** A part of a formula: what the engine is told, and what it is. */
export interface Part {
  readonly text: string;
  readonly type: CellType;
  /** The value of a number that stands there as such. */
  readonly constant?: number;
  readonly node: SyntaxNode;
}

/** One formula being compiled. */
export interface Compilation {
  readonly source: string;
  readonly scope: Scope;
  readonly references: Reference[];
  /** Compiles a part below. */
  part(node: SyntaxNode): Part;
  slice(node: SyntaxNode): string;
  report(level: Finding['level'], node: SyntaxNode, message: string, fix?: string): void;
}

/** An argument as it stands between separators; `undefined` where it is left out. */
export type Slot = SyntaxNode | undefined;

/** All nodes directly below, punctuation included. */
export function childrenOf(node: SyntaxNode): SyntaxNode[] {
  const children: SyntaxNode[] = [];
  for (let child = node.firstChild; child; child = child.nextSibling) children.push(child);
  return children;
}
