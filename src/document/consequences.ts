import type { CellState, Place } from '../engine/types.ts';
import type { Curve } from '../../functions/values/curve.ts';
import type { QuantityName } from '../../functions/quantities.ts';
import { frequencies } from '../../functions/values/grid.ts';
import { margin, measured, say } from '../../functions/values/say.ts';
import type { Status } from '../../functions/values/verdict.ts';
import type { Before, Moment } from './comparison.ts';
import { speak } from '../units/show.ts';
import { labelOf } from './labels.ts';
import { showCell } from './show-cell.ts';
import type { ShownCell } from './shown.ts';
import type { OctavoDocument, UnitSystem } from './types.ts';
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
  /** What the cell asks about since then, as an odd size. */
  readonly doubts: readonly string[];
  /** Of a curve that moved: how far at most, and where, as in "by up to 0.35 Ω near 44 Hz". */
  readonly move?: string;
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
    const curve = curveMove(moment.state, after.state);
    const change = curve ? curveChange(curve) : changeOf(moment.state, after.state);
    const doubts = newDoubts(moment.state, after.state);
    if (!sheet || (change === 0 && doubts.length === 0)) continue;
    const flip = flipOf(moment.state, after.state);
    list.push({
      place,
      label: labelOf(sheet, place.cell),
      before: shownAt(moment, document),
      after: shownAt(after, document),
      isCause: isCause(before),
      ...(flip && { flip }),
      change,
      doubts,
      ...(curve && change > 0 && { move: wordsOf(curve, document.system) }),
    });
  }
  return list.sort((a, b) => rank(a) - rank(b) || worsening(b) - worsening(a) || b.change - a.change);
}

const shownAt = ({ state, cell }: Moment, document: OctavoDocument): ShownCell =>
  state ? showCell(state, cell, document) : { kind: 'empty' };

/** A curve or a record that moved says little in a line, so numbers come before it. */
const rank = ({ isCause, flip, doubts, after }: Consequence): number =>
  isCause ? 0 : flip || doubts.length > 0 ? 1 : after.kind === 'curve' || after.kind === 'record' ? 3 : 2;

const grades: Record<Status, number> = { good: 0, caution: 1, fail: 2 };

const worsening = ({ flip }: Consequence): number => (flip ? grades[flip.to] - grades[flip.from] : 0);

/** The flip of a verdict, where both states are verdicts and differ in their judgement. */
function flipOf(before: CellState | undefined, after: CellState | undefined): Consequence['flip'] {
  const from = verdictIn(before)?.status;
  const to = verdictIn(after)?.status;
  return from && to && from !== to ? { from, to } : undefined;
}

function newDoubts(before: CellState | undefined, after: CellState | undefined): readonly string[] {
  const known = new Set(before?.findings.map(({ message }) => message));
  return (after?.findings ?? []).map(({ message }) => message).filter((message) => !known.has(message));
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
  if (a?.kind === 'record' && b?.kind === 'record' && a.record.kind === b.record.kind)
    return same(a.record, b.record) ? 0 : Number.MIN_VALUE;
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

/** How far a curve moved at most at one frequency. */
interface CurveMove {
  readonly quantity: QuantityName;
  readonly by: number;
  readonly at: number;
  /** The largest value of both. */
  readonly size: number;
  /** It has values where it had none, or the other way round. */
  readonly isElsewhere: boolean;
}

/** Nothing where the two are not curves of one quantity. */
function curveMove(before: CellState | undefined, after: CellState | undefined): CurveMove | undefined {
  const [was, is] = [curveIn(before), curveIn(after)];
  if (!was || !is || was.quantity !== is.quantity) return undefined;
  let by = 0;
  let at = 0;
  let size = 0;
  let isElsewhere = false;
  for (let index = 0; index < is.y.length; index++) {
    const a = was.y[index] ?? Number.NaN;
    const b = is.y[index] ?? Number.NaN;
    const move = Math.abs(a - b);
    if (Number.isFinite(move)) {
      if (move > by) {
        by = move;
        at = index;
      }
      size = Math.max(size, Math.abs(a), Math.abs(b));
    } else if (Number.isFinite(a) !== Number.isFinite(b)) isElsewhere = true;
  }
  return { quantity: is.quantity, by, at: frequencies[at] ?? 0, size, isElsewhere };
}

function curveIn(state: CellState | undefined): Curve | undefined {
  const value = state?.value;
  return value?.kind === 'record' && value.record.kind === 'curve' ? value.record : undefined;
}

function curveChange({ quantity, by, size, isElsewhere }: CurveMove): number {
  if (isElsewhere) return 1;
  if (quantity === 'level') return ratioOf(by);
  return size === 0 || by / size < 1e-12 ? 0 : by / size;
}

/** Levels have one decimal. */
const LEAST_LEVEL = 0.1;

function wordsOf({ quantity, by, at }: CurveMove, system: UnitSystem): string {
  if (quantity === 'level' && by < LEAST_LEVEL / 2)
    return speak(say`by less than ${measured(LEAST_LEVEL, quantity)}`, system);
  return speak(say`by up to ${margin(by, quantity)} near ${measured(Number(at.toPrecision(2)), 'frequency')}`, system);
}

function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const names = Object.keys(a);
  if (names.length !== Object.keys(b).length) return false;
  return names.every((name) => same((a as Record<string, unknown>)[name], (b as Record<string, unknown>)[name]));
}
