import type { ShownCell } from '../../document/shown.ts';
import type { Cell, Line } from '../../document/types.ts';
import { sparkPath } from '../spark-line/spark-path.ts';
import type { Tally } from './model.ts';

/** Everything that decides how a cell looks. */
export interface CellLook {
  readonly cell: Cell | undefined;
  readonly shown: ShownCell;
  readonly before: string | undefined;
  readonly finding: 'error' | 'doubt' | undefined;
  readonly tally: Tally | undefined;
  readonly line: Line | undefined;
}

const shapes = {
  good: ['M14.2 8a6.2 6.2 0 1 1-12.4 0 6.2 6.2 0 0 1 12.4 0', 'm5.4 8.2 1.9 1.9 3.4-3.9'],
  caution: ['M8 2 14.6 13.6H1.4z', 'M8 6.4v3.2M8 11.6v.1'],
  fail: ['M5.4 1.8h5.2l3.6 3.6v5.2l-3.6 3.6H5.4l-3.6-3.6V5.4z', 'm5.9 5.9 4.2 4.2m0-4.2-4.2 4.2'],
} as const;

const SVG = 'http://www.w3.org/2000/svg';

function element(tag: string, kind: string, ...content: (Node | string)[]): HTMLElement {
  const made = document.createElement(tag);
  made.className = kind;
  made.append(...content);
  return made;
}

function drawing(kind: string, box: string, paths: readonly string[]): SVGSVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('class', kind);
  svg.setAttribute('viewBox', box);
  svg.setAttribute('aria-hidden', 'true');
  for (const d of paths) {
    const path = document.createElementNS(SVG, 'path');
    path.setAttribute('d', d);
    svg.append(path);
  }
  return svg;
}

const mark = (status: keyof typeof shapes): SVGSVGElement => drawing('icon', '0 0 16 16', shapes[status]);

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

/** Fills a pooled element with what the cell looks like. */
export function drawCell(target: HTMLElement, look: CellLook): void {
  const { cell, shown, before, finding, tally } = look;
  const kinds = ['cell'];
  if (cell?.look === 'section') kinds.push('heading');
  else if (cell?.look) kinds.push(cell.look);
  if (isInput(cell, shown)) kinds.push('typed');
  if (finding) kinds.push(finding);
  if (before !== undefined) kinds.push('changed');
  if (shown.kind === 'number') kinds.push('number');
  if (shown.kind === 'waiting') kinds.push('waiting');
  if (shown.kind === 'problem') kinds.push('problem');
  target.className = kinds.join(' ');
  target.title = titleOf(shown);
  target.replaceChildren(
    ...content(look, before),
    ...(tally ? [tallyOf(tally)] : []),
    // The corner that marks a finding is told to those who cannot see it.
    ...(finding ? [element('span', 'hidden', finding === 'error' ? 'error in the formula' : 'in doubt')] : []),
  );
}

function content({ shown, line }: CellLook, before: string | undefined): Node[] {
  const was = before === undefined || before === '' ? [] : [element('span', 'was', `${before} →`)];
  switch (shown.kind) {
    case 'empty':
      return was;
    case 'number':
      return [...was, element('span', 'value', shown.number), element('span', unitKind(shown.unit), shown.unit)];
    case 'verdict':
      return [
        element('span', `chip ${shown.status}`, mark(shown.status), shown.word),
        ...(before === undefined ? [] : [element('span', 'was', `was ${before.split(':')[0]?.toLowerCase() ?? ''}`)]),
        element('span', 'reason', shown.note === '' ? shown.reason : `${shown.reason} ${shown.note}`),
      ];
    case 'curve': {
      const picture = drawing(`spark ${line ?? ''}`, '0 0 120 20', [sparkPath(shown.curve, 120, 20)]);
      picture.setAttribute('preserveAspectRatio', 'none');
      return [picture, element('span', 'hidden', shown.text)];
    }
    case 'record':
      return [element('span', 'words value', shown.title)];
    case 'problem':
      return [mark('fail'), element('span', 'words', shown.message)];
    case 'text':
    case 'waiting':
      return [element('span', 'words value', shown.text)];
  }
}

/** Whether a cell holds words, which end in an ellipsis where the cell ends; a number must stand whole in its place. */
export const holdsWords = ({ cell, shown: { kind } }: CellLook): boolean =>
  !cell?.look && (kind === 'verdict' || kind === 'problem' || kind === 'text' || kind === 'record');

/** Units that are wider than their slot push the number to the left rather than out of the cell. */
const unitKind = (unit: string): string => (unit.length > LONGEST_IN_SLOT ? 'unit long' : 'unit');
const LONGEST_IN_SLOT = 6;

function tallyOf(tally: Tally): HTMLElement {
  const parts = (['fail', 'caution', 'good'] as const)
    .filter((status) => tally[status] > 0)
    .map((status) => {
      const part = element('span', status, mark(status), String(tally[status]));
      part.append(element('span', 'hidden', status));
      return part;
    });
  return element('span', 'tally', ...parts);
}

function titleOf(shown: ShownCell): string {
  switch (shown.kind) {
    case 'verdict':
      return `${shown.reason} ${shown.note}`.trim();
    case 'problem':
      return shown.message;
    case 'record':
    case 'curve':
      return shown.text;
    default:
      return '';
  }
}
