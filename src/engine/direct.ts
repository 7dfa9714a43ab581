import { HyperFormulaEngine } from './hyperformula-engine.ts';
import type { SheetEngine } from './types.ts';

/** The engine in this thread, for the command line and for tests. */
export const createEngine = (): SheetEngine => new HyperFormulaEngine();
