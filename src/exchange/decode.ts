import { MOST_COLUMNS, MOST_ROWS, parseAddress } from '../formula/address.ts';
import { readRectangle } from '../document/area.ts';
import type { Refusal } from '../document/command.ts';
import { newId } from '../document/create.ts';
import { checkName } from '../document/legal-name.ts';
import { checkSheetName, sameWord } from '../document/sheets.ts';
import type {
  Baseline,
  BetterEnd,
  Cell,
  Column,
  Line,
  OctavoDocument,
  Plot,
  Series,
  Sheet,
  Step,
} from '../document/types.ts';
import { migrate } from './migrations.ts';
import { Reader } from './reader.ts';

const lines = ['woofer', 'tweeter', 'system', 'other'] as const satisfies readonly [Line, ...Line[]];

/** Reads what {@link encodeDocument} gave, of this version or an older one. Keeps the ids where it holds some. A faulty
 *  content gives the first fault by its path and the number of the others. */
export function decodeDocument(value: unknown): OctavoDocument | Refusal {
  const migrated = migrate(value);
  if ('refused' in migrated) return migrated;
  const reader = new Reader(migrated.content);
  const document = readDocument(reader);
  const [first, ...others] = reader.faults;
  if (first === undefined) return document;
  const more = others.length === 0 ? '' : ` (and ${others.length} more)`;
  return { refused: `This document is damaged or was changed by hand. ${first}${more}` };
}

function readDocument(reader: Reader): OctavoDocument {
  const fields = reader.fields(['octavo', 'id', 'title', 'system', 'sheets', 'baseline']);
  const id = fields.id.isMissing ? newId() : fields.id.text();
  const title = fields.title.text();
  const system = fields.system.oneOf(['metric', 'imperial']);
  const sheets: Sheet[] = [];
  for (const each of fields.sheets.list()) {
    const sheet = readSheet(each);
    const wrong = checkSheetName({ id, title, system, sheets }, sheet.name);
    if (wrong) each.fault(wrong.refused);
    if (sheets.some((other) => other.id === sheet.id)) each.fault(`the id "${sheet.id}" is already another sheet's.`);
    sheets.push(sheet);
  }
  if (sheets.length === 0) fields.sheets.fault('at least one sheet is wanted.');
  const baseline = fields.baseline.isMissing ? undefined : readBaseline(fields.baseline, sheets);
  return { id, title, sheets, system, ...(baseline && { baseline }) };
}

function readSheet(reader: Reader): Sheet {
  const fields = reader.fields(['id', 'name', 'summary', 'rows', 'columns', 'names', 'cells', 'plots', 'lesson']);
  const rows = fields.rows.whole(1, MOST_ROWS);
  const columns = fields.columns.list().map(readColumn);
  if (columns.length === 0 || columns.length > MOST_COLUMNS) {
    fields.columns.fault(`1 to ${MOST_COLUMNS} columns are wanted, but ${columns.length} were found.`);
  }
  const inside = (each: Reader, address: string): string => {
    const area = readRectangle(address);
    if (!area) each.fault(`"${address}" is no cell and no range of cells, as B4 or B4:C18.`);
    else if (area.bottom >= rows || area.right >= columns.length) {
      each.fault(`${address} lies outside the ${rows} rows and ${columns.length} columns of the sheet.`);
    }
    return address;
  };
  const cells = new Map<string, Cell>();
  for (const [address, each] of fields.cells.entries()) {
    if (isAddress(each, address)) cells.set(inside(each, address), readCell(each));
  }
  return {
    id: fields.id.isMissing ? newId() : fields.id.text(),
    name: fields.name.text(),
    summary: fields.summary.isMissing ? '' : fields.summary.text(),
    rows,
    columns,
    cells,
    names: readNames(fields.names, inside),
    plots: fields.plots.isMissing ? [] : readPlots(fields.plots),
    ...(!fields.lesson.isMissing && { lesson: fields.lesson.list().map(readStep) }),
  };
}

function isAddress(reader: Reader, address: string): boolean {
  const isOne = parseAddress(address) !== undefined && /^[A-Z]+[1-9]\d*$/.test(address);
  if (!isOne) reader.fault(`"${address}" is no address of a cell, as B4.`);
  return isOne;
}

function readColumn(reader: Reader): Column {
  const fields = reader.fields(['width', 'title', 'line']);
  return {
    width: fields.width.whole(1, 10_000),
    ...(!fields.title.isMissing && { title: fields.title.text() }),
    ...(!fields.line.isMissing && { line: fields.line.oneOf(lines) }),
  };
}

function readNames(reader: Reader, inside: (each: Reader, cells: string) => string): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  if (reader.isMissing) return names;
  for (const [name, each] of reader.entries()) {
    const wrong = checkName(name);
    if (wrong) each.fault(wrong.refused);
    const taken = [...names.keys()].find((other) => sameWord(other, name));
    if (taken !== undefined) each.fault(`there is already a name "${taken}" on this sheet.`);
    names.set(name, inside(each, each.text()));
  }
  return names;
}

