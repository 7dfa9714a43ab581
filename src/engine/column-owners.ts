import type { CellIndex } from './cell-index.ts';
import type { EngineAddress, Spot, Spots } from './spots.ts';

interface Change {
  readonly address: EngineAddress;
  readonly newValue: unknown;
}

/** What the engine did: the cells whose meaning may have changed, and those whose values did. */
export interface Outcome<C extends Change = Change> {
  readonly spots: readonly Spot[];
  readonly changes: readonly C[];
}

/** What is asked of the engine. */
interface Cells {
  isCellEmpty(address: EngineAddress): boolean;
  isCellPartOfArray(address: EngineAddress): boolean;
}

type Owners = ReadonlyMap<string, string | undefined>;

/** The cells that may have become part of a column of results, or may be none any more, with the formula to which each of
 *  them belongs now. */
export function columnOwners({ spots: set, changes }: Outcome, index: CellIndex, spots: Spots, cells: Cells): Owners {
  const owners = new Map<string, string | undefined>();
  const ownerAbove = ({ sheet, row, col }: EngineAddress): string | undefined => {
    for (let above = row - 1; above >= 0; above--) {
      const address = { sheet, row: above, col };
      const key = spots.at(address)?.key ?? '';
      if (index.get(key)) return cells.isCellPartOfArray(address) ? key : undefined;
      const owner = owners.get(key);
      if (owner !== undefined) return owner;
    }
    return undefined;
  };
  const note = ({ key, address }: Spot, isFilled: boolean): void => {
    owners.set(key, isFilled && !index.get(key) ? ownerAbove(address) : undefined);
  };
  for (const spot of set) {
    spot.isTyped = index.get(spot.key) !== undefined;
    note(spot, !cells.isCellEmpty(spot.address));
  }
  for (const { address, newValue } of changes) {
    const spot = spots.at(address);
    if (spot && !spot.isTyped) note(spot, newValue !== null);
  }
  return owners;
}
