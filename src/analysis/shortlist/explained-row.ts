import type { QuantityName } from '../../../functions/quantities.ts';
import type { UnitSystem } from '../../document/types.ts';
import { show } from '../../units/show.ts';
import type { BassLimit, Row, ShortlistQuestion } from './types.ts';
import { listed } from '../subject/words.ts';

const ends: Readonly<Record<BassLimit, string>> = {
  travel: 'travel',
  heat: 'heat',
  port: 'the air in the port',
};

/** Limits that are not those of one driver. */
const withoutDriver: Readonly<Record<string, string>> = {
  spacing: 'the spacing',
  location: 'the ear finding the subs',
};

/** In which box that is, as far as it is known. */
function boxed({ box, subs }: Row, told: (value: number, quantity: QuantityName) => string): string {
  const { style, volume, tuning } = box;
  const size = volume === undefined ? '' : ` of ${told(volume, 'volume')}`;
  const port = tuning === undefined ? '' : ` tuned to ${told(tuning, 'frequency')}`;
  return subs === undefined || subs === 1
    ? `in a ${style} box${size}${port}`
    : `in ${style} boxes${size}${size === '' ? '' : ' each'}${port}`;
}

/** Why a row stands where it does, a sentence for each reason: its window and what binds it, its margins on what was asked, its
 *  levels, and what the ranking made of it.
 *  @param next - The row behind it. */
export function explainedRow(
  row: Row,
  question: Pick<ShortlistQuestion, 'rules' | 'limits' | 'ranking' | 'subs'>,
  system: UnitSystem,
  next?: Row,
): string[] {
  const told = (value: number, quantity: QuantityName): string => {
    const { number, unit } = show(value, {
      quantity,
      system,
      ...((quantity === 'frequency' || quantity === 'volume') && { digits: 3 }),
    });
    return `${number} ${unit}`.trim();
  };
  const { rules, limits = {}, ranking } = question;
  const windows = row.windows.map(({ low, high, octaves, stretchedOctaves, floor, ceiling }, index) => {
    const [lower, upper] =
      row.subs === undefined ? [row.names[index], row.names[index + 1]] : ['the subs', 'the mains'];
    const isOnly = row.windows.length === 1;
    const where = isOnly ? 'Hand over' : `${index === 0 ? 'Low' : 'High'} hand-over`;
    const below = `${floor} of ${upper ?? ''} from below`;
    const above = `${withoutDriver[ceiling] ?? `${ceiling} of ${lower ?? ''}`} from above`;
    if (octaves >= 0) {
      const spare = octaves - rules.comfortable;
      const margin =
        spare >= 0
          ? `${told(spare, 'octaves')} more than comfortable`
          : `${told(-spare, 'octaves')} less than comfortable`;
      return `${where} between ${told(low, 'frequency')} and ${told(high, 'frequency')}: ${told(octaves, 'octaves')}, ${margin}. Bound by ${below} and by ${above}.`;
    }
    return `${isOnly ? 'By' : `${where}: by`} the rules ${told(-octaves, 'octaves')} are missing: bound by ${below} and by ${above}; ${stretchedOctaves >= 0 ? `with every rule stretched ${told(stretchedOctaves, 'octaves')} are shared` : 'no stretching helps'}.`;
  });
  const margins = [
    Number.isNaN(row.reach)
      ? 'How low it reaches is not known.'
      : `Reaches ${told(row.reach, 'frequency')}${limits.reach === undefined ? '' : `, ${told(limits.reach - row.reach, 'frequency')} lower than asked`}${row.end === undefined ? '' : `, where ${ends[row.end]} ends it`}, ${boxed(row, told)}.`,
    Number.isNaN(row.plays)
      ? 'How loud it plays is not known.'
      : `Plays ${told(row.plays, 'level')}${limits.plays === undefined ? '' : `, ${told(row.plays - limits.plays, 'level')} to spare`}.`,
    Number.isNaN(row.price)
      ? 'Its price is not known.'
      : `Costs ${told(row.price, 'price')} for ${row.subs === undefined ? 'the drivers of a pair' : `a pair of mains and ${row.subs === 1 ? 'one sub' : `${row.subs} subs`}`}${limits.price === undefined ? '' : `, ${told(limits.price - row.price, 'price')} under the limit`}.`,
  ];
  const levels =
    row.subs === undefined
      ? `${told(row.level, 'level')} for 2.83 V after make-up; ${listed(row.pads.map((pad) => (pad >= 0 ? `a pad of ${told(pad, 'level')}` : `${told(-pad, 'level')} too quiet, which only an amplifier of its own helps`)))}.`
      : `The subs are ${told(Math.abs(row.pads[0] ?? 0), 'level')} ${(row.pads[0] ?? 0) >= 0 ? 'louder' : 'quieter'} than one of the mains for the same volts.`;
  const score = (value: number): string => show(value, { quantity: 'ratio', system, digits: 3 }).number;
  const ahead = next ? row.score - next.score : Number.NaN;
  const lead = ahead === 0 ? ', level with the next' : ahead > 0 ? `, ${score(ahead)} ahead of the next` : '';
  return [...windows, ...margins, levels, `Place ${row.rank} by ${ranking}: ${score(row.score)}${lead}.`];
}
