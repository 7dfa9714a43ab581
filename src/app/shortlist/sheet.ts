import { ruleFields, usualTexts, type RuleTexts } from '../../analysis/shortlist/rule-fields.ts';
import type { Row } from '../../analysis/types.ts';
import { freeSheetName, newId } from '../../document/create.ts';
import type { Command } from '../../document/command.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import { putDriver } from '../../document/shelf/put.ts';
import { namedDrivers } from '../../document/take-over/drivers.ts';
import type { OctavoDocument, Sheet } from '../../document/types.ts';

/** A full sheet for a row of the shortlist: one command, so one step back. */
export interface RowSheet {
  readonly command: Command;
  /** The id of the new sheet. */
  readonly sheet: string;
  readonly cell: string;
  /** What a reader must know of the drivers: what was computed, what is missing. */
  readonly told: readonly string[];
}

/** Drivers, hand-over, rules and whatever else a row was judged with, written into a starter sheet behind the present sheet.
 *  @param drivers - By the names of their blocks in the starter sheet.
 *  @param texts - By the names of cells. */
export function sheetOfRow(
  document: OctavoDocument,
  behind: string,
  starter: OctavoDocument,
  row: Pick<Row, 'windows'>,
  drivers: Readonly<Record<string, DriverEntry>>,
  texts: Readonly<Record<string, string>>,
  rules: RuleTexts = {},
): RowSheet {
  const [first] = starter.sheets;
  if (!first) throw new Error(`The starter sheet ${starter.title} holds no sheet.`);
  const wish = Object.values(drivers)
    .map(({ name }) => name)
    .join(', ')
    .replaceAll(/['![\]\s]+/g, ' ')
    .trim();
  const sheet: Sheet = { ...first, id: newId(), name: freeSheetName(document, wish.slice(0, 55).trim() || first.name) };
  const told: string[] = [];
  const commands: Command[] = [];
  for (const [name, block] of namedDrivers(sheet)) {
    const entry = drivers[name];
    if (!entry) continue;
    const putting = putDriver(sheet, block, entry);
    commands.push(putting.command);
    told.push(...putting.told.map((sentence) => `${entry.name}: ${sentence}`));
  }
  const [low, high = low] = row.windows.map(centre);
  const handOver = high ?? '';
  const handOvers = { ...(high !== low && { LowHandOver: low ?? '' }), HandOver: handOver, SubHandOver: handOver };
  const written = new Map(ruleCells(sheet, rules));
  for (const [name, text] of Object.entries({ ...handOvers, ...texts })) {
    const cell = sheet.names.get(name);
    if (cell !== undefined && text !== '') written.set(cell, text);
  }
  commands.push({ kind: 'write', sheet: sheet.id, texts: written });
  const at = document.sheets.findIndex(({ id }) => id === behind) + 1;
  return {
    command: { kind: 'all', commands: [{ kind: 'add-sheet', sheet, at }, ...commands] },
    sheet: sheet.id,
    cell: 'A2',
    told,
  };
}

/** Midway in octaves between the two ends, also where they cross. */
const centre = ({ low, high }: Row['windows'][number]): string => `${Number(Math.sqrt(low * high).toPrecision(4))} Hz`;

/** What the rows of rules are called in the starter sheets. */
const labels: Readonly<Record<string, string>> = {
  resonance: 'resonance',
  travel: 'travel',
  narrowing: 'narrowing',
  'break-up': 'breakup',
  spacing: 'spacing',
  'Shared window': 'comfortable',
  'Hand-over to the subs': 'sag',
  'Largest travel, high-passed': 'travel',
  'Subs needed': 'most',
};

/** Where rules of one's own go: beside their label, in the columns for the rule and the stretched one, the sixth and seventh
 *  unless a heading says it. */
function ruleCells(sheet: Sheet, rules: RuleTexts): readonly (readonly [cell: string, text: string])[] {
  const typed = new Map(Object.entries(typedTexts(rules)));
  const heading = [...sheet.cells].find(([, { text }]) => text === 'rule')?.[0].charAt(0) ?? 'F';
  const columns = [heading, String.fromCharCode(heading.charCodeAt(0) + 1)];
  return [...sheet.cells].flatMap(([cell, { text }]) => {
    const own = cell.startsWith('A') ? typed.get(labels[text] ?? '') : undefined;
    return (own ?? []).flatMap((each, index) => {
      const at = `${columns[index] ?? ''}${cell.slice(1)}`;
      return each === '' || !sheet.cells.has(at) ? [] : [[at, each] as const];
    });
  });
}

/** What was typed, with the usual units where it had none. */
export function typedTexts(rules: RuleTexts): Readonly<Record<string, readonly string[]>> {
  const fields = [...ruleFields(2), ...ruleFields('subs')];
  return Object.fromEntries(
    fields.flatMap((field) => {
      const unit = usualTexts(field, 'metric')[0]?.replace(/^[\d.\s]+/, '') ?? '';
      const typed = rules[field.name];
      return typed
        ? [[field.name, typed.map((text) => (/^[\d.,]+$/.test(text) ? `${text} ${unit}`.trim() : text))]]
        : [];
    }),
  );
}
