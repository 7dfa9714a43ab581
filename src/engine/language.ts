import { HyperFormula } from 'hyperformula';
import enGB from 'hyperformula/i18n/languages/enGB';
import type { AnyFunction } from '../../functions/define.ts';
import { engineFunctions } from '../formula/engine-functions.ts';
import { ownNames } from './plugin.ts';

/** Not to be called, but the engine's reader of formulas stands on its having a name. */
const RESERVED = 'OFFSET';

const codes = new Map<readonly AnyFunction[], string>();

/** The engine answers only to function names that a language lists, so ours lists those of the catalogue beside those that formulas may call of
 *  the engine's own. */
export function language(definitions: readonly AnyFunction[]): string {
  const known = codes.get(definitions);
  if (known !== undefined) return known;
  const code = `octavo${String(codes.size)}`;
  const own = [...definitions.map(({ name }) => name), ...ownNames];
  const functions = Object.fromEntries([...engineFunctions, RESERVED, ...own].map((name) => [name, name]));
  HyperFormula.registerLanguage(code, { ...enGB, langCode: code, functions });
  codes.set(definitions, code);
  return code;
}
