import { parseAddress } from '../../formula/address.ts';
import { labelOf, nameOf } from '../labels.ts';
import { sameWord } from '../sheets.ts';
import type { Cell, Sheet } from '../types.ts';
import { driversTaken } from './drivers.ts';
import { misfit } from './fits.ts';
import type { Left, PickedAt, Taken, Taking, TypedAs } from './types.ts';

/** Names that mean the same where one sheet has one hand-over and another has two: the tweeter's stays the tweeter's. */
const alsoCalled: Readonly<Record<string, string>> = { HighHandOver: 'HandOver', HandOver: 'HighHandOver' };

/** What a sheet takes from others, so that nothing is typed again: drivers by the name that gathers them, other inputs by the
 *  name of their cell, else by their label where that is the only one of its kind. The sheets are asked in their order, and
 *  what the first of them holds in vain is told. Formulas of the new sheet stay; a number that was computed in an old one goes
 *  in as it is shown. */
export function takeFrom(from: readonly Sheet[], into: Sheet, typedAs: TypedAs, pickedAt?: PickedAt): Taking {
  const drivers = driversTaken(from, into, pickedAt);
  const texts = new Map(drivers.texts);
  const origins = new Map(drivers.origins);
  const taken: Taken[] = [...drivers.taken];
  const refused = new Map<string, string>();
  const sources = from.map((sheet) => ({ sheet, used: new Set(drivers.done.get(sheet.id)) }));
  for (const input of inputsOf(into, drivers.done.get(into.id) ?? new Set())) {
    for (const { sheet, used } of sources) {
      const source = sourceOf(input, sheet, into, used);
      const text = source === undefined ? undefined : textOf(sheet, source, typedAs);
      if (source === undefined || text === undefined) continue;
      const why = misfit(text, input.cell);
      if (why !== undefined) {
        if (sheet === from[0]) refused.set(source, why);
        continue;
      }
      used.add(source);
      texts.set(input.address, text);
      const origin = sheet.cells.get(source)?.origin;
      if (origin) origins.set(input.address, origin);
      taken.push({ what: labelOf(into, input.address), text, cell: input.address });
      break;
    }
  }
  const [first] = sources;
  const inVain = first ? inputsOf(first.sheet, first.used).filter(({ cell }) => cell.text !== '') : [];
  const left: Left[] = inVain.map(({ address, cell }) => ({
    what: first ? labelOf(first.sheet, address) : address,
    text: cell.text,
    why: refused.get(address) ?? 'The new sheet has no such input.',
    cell: address,
  }));
  return { texts, origins, taken, left: [...drivers.left, ...left], told: drivers.told };
}

interface Input {
  readonly address: string;
  readonly cell: Cell;
}

/** The cells that a reader fills in, row by row: with a range, with choices, or with a name and no formula. */
function inputsOf(sheet: Sheet, except: ReadonlySet<string>): readonly Input[] {
  const named = new Set(sheet.names.values());
  return [...sheet.cells]
    .filter(([address, { text, range, choices, look }]) => {
      if (text.startsWith('=') || look !== undefined || except.has(address)) return false;
      return range !== undefined || choices !== undefined || named.has(address);
    })
    .map(([address, cell]) => ({ address, cell }));
}

/** The cell of the old sheet that means the same. */
function sourceOf({ address }: Input, from: Sheet, into: Sheet, used: ReadonlySet<string>): string | undefined {
  const name = nameOf(into, address);
  const wanted = [name, name && alsoCalled[name]];
  for (const each of wanted) {
    const named = [...from.names].find(([held]) => each !== undefined && sameWord(held, each))?.[1];
    if (named !== undefined && !named.includes(':')) return used.has(named) ? undefined : named;
  }
  const label = rowLabel(into, address);
  if (label === '') return undefined;
  const alike = (sheet: Sheet, except: ReadonlySet<string>): readonly string[] =>
    inputsOf(sheet, except)
      .map((each) => each.address)
      .filter((each) => sameWord(rowLabel(sheet, each), label) && (name === undefined || !nameOf(sheet, each)));
  const sources = alike(from, used);
  if (alike(into, new Set()).length === 1 && sources.length === 1) return sources[0];
  // Several in a row of that label, as the limits of a verdict: then by the head of their column.
  const title = titleAbove(into, address);
  if (title === '') return undefined;
  const inColumn = (sheet: Sheet, addresses: readonly string[]): readonly string[] =>
    addresses.filter((each) => sameWord(titleAbove(sheet, each), title));
  const [source, ...others] = inColumn(from, sources);
  return others.length === 0 && inColumn(into, alike(into, new Set())).length === 1 ? source : undefined;
}

const titleAbove = (sheet: Sheet, address: string): string =>
  sheet.columns[parseAddress(address)?.column ?? 0]?.title ?? '';

/** The label at the beginning of a cell's row. */
function rowLabel(sheet: Sheet, address: string): string {
  const row = (parseAddress(address)?.row ?? 0) + 1;
  const text = sheet.cells.get(`A${String(row)}`)?.text.trim() ?? '';
  return text.startsWith('=') ? '' : text;
}

/** A typed text as it is, a result as it is shown. */
function textOf(sheet: Sheet, address: string, typedAs: TypedAs): string | undefined {
  const text = sheet.cells.get(address)?.text ?? '';
  const typed = text.startsWith('=') ? typedAs(address, sheet.id) : text;
  return typed === '' ? undefined : typed;
}
