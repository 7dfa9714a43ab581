import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import type { CellState, SheetContent } from '../../src/engine/types.ts';
import { Told } from './sheet.ts';

const ROWS = 6;
const SHEETS = ['s', 't'] as const;
const nameOf = (sheet: string): string => sheet.toUpperCase();
const driver = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")';

/** A cell by its rank: formulas refer to lower ranks only, so that there is no loop. */
interface Spot {
  readonly sheet: string;
  readonly cell: string;
}
const spots: readonly Spot[] = Array.from({ length: ROWS }, (_, row) =>
  SHEETS.flatMap((sheet) => ['A', 'B'].map((column) => ({ sheet, cell: `${column}${String(row + 1)}` }))),
).flat();

const literal = fc.constantFrom(
  '',
  '3',
  '-2',
  '0',
  '12 L',
  '0.2 ft3',
  '38 Hz',
  'words',
  'TRUE',
  "'7",
  '1e-12 F',
  '5.5 mm',
);

/** What may be typed into the cell of a rank. `R` and `Q` are references to lower ranks. */
function formula(rank: number): fc.Arbitrary<string> {
  const here = spots[rank];
  const reference = fc.integer({ min: 0, max: Math.max(0, rank - 1) }).map((at) => {
    const to = spots[at];
    return to?.sheet === here?.sheet ? (to?.cell ?? 'A1') : `${nameOf(to?.sheet ?? '')}!${to?.cell ?? 'A1'}`;
  });
  const patterns = [
    '=R+Q',
    '=R*Q',
    '=R/Q',
    '=-R',
    '=R',
    '=IF(R>1, Q, R)',
    '=IFERROR(R/Q, 7)',
    '=R&" and "&Q',
    '=SQRT(R)',
    '=MAX(R, Q)',
    '=ROUND(R, 1)',
    '=CLOSED.QTC(0.386, R, Q)',
    `=CLOSED.BOX(${driver}, R)`,
    '=BOX.RESONANCE(R)',
    '=BOX.RESPONSE(R)',
    '=CURVE.PEAK(R)',
    '=R.volume',
    '=Low',
    '=Low+R',
  ];
  return fc
    .tuple(fc.constantFrom(...patterns), reference, reference)
    .map(([pattern, r, q]) => (rank === 0 ? '4' : pattern.replaceAll(/\bR\b/g, r).replaceAll(/\bQ\b/g, q)));
}

const write = fc
  .integer({ min: 0, max: spots.length - 1 })
  .chain((rank) => fc.tuple(fc.constant(rank), fc.oneof(literal, { weight: 2, arbitrary: formula(rank) })));
const edit = fc.oneof(
  {
    weight: 4,
    arbitrary: fc
      .array(write, { minLength: 1, maxLength: 3 })
      .map((writes) => ({ writes, reload: false, low: undefined })),
  },
  fc
    .tuple(fc.array(write, { maxLength: 8 }), fc.constantFrom('A1', 'B1'))
    .map(([writes, low]) => ({ writes, reload: true, low })),
);

type Cells = Map<string, Map<string, string>>;

const contentOf = (cells: Cells, low: string): SheetContent[] =>
  SHEETS.map((id) => ({
    id,
    name: nameOf(id),
    cells: new Map(cells.get(id)),
    // A name for one of the two lowest ranks of its sheet, which every formula above may use.
    names: new Map([['Low', low]]),
  }));

const inOrder = ({ states }: Told): CellState[] =>
  [...states.values()].toSorted((a, b) => `${a.sheet}!${a.cell}`.localeCompare(`${b.sheet}!${b.cell}`));

describe('after any edits', () => {
  test('the engine tells what it tells of the resulting sheets loaded anew', { timeout: 120_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 8 }), async (edits) => {
        const engine = createEngine();
        const cells: Cells = new Map(SHEETS.map((id) => [id, new Map()]));
        let low = 'A1';
        const all = new Told();
        all.take(await engine.load(contentOf(cells, low)));
        for (const { writes, reload, low: next } of edits) {
          const writings = writes.map(([rank, text]) => ({ ...(spots[rank] ?? { sheet: 's', cell: 'A1' }), text }));
          for (const { sheet, cell, text } of writings) {
            if (text === '') cells.get(sheet)?.delete(cell);
            else cells.get(sheet)?.set(cell, text);
          }
          low = next ?? low;
          all.take(reload ? await engine.load(contentOf(cells, low)) : await engine.write(writings));
        }
        const fresh = createEngine();
        const anew = new Told();
        anew.take(await fresh.load(contentOf(cells, low)));
        engine.dispose();
        fresh.dispose();
        expect(inOrder(all)).toEqual(inOrder(anew));
      }),
      { numRuns: 150 },
    );
  });

  test('the order in which cells are loaded makes no difference', { timeout: 60_000 }, async () => {
    const whole = fc.tuple(...spots.map((_, rank) => fc.oneof(literal, { weight: 2, arbitrary: formula(rank) })));
    await fc.assert(
      fc.asyncProperty(whole, async (texts) => {
        const told = async (ranks: readonly number[]): Promise<CellState[]> => {
          const cells: Cells = new Map(SHEETS.map((id) => [id, new Map()]));
          for (const rank of ranks) {
            const { sheet, cell } = spots[rank] ?? { sheet: 's', cell: 'A1' };
            if (texts[rank]) cells.get(sheet)?.set(cell, texts[rank]);
          }
          const all = new Told();
          const engine = createEngine();
          all.take(await engine.load(contentOf(cells, 'A1')));
          engine.dispose();
          return inOrder(all);
        };
        const ranks = spots.map((_, rank) => rank);
        expect(await told(ranks.toReversed())).toEqual(await told(ranks));
      }),
      { numRuns: 60 },
    );
  });
});
