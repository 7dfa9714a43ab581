import fc from 'fast-check';
import { HyperFormula } from 'hyperformula';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { isRefusal } from '../../src/document/command.ts';
import { contentOf } from '../../src/document/difference.ts';
import { bareEngine } from '../../src/engine/bare-engine.ts';
import { CellIndex } from '../../src/engine/cell-index.ts';
import { language } from '../../src/engine/language.ts';
import { readOwnFormulas } from '../../src/engine/own-reader.ts';
import { pluginFor } from '../../src/engine/plugin.ts';
import { rawOf } from '../../src/engine/raw-content.ts';
import { RecordStore } from '../../src/engine/record-store.ts';
import type { SheetContent } from '../../src/engine/types.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { compile } from '../../src/formula/compile.ts';
import { functionsByName, type Scope } from '../../src/formula/types.ts';
import { templates } from '../../templates/index.ts';

const store = new RecordStore();
const ours = bareEngine(catalogue, { store, doubt: () => undefined, nameOf: String });
/** The engine as it comes, with its own reader. */
const theirs = HyperFormula.buildEmpty({
  licenseKey: 'gpl-v3',
  language: language(catalogue),
  functionPlugins: [...HyperFormula.getAllFunctionPlugins(), pluginFor(catalogue)],
  context: { store, doubt: () => undefined, nameOf: String },
  maxRows: 1_048_576,
  maxColumns: 18_278,
  precisionRounding: 15,
});
for (const engine of [ours, theirs]) {
  engine.setCellContents({ sheet: numberOf(engine, 's'), row: 0, col: 0 }, [
    [3, 4, 'five'],
    [6, -7, true],
  ]);
  engine.setCellContents({ sheet: numberOf(engine, 'far'), row: 0, col: 0 }, [[9, 10]]);
}

function numberOf(engine: HyperFormula, sheet: string): number {
  return engine.getSheetId(sheet) ?? engine.getSheetId(engine.addSheet(sheet)) ?? -1;
}

interface Address {
  toSimpleCellAddress(at: Place): Place;
}
interface Place {
  readonly sheet: number;
  readonly row: number;
  readonly col: number;
}
interface Reader {
  parse(
    text: string,
    at: Place,
  ): { readonly ast: unknown; readonly dependencies: readonly { absolutize(at: Place): unknown }[] };
}

/** Far from the corner, so that relative addresses of the engine lie on all sides of it. */
const from = { row: 40, col: 7 };

/** What a reader makes of a text: the tree and what it depends on, addresses as what they come to. */
function readBy(engine: HyperFormula, text: string, sheet: string): unknown {
  const at = { sheet: numberOf(engine, sheet), ...from };
  const read = (engine as unknown as { _parser: Reader })._parser.parse(text, at);
  return plain({ ...read, dependencies: read.dependencies.map((each) => each.absolutize(at)) }, at);
}

/** Ours makes no note of blanks and of how a range's sheet was written. */
const unnoted = new Set(['leadingWhitespace', 'internalWhitespace', 'sheetReferenceType']);

function plain(value: unknown, at: Place): unknown {
  if (Array.isArray(value)) return value.map((each) => plain(each, at));
  if (typeof value !== 'object' || value === null) return value;
  if ('toSimpleCellAddress' in value) return { ...(value as Address).toSimpleCellAddress(at) };
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]) => (unnoted.has(key) ? [] : [[key, plain(each, at)]])),
  );
}

/** The engine's own reader has no quote and no backslash inside a text. */
const forTheirs = (text: string): string =>
  text.replaceAll(/"((?:[^"]|"")*)"/g, (literal, inner: string) =>
    /["\\]/.test(inner) ? `("${inner.replaceAll('""', '"&CHAR(34)&"').replaceAll('\\', '"&CHAR(92)&"')}")` : literal,
  );

/** The same tree, but where the engine's own reader must be told in another way; and the same value. */
function expectSame(text: string, sheet: string): void {
  const told = forTheirs(text);
  if (told === text)
    expect({ text, ...(readBy(ours, text, sheet) as object) }).toEqual({
      text,
      ...(readBy(theirs, text, sheet) as object),
    });
  expect([text, ours.calculateFormula(text, numberOf(ours, sheet))]).toEqual([
    text,
    theirs.calculateFormula(told, numberOf(theirs, sheet)),
  ]);
}

