import type { UnitSystem } from '../../document/types.ts';
import { show } from '../../units/show.ts';
import type { Row, Shortlist, ShortlistQuestion } from './types.ts';

const limits = [
  ['price', 'the price', 'costs', 'price', '-price'],
  ['reach', 'the reach', 'reaches', 'frequency', '-reach'],
  ['plays', 'the level', 'plays', 'level', 'plays'],
] as const;

/** Where nothing keeps all limits: what comes nearest to each of them while it keeps the others, in words.
 *  @param ask - Answers the same question under fewer limits. */
export async function nearestRows(
  question: ShortlistQuestion,
  ask: (question: ShortlistQuestion) => Promise<Shortlist>,
  system: UnitSystem,
): Promise<string[]> {
  const given = limits.filter(([name]) => question.limits?.[name] !== undefined);
  const told: string[] = [];
  for (const [name, noun, verb, quantity, ranking] of given) {
    const { [name]: _, ...others } = question.limits ?? {};
    const [row] = (await ask({ ...question, limits: others, ranking, most: 1 })).rows;
    if (row) told.push(`Without the limit on ${noun}: ${named(row)} ${verb} ${figure(row[name], quantity, system)}.`);
  }
  if (told.length > 0 || given.length < 2) return told;
  return ['No single limit keeps all of them out: ease two or more.'];
}

const named = ({ names }: Row): string => names.join(' + ');

function figure(value: number, quantity: 'price' | 'frequency' | 'level', system: UnitSystem): string {
  const { number, unit } = show(value, { quantity, system, ...(quantity === 'frequency' && { digits: 3 }) });
  return `${number} ${unit}`.trim();
}
