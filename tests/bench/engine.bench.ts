import { HyperFormula } from 'hyperformula';
import { bench, describe } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import type { SheetContent } from '../../src/engine/types.ts';
import { paired } from './paired.ts';

const ROWS = 10_000;
const once = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 } as const;

/** A1 feeds column D in every row; B and C hold the row's own inputs. */
function typed(formula: (row: number) => string): SheetContent {
  const cells = new Map([['A1', '0.386']]);
  for (let row = 1; row <= ROWS; row++) {
    cells.set(`B${String(row)}`, `${String(20 + (row % 50))} L`);
    cells.set(`C${String(row)}`, `${String(8 + (row % 30))} L`);
    cells.set(`D${String(row)}`, formula(row));
  }
  return { id: 's', name: 'S', cells, names: new Map() };
}

/** The same sheet in the bare engine. */
function bare(formula: (row: number) => string): () => void {
  const rows = Array.from({ length: ROWS }, (_, index) => [
    index === 0 ? 0.386 : null,
    (20 + ((index + 1) % 50)) / 1000,
    (8 + ((index + 1) % 30)) / 1000,
    formula(index + 1),
  ]);
  const engine = HyperFormula.buildFromArray(rows, { licenseKey: 'gpl-v3', maxRows: 1_048_576 });
  let value = 0.3;
  return () => {
    value += 0.0001;
    engine.setCellContents({ sheet: 0, row: 0, col: 0 }, value);
  };
}

async function ours(formula: (row: number) => string): Promise<() => Promise<unknown>> {
  const engine = createEngine();
  await engine.load([typed(formula)]);
  let value = 0.3;
  return () => {
    value += 0.0001;
    return engine.write([{ sheet: 's', cell: 'A1', text: value.toFixed(4) }]);
  };
}

const own = (row: number): string => `=CLOSED.QTC($A$1,B${String(row)},C${String(row)})`;
const financial = (row: number): string => `=PV($A$1,B${String(row)},C${String(row)})`;
const arithmetic = (row: number): string => `=$A$1*SQRT(1+B${String(row)}/C${String(row)})`;

describe('10 000 cells that follow one, as a ratio to the bare engine', () => {
  bench(
    'a function of the catalogue, checks included',
    async () => {
      const edit = await ours(own);
      await paired({ name: 'against a function of three numbers of the engine', ours: edit, base: bare(financial) });
      await paired({ name: 'against the same sum in operators', ours: edit, base: bare(arithmetic) });
      await paired({ name: 'operators in both', ours: await ours(arithmetic), base: bare(arithmetic) });
    },
    once,
  );
});
