import { HyperFormula } from 'hyperformula';
import type { AnyFunction } from '../../functions/define.ts';
import { followLinearly } from './own-dependencies.ts';
import { language } from './language.ts';
import { readOwnFormulas } from './own-reader.ts';
import { reckonPlainly } from './own-arithmetic.ts';
import { pluginFor, type EngineContext } from './plugin.ts';

/** An engine without sheets that knows the functions, and reads formulas as we compile them. */
export function bareEngine(definitions: readonly AnyFunction[], context: EngineContext): HyperFormula {
  const engine = HyperFormula.buildEmpty({
    licenseKey: 'gpl-v3',
    language: language(definitions),
    functionPlugins: [...HyperFormula.getAllFunctionPlugins(), pluginFor(definitions)],
    context,
    dateFormats: [],
    timeFormats: [],
    precisionRounding: 15,
    undoLimit: 1,
    maxRows: 1_048_576,
    maxColumns: 18_278,
  });
  readOwnFormulas(engine);
  reckonPlainly(engine);
  followLinearly(engine);
  return engine;
}
