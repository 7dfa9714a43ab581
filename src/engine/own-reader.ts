import { shapeOf, type SheetNumber } from './formula-cells.ts';
import { FormulaReader } from './formula-reader.ts';
import type { FormulaTree } from './formula-tree.ts';
import type { EngineAddress } from './spots.ts';

/** The part of the engine that reads formulas, as the rest of it asks it. */
interface EngineReader {
  parse(text: string, at: EngineAddress): Read;
  /** What the engine keeps of a formula, to bring it back with an undo: a text that stands for its tree, in ours the tree. */
  computeHashFromAst(tree: FormulaTree): FormulaTree;
  fetchCachedResult(tree: FormulaTree): Read;
  rememberNewAst(tree: FormulaTree): FormulaTree;
}
interface Read {
  readonly ast: FormulaTree;
  readonly errors: readonly never[];
  readonly dependencies: unknown;
  readonly hasVolatileFunction: boolean;
  readonly hasStructuralChangeFunction: boolean;
}
interface Insides {
  readonly _parser?: Partial<EngineReader> & {
    readonly resolveSheetReference?: SheetNumber;
    /** Notes a tree under a name, with what it depends on. */
    readonly cache?: {
      set(
        name: string,
        tree: FormulaTree,
      ): Omit<Read, 'errors' | 'dependencies'> & { readonly relativeDependencies: unknown };
    };
  };
}

const replaced = ['parse', 'computeHashFromAst', 'fetchCachedResult', 'rememberNewAst'] as const;

/** So many shapes of formulas are kept; most sheets have a few hundred. */
const MOST_SHAPES = 4000;

/** Puts our reader in the place of the engine's own: what it is given was read once, when it was typed. Formulas that say the
 *  same of where they stand, as in a column filled down, share one tree. */
export function readOwnFormulas(engine: object): void {
  const { _parser: parser } = engine as Insides;
  const { resolveSheetReference: sheetNumber, cache } = parser ?? {};
  if (!parser || !sheetNumber || !cache || replaced.some((name) => !parser[name]))
    throw new Error(
      'This version of the calculation engine reads formulas in a way of its own, and ours finds no place.',
    );
  const reader = new FormulaReader(sheetNumber);
  const known = new Map<string, Read>();
  const withDependencies = (tree: FormulaTree): Read => {
    const { ast, relativeDependencies, hasVolatileFunction, hasStructuralChangeFunction } = cache.set('', tree);
    return { ast, errors: [], dependencies: relativeDependencies, hasVolatileFunction, hasStructuralChangeFunction };
  };
  const ours: EngineReader = {
    parse(text, at) {
      const shape = shapeOf(text, at, sheetNumber);
      const read = known.get(shape) ?? withDependencies(reader.read(text, at));
      if (known.size >= MOST_SHAPES) known.clear();
      known.set(shape, read);
      return read;
    },
    computeHashFromAst: (tree) => tree,
    fetchCachedResult: withDependencies,
    rememberNewAst: (tree) => tree,
  };
  Object.assign(parser, ours);
}
