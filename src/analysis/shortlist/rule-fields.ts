import type { QuantityName } from '../../../functions/quantities.ts';
import type { UnitSystem } from '../../document/types.ts';
import { defaultUnit } from '../../units/defaults.ts';
import { show } from '../../units/show.ts';
import { QuestionError } from '../subject/place-error.ts';
import type { Ways } from './places.ts';
import type { PairRules, SubRules } from './types.ts';
import { typedValue } from '../subject/typed-value.ts';
import { usualRules, usualSubRules } from './usual-rules.ts';

/** A rule of the shortlist that a reader can set: one number, or two, by the rule and stretched. */
export interface RuleField {
  readonly name: RuleName;
  readonly label: string;
  readonly quantity: QuantityName;
  /** The least and the most that can be asked, SI. */
  readonly range: readonly [number, number];
  /** Absent where it holds for all. */
  readonly only?: 'pairs' | 'subs';
  /** What it means that nothing is typed, where there is no usual number. */
  readonly blank?: string;
}

export type RuleName = Exclude<keyof PairRules, 'slope'> | keyof SubRules;

/** Texts that were typed over the usual ones, by the name of the rule; an empty one is the usual. */
export type RuleTexts = Readonly<Partial<Record<RuleName | 'slope', readonly string[]>>>;

const fields: readonly RuleField[] = [
  { name: 'target', label: 'Level that travel is counted at, at 1 m', quantity: 'level', range: [60, 140] },
  { name: 'comfortable', label: 'A comfortable window', quantity: 'octaves', range: [0, 10] },
  {
    name: 'resonance',
    label: 'Hand-over over Fs of the upper driver',
    quantity: 'ratio',
    range: [0.1, 20],
    only: 'pairs',
  },
  { name: 'sag', label: 'F3 of the mains over the hand-over', quantity: 'ratio', range: [0.1, 20], only: 'subs' },
  { name: 'travel', label: 'Share of Xmax that the upper driver moves', quantity: 'ratio', range: [0.01, 2] },
  { name: 'narrowing', label: 'Loss of the lower driver off axis', quantity: 'level', range: [0.1, 15], only: 'pairs' },
  { name: 'angle', label: 'Angle of that loss', quantity: 'angle', range: [0.02, Math.PI / 2], only: 'pairs' },
  { name: 'breakup', label: 'Hand-over over the first break-up', quantity: 'ratio', range: [0.01, 5] },
  { name: 'spacing', label: 'Wavelengths between the centres', quantity: 'ratio', range: [0.05, 20], only: 'pairs' },
  { name: 'gap', label: 'Gap between the flanges', quantity: 'length', range: [0, 2], only: 'pairs' },
  { name: 'makeUp', label: 'Make-up for the edge step', quantity: 'level', range: [0, 12], only: 'pairs' },
  {
    name: 'location',
    label: 'Hand-over up to which a sub is not heard apart',
    quantity: 'frequency',
    range: [20, 1000],
    only: 'subs',
  },
  { name: 'above', label: 'Subs louder than one of the mains by', quantity: 'level', range: [-20, 20], only: 'subs' },
  {
    name: 'lowest',
    label: 'Lowest note of the subs, where none is asked',
    quantity: 'frequency',
    range: [5, 200],
    only: 'subs',
  },
  { name: 'most', label: 'Most subs', quantity: 'ratio', range: [1, 100], only: 'subs' },
  {
    name: 'match',
    label: 'Largest difference of levels for the same volts',
    quantity: 'level',
    range: [0, 60],
    only: 'subs',
  },
  { name: 'qtc', label: 'Qtc of a closed box', quantity: 'ratio', range: [0.3, 3] },
  { name: 'leakage', label: 'Leakage Q of a vented box', quantity: 'ratio', range: [2, 1e4] },
  { name: 'volume', label: 'Net volume of the bass box', quantity: 'volume', range: [1e-4, 10], blank: 'as it suits' },
  { name: 'tuning', label: 'Tuning of it, if vented', quantity: 'frequency', range: [5, 500], blank: 'as it suits' },
  {
    name: 'port',
    label: 'Port area of each sub, if vented',
    quantity: 'area',
    range: [1e-5, 1],
    only: 'subs',
    blank: 'not judged',
  },
  { name: 'air', label: 'Air in the port, peak', quantity: 'speed', range: [1, 340], only: 'subs' },
];

/** The rules that count for two or three ways, or for mains with subs. */
export const ruleFields = (ways: Ways): readonly RuleField[] =>
  fields.filter(({ only }) => only === undefined || (only === 'subs') === (ways === 'subs'));

export const slopes = ['LR4', 'LR2'] as const;

const usual: PairRules & SubRules = { ...usualRules, ...usualSubRules };

const numbersOf = (name: RuleName): readonly (number | undefined)[] => [usual[name]].flat();

/** The usual numbers of a rule as one would type them; an empty text where there is none. */
export const usualTexts = ({ name, quantity }: RuleField, system: UnitSystem): readonly string[] =>
  numbersOf(name).map((value) => (value === undefined ? '' : asTyped(value, quantity, system)));

function asTyped(value: number, quantity: QuantityName, system: UnitSystem): string {
  const { number, unit } = show(value, { quantity, system });
  return unit === '°' ? number + unit : `${number} ${unit}`.trim();
}

/** The rules with what was typed over the usual ones. A level that is asked is the target too.
 *  @param plays - The level that is asked, in dB.
 *  @throws A {@link QuestionError} that says what is wrong with a rule. */
export function rulesTyped(
  ways: Ways,
  texts: RuleTexts,
  plays?: number,
): { readonly rules: PairRules; readonly subs?: SubRules } {
  const read: Partial<Record<RuleName, number | readonly number[]>> = {};
  for (const field of ruleFields(ways)) {
    const { name, label, quantity, range } = field;
    const numbers = numbersOf(name).flatMap((own, index): readonly number[] => {
      const text = texts[name]?.[index]?.trim() ?? '';
      if (text === '') return own === undefined ? [] : [own];
      const value = typedValue(text, { label, quantity, unit: defaultUnit(quantity, 'metric') });
      if (value >= range[0] && value <= range[1]) return [value];
      const [least, most] = range.map((end) => asTyped(end, quantity, 'metric'));
      throw new QuestionError(
        `${label}: ${text} is out of reach; take something ${field.blank === undefined ? `like ${usualTexts(field, 'metric')[index] ?? ''}` : `from ${least ?? ''} to ${most ?? ''}`}.`,
      );
    });
    const [first, ...more] = numbers;
    if (first !== undefined) read[name] = more.length > 0 ? numbers : first;
  }
  if (plays !== undefined && (texts.target?.[0] ?? '') === '') read.target = plays;
  const slope = texts.slope?.[0] === 'LR2' ? 'LR2' : 'LR4';
  const { above, lowest, most, match, sag, location, ...rules } = { ...usual, ...read, slope } as PairRules & SubRules;
  return ways === 'subs' ? { rules, subs: { above, lowest, most, match, sag, location } } : { rules };
}
