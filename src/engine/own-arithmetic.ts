import type { FormulaTree } from './formula-tree.ts';
import type { EngineAddress } from './spots.ts';

interface State {
  readonly formulaAddress: EngineAddress;
}

/** The part of the engine that calculates a formula, as the rest of it asks it. */
interface Interpreter {
  evaluateAst(tree: FormulaTree, state: State): unknown;
  readonly dependencyGraph: { getCellValue(at: EngineAddress): unknown };
  /** A sum or difference that is less than this share of what it is made from is a rounding, and nothing. */
  readonly arithmeticHelper: { readonly actualEps: number };
}
interface Insides {
  readonly _evaluator?: { readonly interpreter?: Partial<Interpreter> };
}

/** Functions of one number, for the engine what they are here. */
const plainFunctions: Readonly<Record<string, ((value: number) => number) | undefined>> = {
  ABS: Math.abs,
  EXP: Math.exp,
  LN: Math.log,
  LOG10: Math.log10,
  SQRT: Math.sqrt,
};

/** Lets the engine reckon with plain numbers without the ways round that it takes for ranges, dates and errors: these, and what has no
 *  finite result, are left to it. */
export function reckonPlainly(engine: object): void {
  const interpreter = (engine as Insides)._evaluator?.interpreter;
  const { evaluateAst, dependencyGraph, arithmeticHelper } = interpreter ?? {};
  if (!interpreter || !evaluateAst || !dependencyGraph || typeof arithmeticHelper?.actualEps !== 'number')
    throw new Error('This version of the calculation engine calculates in a way of its own, and ours finds no place.');
  const { actualEps } = arithmeticHelper;
  const wholly = evaluateAst.bind(interpreter);
  const sum = (left: number, right: number): number => {
    const result = left + right;
    return Math.abs(result) < actualEps * Math.abs(left) ? 0 : result;
  };
  const evaluate = (tree: FormulaTree, state: State): unknown => {
    switch (tree.type) {
      case 'NUMBER':
        return tree.value === Infinity ? wholly(tree, state) : tree.value;
      case 'CELL_REFERENCE': {
        const value = dependencyGraph.getCellValue(tree.reference.toSimpleCellAddress(state.formulaAddress));
        return typeof value === 'number' ? value : wholly(tree, state);
      }
      case 'PARENTHESES':
        return evaluate(tree.expression, state);
      case 'PLUS_OP':
      case 'MINUS_OP':
      case 'TIMES_OP':
      case 'DIV_OP': {
        const left = evaluate(tree.left, state);
        const right = evaluate(tree.right, state);
        if (typeof left === 'number' && typeof right === 'number') {
          const result =
            tree.type === 'TIMES_OP'
              ? left * right
              : tree.type === 'DIV_OP'
                ? left / right
                : sum(left, tree.type === 'PLUS_OP' ? right : -right);
          // Adding 0 makes a negative zero a zero.
          if (Number.isFinite(result)) return result + 0;
        }
        return wholly({ type: tree.type, left: known(left), right: known(right) }, state);
      }
      case 'FUNCTION_CALL': {
        const [argument] = tree.args;
        const plain = plainFunctions[tree.procedureName];
        if (!plain || !argument || tree.args.length > 1 || argument.type === 'CELL_RANGE' || argument.type === 'EMPTY')
          return wholly(tree, state);
        const value = evaluate(argument, state);
        const result = typeof value === 'number' ? plain(value) : Number.NaN;
        return Number.isFinite(result) ? result + 0 : wholly({ ...tree, args: [known(value)] }, state);
      }
      default:
        return wholly(tree, state);
    }
  };
  interpreter.evaluateAst = evaluate;
}

/** Stands for what is calculated already. */
const known = (value: unknown): FormulaTree => ({ type: 'NUMBER', value: value as number });
