import type { ShownCell } from '../../document/shown.ts';
import type { Cell, Line } from '../../document/types.ts';
import type { Counts } from '../../document/verdicts.ts';
import { unbroken } from '../../units/show.ts';
import { sparkPath } from '../spark-line/spark-path.ts';
import { fill, setText, SPARK, type Part } from './cell-parts.ts';
import type { GridModel } from './model.ts';

/** Everything that decides how a cell looks. */
export interface CellLook {
  readonly cell: Cell | undefined;
  readonly shown: ShownCell;
  readonly before: string | undefined;
  readonly finding: 'error' | 'doubt' | undefined;
  readonly tally: Counts | undefined;
  readonly line: Line | undefined;
}

/** How a cell of a model looks. A heading tells how its section stands. */
export const lookAt = (model: GridModel, row: number, column: number, isHeading = false): CellLook => ({
  cell: model.cell(row, column),
  shown: model.shown(row, column),
  before: model.before?.(row, column),
  finding: model.finding?.(row, column),
  tally: isHeading && column === 0 ? model.tally?.(row) : undefined,
  line: model.columns[column]?.line,
});

/** A text that is the same for two looks that would draw the same. Curves are told apart by being other objects. */
const curveNumbers = new WeakMap<object, number>();
let nextNumber = 0;

export function lookKey({ cell, shown, before, finding, tally, line }: CellLook): string {
  if (shown.kind === 'empty' && !cell && before === undefined) return '';
  const counts = tally ? `${String(tally.good)}/${String(tally.caution)}/${String(tally.fail)}` : '';
  return [
    shownKey(shown),
    // A change to nothing is another look than no change.
    before === undefined ? '' : `was ${before}`,
    finding ?? '',
    cell?.look ?? '',
    isInput(cell, shown) ? 'typed' : '',
    line ?? '',
    counts,
  ].join(SEPARATOR);
}

/** Stands in no text that can be typed or shown. */
const SEPARATOR = '\0';

function shownKey(shown: ShownCell): string {
  switch (shown.kind) {
    case 'empty':
      return shown.kind;
    case 'number':
      return shown.kind + SEPARATOR + shown.number + SEPARATOR + shown.unit;
    case 'text':
    case 'waiting':
      return shown.kind + SEPARATOR + shown.text;
    case 'verdict':
      return [shown.kind, shown.status, shown.word, shown.reason, shown.note].join(SEPARATOR);
    case 'record':
      return shown.kind + SEPARATOR + shown.title + SEPARATOR + shown.text;
    case 'problem':
      return shown.kind + SEPARATOR + shown.message;
    case 'curve': {
      if (!curveNumbers.has(shown.curve)) curveNumbers.set(shown.curve, nextNumber++);
      return `curve${String(curveNumbers.get(shown.curve))}${SEPARATOR}${shown.text}`;
    }
  }
}

/** A number or a choice that the reader may change, marked so that it is told from what is computed. */
const isInput = (cell: Cell | undefined, { kind }: ShownCell): boolean =>
  cell !== undefined &&
  !cell.look &&
  cell.text !== '' &&
  !cell.text.startsWith('=') &&
  (kind === 'number' || cell.range !== undefined || cell.choices !== undefined);

/** Makes an element look as the cell does; a look of the same parts as the one before only gets other words.
 *  @param former - What was given back when the element was drawn last. */
export function drawCell(target: HTMLElement, look: CellLook, former: string): string {
  const { cell, shown, before, finding, tally } = look;
  const kinds: string[] = ['cell', shown.kind];
  if (cell?.look === 'section') kinds.push('heading');
  else if (cell?.look) kinds.push(cell.look);
  if (isInput(cell, shown)) kinds.push('typed');
  if (finding) kinds.push(finding);
  if (before !== undefined) kinds.push('changed');
  setText(target, 'className', kinds.join(' '));
  setText(target, 'title', titleOf(shown) || (before ? `${before} before` : ''));
  return fill(
    target,
    [
      ...content(look, before),
      ...(tally ? [tallyOf(tally)] : []),
      // The corner that marks a finding is told to those who cannot see it.
      ...(finding ? [{ kind: 'hidden', text: finding === 'error' ? 'error in the formula' : 'in doubt' }] : []),
    ],
    former,
  );
}

function content({ shown, line }: CellLook, before: string | undefined): readonly Part[] {
  const was = before === undefined || before === '' ? [] : [{ kind: 'was', text: `${before} →` }];
  switch (shown.kind) {
    case 'empty':
      return was;
    case 'number':
      return [...was, { kind: 'value', text: shown.number }, { kind: unitKind(shown.unit), text: shown.unit }];
    case 'verdict':
      return [
        { kind: `chip ${shown.status}`, mark: shown.status, text: shown.word },
        ...(before === undefined ? [] : [{ kind: 'was', text: `was ${before.split(':')[0]?.toLowerCase() ?? ''}` }]),
        { kind: 'reason', text: titleOf(shown) },
      ];
    case 'curve':
      return [
        { kind: `spark ${line ?? ''}`, path: sparkPath(shown.curve, ...SPARK) },
        { kind: 'hidden', text: shown.text },
      ];
    case 'record':
      return [{ kind: 'words value', text: shown.title }];
    case 'problem':
      return [
        { kind: 'sign', mark: 'fail' },
        { kind: 'words', text: shown.message },
      ];
    case 'text':
    case 'waiting':
      return [{ kind: 'words value', text: shown.text }];
  }
}

/** Units that are wider than their slot push the number to the left rather than out of the cell. */
const unitKind = (unit: string): string => (unit.length > LONGEST_IN_SLOT ? 'unit long' : 'unit');
const LONGEST_IN_SLOT = 6;

function tallyOf(tally: Counts): Part {
  const parts = (['fail', 'caution', 'good'] as const)
    .filter((status) => tally[status] > 0)
    .map((status) => ({
      kind: status,
      mark: status,
      text: String(tally[status]),
      parts: [{ kind: 'hidden', text: status }],
    }));
  return { kind: 'tally', parts };
}

function titleOf(shown: ShownCell): string {
  switch (shown.kind) {
    case 'verdict':
      return unbroken(`${shown.reason} ${shown.note}`.trim());
    case 'problem':
      return shown.message;
    case 'record':
    case 'curve':
      return shown.text;
    default:
      return '';
  }
}
