import { HyperFormula } from 'hyperformula';
import enGB from 'hyperformula/i18n/languages/enGB';
import type { AnyFunction } from '../../functions/define.ts';
import { ownNames } from './plugin.ts';

const codes = new Map<readonly AnyFunction[], string>();

/** The engine answers only to function names that a language lists, so ours lists its own beside the English ones. */
export function language(definitions: readonly AnyFunction[]): string {
  const known = codes.get(definitions);
  if (known !== undefined) return known;
  const code = `octavo${String(codes.size)}`;
  const own = [...definitions.map(({ name }) => name), ...ownNames];
  const functions = { ...enGB.functions, ...Object.fromEntries(own.map((name) => [name, name])) };
  HyperFormula.registerLanguage(code, { ...enGB, langCode: code, functions });
  codes.set(definitions, code);
  return code;
}
