import { remembering } from '../remembering.ts';
import { driverParameters, type DriverParameter } from './parameters.ts';

export type Label = DriverParameter | 'name' | 'basis' | undefined;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const asWord = (text: string): RegExp => new RegExp(`(?<![\\p{L}\\p{N}])${escaped(text)}(?![\\p{L}\\p{N}])`, 'u');

interface Pattern {
  readonly label: DriverParameter | 'name' | 'basis';
  readonly pattern: RegExp;
  readonly length: number;
}

const patterns = (label: Pattern['label'], texts: readonly string[]): Pattern[] =>
  texts.map((text) => ({ label, pattern: asWord(text), length: text.length }));

const longestFirst = (one: Pattern, other: Pattern): number => other.length - one.length;

const phrases: readonly Pattern[] = [
  ...patterns('basis', ['level basis', 'basis', 'sensitivity basis']),
  ...driverParameters.flatMap((each) => patterns(each, each.phrases)),
].sort(longestFirst);

const words: readonly Pattern[] = [
  ...driverParameters.flatMap((each) => patterns(each, each.words)),
  ...patterns('name', ['name', 'driver', 'model']),
].sort(longestFirst);

/** So many labels stay known: a sheet's are read again with every change of a number beside them. */
const kept = 500;

/** What a row label of a driver's data names, without regard to case. The longest
 *  phrase decides, then a symbol as a whole word; `undefined` for anything not known. */
export const labelOf = remembering((text: string): Label => {
  const plain = text.trim().toLowerCase();
  const found = (list: readonly Pattern[]): Label => list.find((each) => each.pattern.test(plain))?.label;
  // Phrases first: "Thermal power (rms)" must not be read as the mechanical resistance Rms.
  return found(phrases) ?? found(words);
}, kept);