/** Every formula of these sheets as the engine is told it. */
function* told(sheets: readonly SheetContent[]): Generator<readonly [text: string, sheet: string]> {
  const index = new CellIndex(functionsByName(catalogue));
  const writings = [...index.differences(sheets)];
  index.frame(sheets);
  for (const key of index.write(writings, true)) {
    const entry = index.get(key);
    const raw = rawOf(entry);
    if (entry?.content.kind === 'formula' && typeof raw === 'string') yield [raw, entry.place.sheet];
  }
}

describe('our reader makes of a formula what the engine makes of it', () => {
  test.each(templates.map(({ id, content }) => ({ id, content })))('in the starter sheet $id', ({ content }) => {
    const document = decodeDocument(content);
    if (isRefusal(document)) throw new Error(document.refused);
    const formulas = [...told(contentOf(document.sheets))];
    expect(formulas.length).toBeGreaterThan(5);
    for (const [text, sheet] of formulas) expectSame(text, sheet);
  });

  test('in the example of every function', () => {
    const sheets = catalogue.map(({ example: { formula, cells = {} } }, index) => ({
      id: `example${String(index)}`,
      name: `Example ${String(index)}`,
      cells: new Map([...Object.entries(cells), ['Z99', formula]]),
      names: new Map<string, string>(),
    }));
    const formulas = [...told(sheets)];
    expect(formulas.length).toBeGreaterThanOrEqual(catalogue.length);
    for (const [text, sheet] of formulas) expectSame(text, sheet);
  });

  const scope: Scope = {
    functions: functionsByName(catalogue),
    sheet: 's',
    sheetNamed: (name) => (name.toLowerCase() === 'two drivers' ? 'far' : undefined),
    cellsNamed: (_, name) => (name.toLowerCase() === 'span' ? 'C9:A2' : undefined),
    namesOf: () => [],
    textOf: () => '',
    typeOf: () => ({ kind: 'unknown' }),
  };

  const addressUpTo = (row: number): fc.Arbitrary<string> =>
    fc
      .tuple(
        fc.constantFrom('', '$'),
        fc.constantFrom('A', 'b', 'Z', 'AA'),
        fc.constantFrom('', '$'),
        fc.integer({ min: 1, max: row }),
      )
      .map((parts) => parts.join(''));
  const near = addressUpTo(60);
  const address = fc.oneof(near, addressUpTo(2_000_000));
  const elsewhere = fc.constantFrom('', "'Two drivers'!");
  const several = fc.oneof(
    fc.tuple(elsewhere, near, near).map(([sheet, first, last]) => `${sheet}${first}:${last}`),
    fc.constant('Span'),
  );
  const value = fc.oneof(
    fc.constantFrom('0', '12', '.5', '2.', '1e3', '2.5E-7', '12 L', '-5 °C', 'TRUE', 'false', 'PI()', '"a"', '""'),
    fc.constantFrom('"a ""b"" c"', '"1\\2"', '1e400', '-1e308', '"x,y)&"', '"=1"', 'NA()', '1/0'),
    fc.tuple(elsewhere, address).map((parts) => parts.join('')),
    fc.tuple(fc.constantFrom('SUM', 'max', 'COUNT', 'ROWS'), several).map(([name, range]) => `${name}(${range})`),
  );
  const blank = fc.constantFrom('', '', ' ', '\n');
  const operator = fc.constantFrom('+', '-', '*', '/', '^', '&', '=', '<>', '<=', '>=', '<', '>');
  const { expression } = fc.letrec<{ expression: string }>((tie) => ({
    expression: fc.oneof(
      { maxDepth: 5, withCrossShrink: true },
      value,
      fc.tuple(tie('expression'), blank, operator, blank, tie('expression')).map((parts) => parts.join('')),
      fc.tuple(tie('expression'), blank, operator, blank, tie('expression')).map((parts) => parts.join('')),
      fc.tuple(fc.constantFrom('-', '+', '−', '--'), tie('expression')).map((parts) => parts.join('')),
      fc.tuple(tie('expression'), fc.constantFrom('%', ' %', '%%')).map((parts) => parts.join('')),
      fc.tuple(blank, tie('expression'), blank).map(([before, inner, after]) => `(${before}${inner}${after})`),
      fc
        .tuple(
          fc.constantFrom('IF', 'sum', 'IFERROR', 'CHOOSE', 'ABS', 'Exp', 'LN', 'LOG10', 'SQRT'),
          fc.array(fc.oneof(tie('expression'), blank), { maxLength: 4 }),
        )
        .map(([name, given]) => `${name}(${given.join(',')})`),
    ),
  }));

  test('in formulas made at random', () => {
    let read = 0;
    fc.assert(
      fc.property(expression, (text) => {
        const { text: told, findings } = compile(`=${text}`, scope);
        if (findings.some(({ level }) => level === 'error')) return;
        read++;
        expectSame(told, 's');
      }),
      { numRuns: 9000 },
    );
    expect(read).toBeGreaterThan(5000);
  }, 60_000);

  test.each(['#REF!', '#NAME?', '#N/A', '#DIV/0!'])('%s never reaches it', (error) => {
    expect(compile(`=1+${error}`, scope).findings).toContainEqual(expect.objectContaining({ level: 'error' }));
  });
});

