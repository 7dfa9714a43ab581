import { HyperFormula } from 'hyperformula';
import enGB from 'hyperformula/i18n/languages/enGB';
import type { AnyFunction } from '../../functions/define.ts';
import { ownNames } from './plugin.ts';

const CODE = 'octavo';

/** The engine answers only to function names that a language lists, so ours lists its own beside the English ones. */
export function language(definitions: readonly AnyFunction[]): string {
  if (!HyperFormula.getRegisteredLanguagesCodes().includes(CODE)) {
    const own = [...definitions.map(({ name }) => name), ...ownNames];
    const functions = { ...enGB.functions, ...Object.fromEntries(own.map((name) => [name, name])) };
    HyperFormula.registerLanguage(CODE, { ...enGB, langCode: CODE, functions });
  }
  return CODE;
}
