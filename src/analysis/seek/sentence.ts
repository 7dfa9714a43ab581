import type { UnitSystem } from '../../document/types.ts';
import type { Found, Seek } from './types.ts';
import type { Result } from '../subject/types.ts';
import { inputWords, listed, resultWords } from '../subject/words.ts';

type Answer = Omit<Seek, 'sentence' | 'searched'>;

/** How fine a search looked; nothing of words, which are all looked at. */
export function searchedSentence({ input, target, looked, gap }: Answer, system: UnitSystem): string {
  if (looked === 0) return '';
  // A degree of temperature has an offset, which a difference has not.
  const own = input.quantity === 'temperature' ? { ...input, unit: 'K' } : input;
  const size = gap.of === 'share' ? `${twoDigits(gap.size * 100)} %` : inputWords(own, twoDigits(gap.size), system);
  const missed = target.kind === 'number' ? 'Two solutions closer' : 'A stretch narrower';
  return `Looked at ${looked} values. ${missed} than ${size} could be missed.`;
}

const twoDigits = (number: number): number => Number(number.toPrecision(2));

/** The answer to a search in one sentence, or two. */
export function seekSentence(seek: Answer, system: UnitSystem): string {
  const { found, input, range, nearest } = seek;
  const aim = aimOf(seek, system);
  if (found.length > 0)
    return `${input.label} ${listed(found.map(({ set }) => set.text))} ${found.length === 1 ? 'brings' : 'bring'} ${aim}.`;
  const start =
    typeof input.present === 'string'
      ? `None of the words that ${input.label} can take brings ${aim}`
      : `No value of ${input.label} was found between ${inputWords(input, range[0], system)} and ${inputWords(input, range[1], system)} that brings ${aim}`;
  return nearest
    ? `${start}; nearest is ${nearestWords(seek, nearest, system)}`
    : `${start}: no value there gives a result.`;
}

function aimOf({ result, target }: Answer, system: UnitSystem): string {
  if (target.kind === 'number')
    return `${result.label} to ${resultWords(result, { kind: 'number', value: target.value }, system)}`;
  return `${result.cell === '' ? result.label : `“${result.label}”`} ${target.orCaution ? 'clear of failure' : 'to good'}`;
}

/** `2 verdicts fall short: “Travel” and “Load”`, some of them by name. */
function shortWords(short: readonly Result[]): string {
  const names = short.slice(0, MOST_NAMED).map(({ label }) => `“${label}”`);
  const rest = short.length - names.length;
  return `${short.length === 1 ? '1 verdict falls' : `${short.length} verdicts fall`} short: ${listed([...names, ...(rest > 0 ? [`${rest} more`] : [])])}`;
}

const MOST_NAMED = 4;

function nearestWords({ result }: Answer, { set, result: value, short }: Found, system: UnitSystem): string {
  if (result.cell === '') return `${set.text}, where ${shortWords(short)}.`;
  const words = resultWords(result, value, system);
  return `${set.text}: ${words}${/[.?!]$/.test(words) ? '' : '.'}`;
}
