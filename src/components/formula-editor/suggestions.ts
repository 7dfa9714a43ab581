import { fieldsOf } from '../../../functions/values/fields.ts';
import { parseAddress } from '../../formula/address.ts';
import { callAt } from '../../formula/call-at.ts';
import { engineFunctions } from '../../formula/engine-functions.ts';
import type { Functions, Scope } from '../../formula/types.ts';

export interface Suggestion {
  readonly label: string;
  /** What is put in; the label where absent. */
  readonly insert?: string;
  readonly detail?: string;
  readonly kind: 'function' | 'name' | 'sheet' | 'field' | 'choice';
}

export interface Suggestions {
  /** Where the word begins that they replace. */
  readonly from: number;
  readonly options: readonly Suggestion[];
}

const callable = (functions: Functions): readonly Suggestion[] => [
  ...[...functions.values()].map(({ name, words }) => ({
    label: name,
    insert: `${name}(`,
    detail: words?.summary ?? '',
    kind: 'function' as const,
  })),
  ...[...engineFunctions].map((name) => ({ label: name, insert: `${name}(`, kind: 'function' as const })),
];

/** What can be written at a position of a formula: functions, names, sheets, parts of a record, words of a list.
 *  @param isAsked - Asked for before a letter is there. */
export function suggestionsAt(
  text: string,
  position: number,
  scope: Scope,
  sheets: readonly { readonly name: string }[],
  isAsked = false,
): Suggestions | undefined {
  if (!text.startsWith('=')) return undefined;
  const before = text.slice(0, position);
  const choices = choicesAt(before, scope.functions);
  if (choices) return choices;
  const [whole, sheet, word = ''] = /(?:('(?:[^']|'')*'|[\p{L}_][\p{L}\p{N}_]*)!)?([\p{L}_][\p{L}\p{N}_.]*)?$/u.exec(
    before,
  ) ?? [''];
  if ((whole === '' && !isAsked) || (before.match(/"/g)?.length ?? 0) % 2 === 1) return undefined;
  // What is already whole needs no list: Enter then keeps the formula.
  if (parseAddress(word) || /^(true|false)$/i.test(word)) return undefined;
  const from = position - word.length;
  const on = sheet === undefined ? scope.sheet : scope.sheetNamed(sheet.replaceAll(/^'|'$/g, ''));
  if (on === undefined || scope.cellsNamed(on, word) !== undefined) return undefined;
  const fields = fieldsAt(word, on, scope);
  if (fields) return { from: from + word.indexOf('.') + 1, options: fields };
  const names = scope
    .namesOf(on)
    .map((name) => ({ label: name, detail: scope.cellsNamed(on, name) ?? '', kind: 'name' as const }));
  if (sheet !== undefined) return { from, options: names };
  const others = sheets.map(({ name }) => ({ label: name, insert: `${quoted(name)}!`, kind: 'sheet' as const }));
  return { from, options: [...names, ...callable(scope.functions), ...others] };
}

const quoted = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_]*$/u.test(name) ? name : `'${name.replaceAll("'", "''")}'`;

function fieldsAt(word: string, sheet: string, scope: Scope): readonly Suggestion[] | undefined {
  const dot = word.indexOf('.');
  const cell = dot > 0 ? scope.cellsNamed(sheet, word.slice(0, dot)) : undefined;
  const type = cell === undefined ? undefined : scope.typeOf(sheet, cell);
  if (type?.kind !== 'record') return undefined;
  return fieldsOf(type.record).map(({ name, summary }) => ({ label: name, detail: summary, kind: 'field' }));
}

function choicesAt(before: string, functions: Functions): Suggestions | undefined {
  const quote = /[(,;]\s*("[^"]*)$/.exec(before)?.[1];
  if (quote === undefined) return undefined;
  const from = before.length - quote.length;
  const call = callAt(before, from);
  const definition = functions.get(call?.name ?? '');
  const parameter = Object.values(definition?.parameters ?? {})[call?.argument ?? 0];
  if (!parameter || !('choice' in parameter)) return undefined;
  return { from, options: parameter.choice.map((word) => ({ label: `"${word}"`, kind: 'choice' })) };
}
