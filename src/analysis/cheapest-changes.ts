import { driverOf } from '../document/shelf/driver-of.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { putDriver, rowsInBlock } from '../document/shelf/put.ts';
import { namedDrivers } from '../document/take-over/drivers.ts';
import type { Sheet } from '../document/types.ts';
import { Problem } from '../../functions/values/problem.ts';
import type { Change, CheapestQuestion } from './cheapest-types.ts';
import { QuestionError } from './place-error.ts';
import { rolesOf } from './roles.ts';
import { settingText } from './setting-text.ts';
import type { SheetModel } from './sheet-model.ts';
import type { Input, Setting } from './subject-types.ts';
import { inputAt } from './sweep.ts';
import { inputWords } from './words.ts';

/** All that can be done to one thing of the sheet: at most one of it is done at a time. */
export type Alternatives = readonly Change[];

/** What may be changed, a list for each driver, part and setting.
 *  @throws An error in words for the reader where a cell is no input or a name no driver. */
export function alternativesOf(model: SheetModel, question: CheapestQuestion): Alternatives[] {
  const { document, shelf, drivers, settings, cost } = question;
  return [
    ...drivers.map((name) => driverChanges(document.sheets, name, shelf, cost === 'money')),
    ...settings.map(({ values, ...place }) => settingChanges(inputAt(model, place), values, document.system)),
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
    const [called, block] = found;
    const present = rowsInBlock(sheet, block);
    const role = rolesIn(called, present);
    return shelf.flatMap((entry): Change[] => {
      const driver = driverOf(entry);
      if (entry.name === present.name || driver instanceof Problem) return [];
      if (isPriced && driver.price === undefined) return [];
      if (role.length > 0 && !rolesOf(driver).some((each) => role.includes(each))) return [];
      const { command } = putDriver(sheet, block, entry);
      if (command.kind !== 'write') return [];
      return [
        {
          words: `${called}: ${entry.name} in place of ${present.name}`,
          texts: [...command.texts].map(([cell, text]) => ({ sheet: sheet.id, cell, text })),
          money: 2 * (driver.price ?? 0),
        },
      ];
    });
  }
  throw new QuestionError(`No driver of this document is called “${name}”.`);
}

/** By its name where that says it, else by its numbers; none where neither does. */
function rolesIn(name: string, present: Pick<DriverEntry, 'name' | 'rows'>): readonly string[] {
  const named = ['woofer', 'mid', 'tweeter'].filter((role) => name.toLowerCase() === role);
  if (named.length > 0) return named;
  const driver = driverOf(present);
  return driver instanceof Problem ? [] : rolesOf(driver);
}

function settingChanges(input: Input, values: readonly Setting[], system: 'metric' | 'imperial'): Alternatives {
  const was = inputWords(input, input.present, system);
  return values
    .filter((value) => value !== input.present)
    .map((value) => ({
      words: `${input.label}: ${inputWords(input, value, system)} in place of ${was}`,
      texts: [{ sheet: input.sheet, cell: input.cell, text: settingText(input, value, 6) }],
      money: 0,
    }));
}