function readCell(reader: Reader): Cell {
  if (typeof reader.value === 'string') return { text: reader.value };
  const fields = reader.fields(['text', 'unit', 'range', 'choices', 'look', 'origin']);
  return {
    text: fields.text.text(),
    ...(!fields.unit.isMissing && { unit: fields.unit.text() }),
    ...(!fields.range.isMissing && { range: readPair(fields.range) }),
    ...(!fields.choices.isMissing && { choices: fields.choices.list().map((each) => each.text()) }),
    ...(!fields.look.isMissing && { look: fields.look.oneOf(['section', 'label', 'note']) }),
    ...(!fields.origin.isMissing && {
      origin: fields.origin.oneOf(['measured', 'datasheet', 'invented', 'assumed', 'chosen']),
    }),
  };
}

function readPair(reader: Reader): readonly [string, string] {
  const [first, second, ...more] = reader.list();
  if (!first || !second || more.length > 0) reader.fault('two texts are wanted, as ["10 Hz", "80 Hz"].');
  return [first?.text() ?? '', second?.text() ?? ''];
}

const plotFields = [
  'id',
  'title',
  'kind',
  'series',
  'limits',
  'marks',
  'horizontal',
  'vertical',
  'best',
  'ground',
] as const;

function readPlots(reader: Reader): readonly Plot[] {
  const plots: Plot[] = [];
  for (const each of reader.list()) {
    const plot = readPlot(each);
    if (plots.some(({ id }) => id === plot.id)) each.fault(`the id "${plot.id}" is already another plot's.`);
    plots.push(plot);
  }
  return plots;
}

function readPlot(reader: Reader): Plot {
  const fields = reader.fields(plotFields);
  return {
    id: fields.id.text(),
    title: fields.title.text(),
    kind: fields.kind.oneOf(['curves', 'window', 'bars', 'points', 'lines', 'shapes']),
    series: fields.series.list().map(readSeries),
    limits: fields.limits.list().map((each) => {
      const { cell, label, forbidden } = each.fields(['cell', 'label', 'forbidden']);
      return { cell: cell.text(), label: label.text(), forbidden: forbidden.oneOf(['above', 'below']) };
    }),
    marks: fields.marks.list().map((each) => {
      const { cell, label } = each.fields(['cell', 'label']);
      return { cell: cell.text(), label: label.text() };
    }),
    ...(!fields.horizontal.isMissing && { horizontal: readPair(fields.horizontal) }),
    ...(!fields.vertical.isMissing && { vertical: readPair(fields.vertical) }),
    ...(!fields.best.isMissing && { best: readBest(fields.best) }),
    ...(!fields.ground.isMissing && { ground: readPair(fields.ground) }),
  };
}

function readSeries(reader: Reader): Series {
  const { cell, label, line, column, across, names } = reader.fields([
    'cell',
    'label',
    'line',
    'column',
    'across',
    'names',
  ]);
  return {
    cell: cell.text(),
    label: label.text(),
    line: line.oneOf(lines),
    ...(!column.isMissing && { column: column.text() }),
    ...(!across.isMissing && { across: across.text() }),
    ...(!names.isMissing && { names: names.text() }),
  };
}

function readBest(reader: Reader): NonNullable<Plot['best']> {
  const [across, up, ...more] = reader.list();
  if (!across || !up || more.length > 0) reader.fault('two words are wanted, as ["low", "high"].');
  const end = (each: Reader | undefined): BetterEnd => each?.oneOf(['low', 'high']) ?? 'low';
  return [end(across), end(up)];
}

function readStep(reader: Reader): Step {
  const fields = reader.fields(['title', 'text', 'guess', 'reveal', 'why', 'next', 'plot']);
  return {
    title: fields.title.text(),
    text: fields.text.text(),
    guess: fields.guess.text(),
    reveal: fields.reveal.list().map((each) => each.text()),
    why: fields.why.text(),
    next: fields.next.text(),
    ...(!fields.plot.isMissing && { plot: fields.plot.text() }),
  };
}

function readBaseline(reader: Reader, sheets: readonly Sheet[]): Baseline {
  const fields = reader.fields(['pinned', 'cells']);
  const cells = new Map<string, ReadonlyMap<string, string>>();
  for (const [name, each] of fields.cells.entries()) {
    const sheet = sheets.find((other) => other.name === name);
    if (!sheet) each.fault(`there is no sheet "${name}" in this document.`);
    else {
      const texts = each.entries().filter(([address, text]) => isAddress(text, address));
      cells.set(sheet.id, new Map(texts.map(([address, text]) => [address, text.text()])));
    }
  }
  return { pinned: fields.pinned.time(), cells };
}
