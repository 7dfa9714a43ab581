import { isAlike } from '../../document/take-over/whole-way.ts';
import { namedDrivers } from '../../document/take-over/drivers.ts';
import type { PickedAt } from '../../document/take-over/types.ts';
import { sameWord } from '../../document/sheets.ts';
import type { OctavoDocument, Sheet } from '../../document/types.ts';
import { openTemplate } from '../template-list.ts';

/** Starter sheets that follow one another from a sheet to the basket. */
export interface Way {
  readonly label: string;
  readonly starters: readonly OctavoDocument[];
}

const boxes = { 'closed-box-bench': 'With a closed box', 'vented-box': 'With a vented box' };
const behindTheBox = ['front-panel', 'first-crossover', 'saw-list', 'shopping-basket'];

/** The ways that are left from a sheet with a woofer; none from the last sheet of the way. */
export async function waysOn(sheet: Sheet, pickedAt: PickedAt): Promise<readonly Way[]> {
  if (!namedDrivers(sheet, pickedAt).some(([name]) => sameWord(name, 'Woofer'))) return [];
  const rest = await Promise.all(behindTheBox.map(openTemplate));
  const at = rest.findIndex(({ sheets: [made] }) => made && isAlike(sheet, made));
  const further = { label: 'On to the basket', starters: rest.slice(at + 1) };
  if (at >= 0) return further.starters.length > 0 ? [further] : [];
  const begun = await Promise.all(
    Object.entries(boxes).map(async ([id, label]) => ({ label, box: await openTemplate(id) })),
  );
  const isBox = begun.some(
    ({
      box: {
        sheets: [made],
      },
    }) => made && isAlike(sheet, made),
  );
  return isBox ? [further] : begun.map(({ label, box }) => ({ label, starters: [box, ...rest] }));
}
