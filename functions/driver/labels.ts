import { remembering } from '../remembering.ts';
import { labelWords } from './label-words.ts';
import { driverParameters, type DriverParameter } from './parameters.ts';

export type Label = DriverParameter | 'name' | 'basis' | undefined;

/** Whether a phrase stands in a text and no word goes on before or behind it. */
function holds(text: string, phrase: string): boolean {
  for (let at = text.indexOf(phrase); at >= 0; at = text.indexOf(phrase, at + 1))
    if (!/[\p{L}\p{N}]$/u.test(text.slice(0, at)) && !/^[\p{L}\p{N}]/u.test(text.slice(at + phrase.length)))
      return true;
  return false;
}

interface Phrase {
  readonly label: DriverParameter | 'name' | 'basis';
  readonly text: string;
}

const labelled = (label: Phrase['label'], texts: readonly string[]): Phrase[] => texts.map((text) => ({ label, text }));

const longestFirst = (one: Phrase, other: Phrase): number => other.text.length - one.text.length;

const phrases: readonly Phrase[] = [
  ...labelled('basis', ['level basis', 'basis', 'sensitivity basis']),
  ...driverParameters.flatMap((each) => labelled(each, labelWords[each.field][1].split(', '))),
].sort(longestFirst);

const words: readonly Phrase[] = [
  ...driverParameters.flatMap((each) => labelled(each, labelWords[each.field][0].split(' '))),
  ...labelled('name', ['name', 'driver', 'model']),
].sort(longestFirst);

/** So many labels stay known: a sheet's are read again with every change of a number beside them. */
const kept = 500;

/** What a row label of a driver's data names, without regard to case. The longest
 *  phrase decides, then a symbol as a whole word; `undefined` for anything not known. */
export const labelOf = remembering((text: string): Label => {
  const plain = text.trim().toLowerCase();
  const found = (list: readonly Phrase[]): Label => list.find((each) => holds(plain, each.text))?.label;
  // Phrases first: "Thermal power (rms)" must not be read as the mechanical resistance Rms.
  return found(phrases) ?? found(words);
}, kept);
