import type { FormulaNode } from './tree.ts';
import type { CellType, Finding, Reference, Scope } from './types.ts';

/** A part of a formula: what the engine is told, and what it is. */
export interface Part {
  readonly text: string;
  readonly type: CellType;
  /** The value of a number that stands there as such. */
  readonly constant?: number;
  readonly node: FormulaNode;
}

/** One formula being compiled. */
export interface Compilation {
  readonly source: string;
  readonly scope: Scope;
  readonly references: Reference[];
  /** Compiles a part below. */
  part(node: FormulaNode): Part;
  slice(node: FormulaNode): string;
  report(level: Finding['level'], node: FormulaNode, message: string, fix?: string): void;
}

/** An argument as it stands between separators; `undefined` where it is left out. */
export type Slot = FormulaNode | undefined;
