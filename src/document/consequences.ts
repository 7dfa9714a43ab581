import type { CellState, Place } from '../engine/types.ts';
import type { Curve } from '../../functions/values/curve.ts';
import type { Status } from '../../functions/values/verdict.ts';
import type { Before, Moment } from './comparison.ts';
import { labelOf } from './labels.ts';
import { showCell } from './show-cell.ts';
import type { ShownCell } from './shown.ts';
import type { OctavoDocument } from './types.ts';
import { verdictIn } from './verdicts.ts';

/** A cell that changed, before and after. */
export interface Consequence {
  readonly place: Place;
  readonly label: string;
  readonly before: ShownCell;
  readonly after: ShownCell;
  /** The edit was made in this cell itself. */
  readonly isCause: boolean;
  /** A verdict that went from one word of judgement to another. */
  readonly flip?: { readonly from: Status; readonly to: Status };
  /** How far it moved, relative to what it was: 0.1 is a tenth. Decibels count as the ratio that they stand for. */
  readonly change: number;
}

/** The cells of a comparison that a reader would see changed: causes first, then verdicts that flipped (the worse turns
 *  first), then numbers by how far they moved, then curves and records. */
export function listConsequences(
  document: OctavoDocument,
  befores: Iterable<Before>,
  now: (place: Place) => Moment,
  isCause: (before: Before) => boolean,
): readonly Consequence[] {
  const sheets = new Map(document.sheets.map((sheet) => [sheet.id, sheet]));
  const list: Consequence[] = [];
  for (const before of befores) {
    const { place, moment } = before;
    const sheet = sheets.get(place.sheet);
    const after = now(place);
    const change = changeOf(moment.state, after.state);
    if (!sheet || change === 0) continue;
    const flip = flipOf(moment.state, after.state);
    list.push({
      place,
      label: labelOf(sheet, place.cell),
      before: shownAt(moment, document),
      after: shownAt(after, document),
      isCause: isCause(before),
      ...(flip && { flip }),
      change,
    });
  }
  return list.sort((a, b) => rank(a) - rank(b) || worsening(b) - worsening(a) || b.change - a.change);
}

const shownAt = ({ state, cell }: Moment, document: OctavoDocument): ShownCell =>
  state ? showCell(state, cell, document) : { kind: 'empty' };

/** A curve or a record that moved says little in a line, so numbers come before it. */
const rank = ({ isCause, flip, after }: Consequence): number =>
  isCause ? 0 : flip ? 1 : after.kind === 'curve' || after.kind === 'record' ? 3 : 2;

const grades: Record<Status, number> = { good: 0, caution: 1, fail: 2 };

const worsening = ({ flip }: Consequence): number => (flip ? grades[flip.to] - grades[flip.from] : 0);

/** The flip of a verdict, where both states are verdicts and differ in their judgement. */
function flipOf(before: CellState | undefined, after: CellState | undefined): Consequence['flip'] {
  const from = verdictIn(before)?.status;
  const to = verdictIn(after)?.status;
  return from && to && from !== to ? { from, to } : undefined;
}

/** How far a cell moved; 0 where a reader would see the same. Anything that is no number moved by all of itself, but
 *  a verdict that keeps its judgement only changed its words. */
function changeOf(before: CellState | undefined, after: CellState | undefined): number {
  const a = before?.value;
  const b = after?.value;
  if (a?.kind === 'number' && b?.kind === 'number') {
    const isLevel = after?.type.kind === 'number' && after.type.quantity === 'level';
    return isLevel ? ratioOf(b.value - a.value) : relative(a.value, b.value);
  }
  if (a?.kind === 'record' && b?.kind === 'record') {
    if (a.record.kind === 'curve' && b.record.kind === 'curve') return curveChange(a.record, b.record);
    if (a.record.kind === b.record.kind) return same(a.record, b.record) ? 0 : Number.MIN_VALUE;
  }
  return same(a, b) || isNothing(before, after) ? 0 : 1;
}

const isNothing = (before: CellState | undefined, after: CellState | undefined): boolean =>
  (before?.value.kind ?? 'empty') === 'empty' && (after?.value.kind ?? 'empty') === 'empty';

const ratioOf = (decibels: number): number => Math.abs(10 ** (Math.abs(decibels) / 20) - 1);

function relative(a: number, b: number): number {
  if (a === b) return 0;
  const size = Math.max(Math.abs(a), Math.abs(b));
  // The engine's own rounding is no consequence.
  const change = Math.abs(a - b) / size;
  return change < 1e-12 ? 0 : change;
}

/** The largest move of the curve at one frequency, over its range of values. */
function curveChange(a: Curve, b: Curve): number {
  let largest = 0;
  let size = 0;
  for (let index = 0; index < b.y.length; index++) {
    const value = b.y[index] ?? Number.NaN;
    const was = a.y[index] ?? Number.NaN;
    if (Number.isFinite(value) && Number.isFinite(was)) {
      largest = Math.max(largest, Math.abs(value - was));
      size = Math.max(size, Math.abs(value), Math.abs(was));
    } else if (Number.isFinite(value) !== Number.isFinite(was)) return 1;
  }
  if (b.quantity === 'level') return ratioOf(largest);
  return size === 0 || largest / size < 1e-12 ? 0 : largest / size;
}

function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const names = Object.keys(a);
  if (names.length !== Object.keys(b).length) return false;
  return names.every((name) => same((a as Record<string, unknown>)[name], (b as Record<string, unknown>)[name]));
}