describe('formulas that say the same of where they stand', () => {
  const tree = (text: string, row: number, col = 3): unknown =>
    (ours as unknown as { _parser: Reader })._parser.parse(text, { sheet: numberOf(ours, 's'), row, col }).ast;

  test.each([
    ['=$A$1*SQRT(1+B1/C1)', '=$A$1*SQRT(1+B9/C9)'],
    ['=LOG10(A$2)+SUM(B1:C4)', '=LOG10(A$2)+SUM(B9:C12)'],
    [`="A1 ""B1"""&'far'!D1`, `="A1 ""B1"""&'far'!D9`],
  ])('share one tree: %s and %s', (above, below) => {
    expect(tree(below, 8)).toBe(tree(above, 0));
  });

  test.each([
    ['=A1', '=A1'],
    ['=A$1', '=A$9'],
    ['="A1"', '="A9"'],
    ["='far'!A1", '=A9'],
    ['=SUM(A$1:A1)', '=SUM(A$1:A9)'],
    ['=SUM(A1:A1)', '=SUM(A9)'],
  ])('and no others do: %s and %s', (above, below) => {
    expect(tree(below, 8)).not.toBe(tree(above, 0));
  });
});

describe('a formula in the engine', () => {
  const at = (row: number, col = 0): Place => ({ sheet: numberOf(ours, 'scratch'), row, col });
  const contents = (rows: readonly (string | number)[]): void => {
    ours.setCellContents(
      at(0),
      rows.map((row) => [row]),
    );
  };

  test('comes back as it was with an undo, and goes on being calculated', () => {
    contents([1, 2, "=SUM(A2:A1)&'far'!B1"]);
    ours.setCellContents(at(2), 'gone');
    ours.undo();
    expect(ours.getCellValue(at(2))).toBe('310');
    ours.setCellContents(at(0), 5);
    expect(ours.getCellValue(at(2))).toBe('710');
  });

  test('refers to nothing once the sheet is removed that it refers to, and to the new one of that name', () => {
    numberOf(ours, 'brief');
    contents(["=1+'brief'!A1"]);
    ours.removeSheet(numberOf(ours, 'brief'));
    expect(ours.getCellValue(at(0))).toMatchObject({ type: 'REF' });
    ours.setCellContents({ sheet: numberOf(ours, 'brief'), row: 0, col: 0 }, 41);
    expect(ours.getCellValue(at(0))).toBe(42);
  });

  test('that goes round in a circle is told as one, and calculated once it is broken', () => {
    contents(['=A2+1', '=SUM(A3:A1)', 2]);
    expect(ours.getCellValue(at(0))).toMatchObject({ type: 'CYCLE' });
    ours.setCellContents(at(1), 7);
    expect(ours.getCellValue(at(0))).toBe(8);
  });

  test('that was compiled wrongly is no formula', () => {
    for (const text of ['=', '=1+', '=(1', '=SUM(1', '=1 + 2', '=A$', '={1}', '=A1:B', '="a', '=1)'])
      expect(() => ours.calculateFormula(text, numberOf(ours, 's')), text).toThrow(/compiled wrongly/);
  });

  test('an engine built in another way is refused', () => {
    expect(() => readOwnFormulas({ _parser: { parse: () => undefined } })).toThrow(/finds no place/);
  });
});
