import fc from 'fast-check';
import { apply } from '../../src/document/apply.ts';
import { isRefusal, type Applied, type Command } from '../../src/document/command.ts';
import { clipOf } from '../../src/document/commands/cell-edits.ts';
import type { Cell, OctavoDocument, Sheet } from '../../src/document/types.ts';

const columns = Array.from({ length: 6 }, (_, index) => ({ width: 100 + index, title: `Column ${index}` }));

/** Two sheets that refer to one another by address and by name, with a plot. */
export const sampleDocument = (): OctavoDocument => ({
  id: 'document-1',
  title: 'Sample',
  system: 'metric',
  sheets: [
    sheet('one', 'Two drivers', {
      A4: { text: 'Resonance' },
      B4: { text: '38 Hz' },
      C4: { text: '850 Hz' },
      B5: { text: '4.8' },
      C5: { text: '2.6' },
      D6: { text: '1808 Hz', range: ['800 Hz', '6 kHz'] },
      D7: { text: '=B4*2+C4' },
      D8: { text: '=Woofer*$B$5' },
      D9: { text: "='Two drivers'!B5+Box!Volume", unit: 'Hz' },
      D10: { text: '=SUM(B4:C5)' },
      E1: { text: 'Answer', look: 'section' },
    }),
    {
      ...sheet('two', 'Box', {
        B2: { text: '12 L' },
        B3: { text: "='Two drivers'!B4" },
        B4: { text: "='Two drivers'!Woofer" },
      }),
      names: new Map([['Volume', 'B2']]),
      plots: [],
    },
  ],
});

const sheet = (id: string, name: string, cells: Record<string, Cell>): Sheet => ({
  id,
  name,
  summary: '',
  rows: 20,
  columns,
  cells: new Map(Object.entries(cells)),
  names: new Map([
    ['Woofer', 'B4'],
    ['Pair', 'B4:C5'],
  ]),
  plots: [
    {
      id: 'plot-1',
      title: 'Level',
      kind: 'curves',
      series: [
        { cell: 'Woofer', label: 'Woofer', line: 'woofer' },
        { cell: 'D7', label: 'Sum', line: 'system' },
      ],
      limits: [],
      marks: [{ cell: 'D6', label: 'hand-over' }],
    },
  ],
});

/** The document after each of the commands that was not refused, with its undoing. */
export function played(document: OctavoDocument, commands: readonly Making[]): readonly Applied[] {
  const steps: Applied[] = [];
  let current = document;
  for (const make of commands) {
    const command = make(current);
    const outcome = command && apply(current, command);
    if (!outcome || isRefusal(outcome)) continue;
    current = outcome.document;
    steps.push(outcome);
  }
  return steps;
}

/** A random command needs the document to be possible in it: which sheets there are, and how large. */
export type Making = (document: OctavoDocument) => Command | undefined;

const share = (): fc.Arbitrary<number> => fc.double({ min: 0, max: 0.999, noNaN: true });
const texts = fc.constantFrom(
  '',
  '38 Hz',
  '4.8',
  '=B4+C4',
  '=Woofer*2',
  "='Box'!B2",
  '=SUM(B4:D9)',
  '=$A$1',
  'word',
  '=Box!Volume+1',
);
const names = fc.constantFrom('Woofer', 'Volume', 'Fresh', 'Pair', 'woofer', 'B4', '2x', '');

const onSheet = (make: (sheet: Sheet, pick: (size: number, part: number) => number) => Command): fc.Arbitrary<Making> =>
  share().map((which) => (document) => {
    const chosen = document.sheets[Math.floor(which * document.sheets.length)];
    return chosen && make(chosen, (size, part) => Math.floor(part * size));
  });

const area = fc
  .tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 1, max: 12 }), fc.nat({ max: 2 }), fc.nat({ max: 3 }))
  .map(([left, top, wide, high]) => {
    const letter = (index: number): string => String.fromCharCode(65 + index);
    return `${letter(left)}${top}:${letter(left + wide)}${top + high}`;
  });
const cell = area.map((cells) => cells.split(':')[0] ?? 'A1');

/** Any sequence of commands, structural ones included. */
export const anyCommands = (): fc.Arbitrary<readonly Making[]> => fc.array(anyCommand(), { maxLength: 12 });

