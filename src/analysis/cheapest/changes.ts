import { driverOf } from '../../document/shelf/driver-of.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import { putDriver, rowsInBlock } from '../../document/shelf/put.ts';
import { namedDrivers } from '../../document/take-over/drivers.ts';
import type { Sheet } from '../../document/types.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Change, CheapestQuestion, PricedSetting } from './types.ts';
import { namedFormula } from '../model/named-formula.ts';
import { QuestionError } from '../subject/place-error.ts';
import { rolesOf } from '../shortlist/roles.ts';
import { numberIn, settingText } from '../subject/setting-text.ts';
import type { DocumentModel } from '../model/document-model.ts';
import type { Input, Setting } from '../subject/types.ts';
import { inputAt } from '../sweep/sweep.ts';
import { inputWords } from '../subject/words.ts';

/** Parts and drivers are bought for a pair of cabinets. */
const PAIR = 2;

/** All that can be done to one thing of the sheet: at most one of it is done at a time. */
export interface Alternatives {
  /** What the thing is called. */
  readonly label: string;
  readonly changes: readonly Change[];
  /** What is not known of its price: of a setting all, so that it counts as 0; of a driver what the one in the sheet costs. */
  readonly lacks?: 'price' | 'present price';
}

/** What may be changed, for each driver, part and setting.
 *  @throws An error in words for the reader where a cell is no input, a name no driver or a price no formula. */
export function alternativesOf(model: DocumentModel, question: CheapestQuestion): Alternatives[] {
  const { document, shelf, drivers, settings, cost } = question;
  return [
    ...drivers.map((name) => driverChanges(document.sheets, name, shelf, cost === 'money')),
    ...settings.map((setting) => settingChanges(inputAt(model, setting), setting, document.system)),
  ];
}

/** Each driver of the shelf that could stand there by its role and is not the one that does.
 *  @param isPriced - One without a price cannot be counted, and is left out. */
function driverChanges(
  sheets: readonly Sheet[],
  name: string,
  shelf: readonly DriverEntry[],
  isPriced: boolean,
): Alternatives {
  for (const sheet of sheets) {
    const found = namedDrivers(sheet).find(([each]) => each.toLowerCase() === name.toLowerCase());
    if (!found) continue;
    const [label, block] = found;
    const present = rowsInBlock(sheet, block);
    const role = rolesIn(label, present);
    const presentPrice = [present, ...shelf.filter((entry) => entry.name === present.name)]
      .map(priceOf)
      .find((price) => price !== undefined);
    const changes = shelf.flatMap((entry): Change[] => {
      const driver = driverOf(entry);
      if (entry.name === present.name || driver instanceof Problem) return [];
      if (isPriced && driver.price === undefined) return [];
      if (role.length > 0 && !rolesOf(driver).some((each) => role.includes(each))) return [];
      const { command } = putDriver(sheet, block, entry);
      if (command.kind !== 'write') return [];
      return [
        {
          words: `${label}: ${entry.name} in place of ${present.name}`,
          texts: [...command.texts].map(([cell, text]) => ({ sheet: sheet.id, cell, text })),
          money: driver.price === undefined ? 0 : PAIR * (driver.price - (presentPrice ?? 0)),
        },
      ];
    });
    return { label, changes, ...(presentPrice === undefined && { lacks: 'present price' }) };
  }
  throw new QuestionError(`No driver of this document is called “${name}”.`);
}

function priceOf(entry: Pick<DriverEntry, 'name' | 'rows'>): number | undefined {
  const driver = driverOf(entry);
  return driver instanceof Problem ? undefined : driver.price;
}

/** By its name where that says it, else by its numbers; none where neither does. */
function rolesIn(name: string, present: Pick<DriverEntry, 'name' | 'rows'>): readonly string[] {
  const named = ['woofer', 'mid', 'tweeter'].filter((role) => name.toLowerCase() === role);
  if (named.length > 0) return named;
  const driver = driverOf(present);
  return driver instanceof Problem ? [] : rolesOf(driver);
}

function settingChanges(input: Input, { values, price }: PricedSetting, system: 'metric' | 'imperial'): Alternatives {
  const was = inputWords(input, input.present, system);
  const costOf = price === undefined ? () => 0 : partPrice(input, price);
  const presentCost = costOf(input.present);
  const changes = values
    .filter((value) => value !== input.present)
    .map((value) => ({
      words: `${input.label}: ${inputWords(input, value, system)} in place of ${was}`,
      texts: [{ sheet: input.sheet, cell: input.cell, text: settingText(input, value, 6) }],
      money: PAIR * (costOf(value) - presentCost),
    }));
  return { label: input.label, changes, ...(price === undefined && { lacks: 'price' }) };
}

/** What one costs, by the number that is typed in its cell. */
function partPrice(input: Input, price: string): (value: Setting) => number {
  const formula = namedFormula(price, ['value']);
  const refused = (why: string): QuestionError =>
    new QuestionError(
      `${input.label}: the price “${price}” ${why}; write a formula of value, the number${input.unit === '' ? '' : ` in ${input.unit}`}, such as 4 + 0.9 * value.`,
    );
  if (!formula) throw refused('cannot be read');
  return (value) => {
    const money = formula([typeof value === 'number' ? numberIn(input, value) : Number.NaN]);
    if (Number.isFinite(money)) return money;
    throw refused(`is no number at ${settingText(input, value, 6)}`);
  };
}
