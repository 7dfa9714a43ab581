import type { FunctionDescription, Parameter } from '../../../functions/define.ts';
import { unfetched } from '../../../functions/words.ts';
import { callsIn, type CallIn } from '../../formula/calls-in.ts';
import { show } from '../../units/show.ts';
import type { Sheet, UnitSystem } from '../types.ts';
import type { Reviewed } from './rows.ts';
import type { ReviewSource } from './types.ts';

/** What the formulas of a sheet take for granted, and the publications that they rest on. */
export function groundsOf(
  { functions, document }: Pick<Reviewed, 'functions' | 'document'>,
  sheet: Sheet,
): {
  readonly assumptions: readonly string[];
  readonly rules: readonly string[];
  readonly sources: readonly ReviewSource[];
} {
  const calls = [...sheet.cells.values()].flatMap(({ text }) => callsIn(text));
  const called = new Map<string, FunctionDescription>();
  const defaults = new Map<string, Set<string>>();
  for (const call of calls) {
    const description = functions.get(call.name);
    if (!description) continue;
    called.set(call.name, description);
    for (const words of leftOut(description, call, document.system)) {
      defaults.set(words, (defaults.get(words) ?? new Set()).add(call.name));
    }
  }
  const bySource = new Map<string, string[]>();
  const rules: string[] = [];
  for (const { name, words } of called.values()) {
    if (words?.source.source === 'practice') rules.push(`${words.summary} (${name})`);
    else if (words?.source.source !== 'own') {
      const title = words?.source.title ?? unfetched;
      bySource.set(title, [...(bySource.get(title) ?? []), name]);
    }
  }
  return {
    assumptions: [...defaults].map(([words, names]) => `${words} (${[...names].join(', ')})`),
    rules,
    sources: [...bySource].map(([title, names]) => ({ title, functions: names.toSorted() })),
  };
}

/** The parameters of a call that are left at what the function takes without them. */
function leftOut({ parameters }: FunctionDescription, { given }: CallIn, system: UnitSystem): string[] {
  return Object.entries(parameters).flatMap(([, parameter], index) => {
    const standing = given[index] === true ? undefined : standingOf(parameter, system);
    return standing === undefined ? [] : [`${capital(parameter.summary)}: ${standing}`];
  });
}

function standingOf(parameter: Parameter, system: UnitSystem): string | undefined {
  if (!('default' in parameter) || parameter.default === undefined) return undefined;
  const standing = parameter.default;
  if (typeof standing !== 'number') return typeof standing === 'boolean' ? (standing ? 'yes' : 'no') : standing;
  const quantity = 'quantity' in parameter && parameter.quantity !== 'any' ? parameter.quantity : 'ratio';
  const { number, unit } = show(standing, { quantity, system });
  return `${number} ${unit}`.trim();
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