const anyCommand = (): fc.Arbitrary<Making> =>
  fc.oneof(
    fc
      .tuple(cell, texts)
      .chain(([at, text]) => onSheet(({ id }) => ({ kind: 'write', sheet: id, texts: new Map([[at, text]]) }))),
    fc
      .tuple(
        area,
        fc.constantFrom({ unit: 'Hz' }, { unit: undefined }, { look: 'note' as const }, { range: ['1', '2'] as const }),
      )
      .chain(([cells, attributes]) => onSheet(({ id }) => ({ kind: 'describe', sheet: id, cells, attributes }))),
    fc
      .tuple(area, fc.boolean())
      .chain(([cells, whole]) => onSheet(({ id }) => ({ kind: 'clear', sheet: id, cells, ...(whole && { whole }) }))),
    fc
      .tuple(cell, fc.constantFrom('1\t2\n3\t4', '38 Hz', '=B4\t"a\nb"'))
      .chain(([at, text]) => onSheet(({ id }) => ({ kind: 'paste-text', to: { sheet: id, cell: at }, text }))),
    fc.tuple(area, cell, share()).map(([cells, at, which]): Making => (document) => {
      const from = document.sheets[Math.floor(which * document.sheets.length)];
      const to = document.sheets[0];
      return from && to && { kind: 'paste', to: { sheet: to.id, cell: at }, clip: clipOf(document, from.id, cells) };
    }),
    fc.tuple(area, cell, share()).map(([cells, at, which]): Making => (document) => {
      const from = document.sheets[Math.floor(which * document.sheets.length)];
      const to = document.sheets[0];
      return from && to && { kind: 'move', from: { sheet: from.id, cells }, to: { sheet: to.id, cell: at } };
    }),
    fc
      .tuple(area, fc.constantFrom('down' as const, 'right' as const))
      .chain(([cells, direction]) => onSheet(({ id }) => ({ kind: 'fill', sheet: id, cells, direction }))),
    fc
      .tuple(
        fc.constantFrom('insert' as const, 'delete' as const),
        fc.constantFrom('rows' as const, 'columns' as const),
        share(),
        fc.integer({ min: 1, max: 3 }),
      )
      .chain(([kind, axis, part, count]) =>
        onSheet((on, pick) => {
          const size = axis === 'rows' ? on.rows : on.columns.length;
          return { kind, sheet: on.id, axis, at: pick(size, part), count: kind === 'insert' ? count : 1 };
        }),
      ),
    fc.tuple(share(), fc.integer({ min: 0, max: 3000 })).chain(([part, width]) =>
      onSheet((on, pick) => ({
        kind: 'column',
        sheet: on.id,
        column: pick(on.columns.length, part),
        attributes: { width },
      })),
    ),
    fc
      .constantFrom('Box', 'Bench', 'Two drivers', 'a!b')
      .chain((name) => onSheet(({ id }) => ({ kind: 'rename-sheet', sheet: id, name }))),
    fc.nat({ max: 4 }).chain((to) => onSheet(({ id }) => ({ kind: 'move-sheet', sheet: id, to }))),
    onSheet(({ id }) => ({ kind: 'delete-sheet', sheet: id })),
    fc.uuid().chain((id) => onSheet((on) => ({ kind: 'duplicate-sheet', sheet: on.id, id }))),
    fc
      .tuple(names, area)
      .chain(([name, cells]) => onSheet(({ id }) => ({ kind: 'define-name', sheet: id, name, cells }))),
    fc.tuple(names, names).chain(([from, to]) => onSheet(({ id }) => ({ kind: 'rename-name', sheet: id, from, to }))),
    names.chain((name) => onSheet(({ id }) => ({ kind: 'delete-name', sheet: id, name }))),
    onSheet((on) => ({
      kind: 'put-plot',
      sheet: on.id,
      plot: {
        id: 'plot-2',
        title: 'Window',
        kind: 'window',
        series: [],
        limits: [],
        marks: [{ cell: 'B4', label: 'x' }],
      },
    })),
    onSheet(({ id }) => ({ kind: 'delete-plot', sheet: id, plot: 'plot-1' })),
    fc.constantFrom('Title', ' ', 'Other').map((title): Making => () => ({ kind: 'title', title })),
    fc.constantFrom('metric' as const, 'imperial' as const).map((system): Making => () => ({ kind: 'system', system })),
    fc.constant<Making>((document) => ({
      kind: 'pin',
      baseline: {
        pinned: '2026-01-01T00:00:00Z',
        cells: new Map(
          document.sheets.map(({ id, cells }) => [
            id,
            new Map([...cells].map(([address, { text }]) => [address, text])),
          ]),
        ),
      },
    })),
    fc.constant<Making>(() => ({ kind: 'unpin' })),
  );
