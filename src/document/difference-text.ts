import type { Curve } from '../../functions/values/curve.ts';
import type { Consequence } from './consequences.ts';
import type { Differences } from './sheet-differences.ts';
import { shownText } from './show-cell.ts';
import type { ShownCell } from './shown.ts';

/** What the two that are compared are called. */
export interface Sides {
  readonly first: string;
  readonly second: string;
}

/** The groups in the order in which they are shown, with their headings; empty ones are left out. */
export function groupsOf(
  { flips, inputs, results, alone }: Differences,
  { first, second }: Sides,
): readonly { readonly heading: string; readonly rows: readonly Consequence[] }[] {
  return [
    { heading: 'Verdicts that turn', rows: flips },
    { heading: 'Inputs that differ', rows: inputs },
    { heading: 'Results that differ', rows: results },
    { heading: `Only in ${first}`, rows: alone.filter(({ after }) => after.kind === 'empty') },
    { heading: `Only in ${second}`, rows: alone.filter(({ after }) => after.kind !== 'empty') },
  ].filter(({ rows }) => rows.length > 0);
}

/** A cell in a line: a record by its name and figures. */
export const sideText = (shown: ShownCell): string => shownText(shown) || '–';

/** How far a number moved, where a reader asks how far: `+12 %`, `−0.8 dB`. Nothing for what is no number, or from nought. */
export function moveText({ before, after, change }: Consequence): string {
  if (before.kind === 'curve' && after.kind === 'curve') return `up to ${curveMove(after.curve, change)}`;
  if (before.kind !== 'number' || after.kind !== 'number' || before.unit !== after.unit) return '';
  const [a, b] = [before, after].map(({ number }) => Number(number.replaceAll('\u2009', '').replace('\u2212', '-')));
  if (a === undefined || b === undefined || !Number.isFinite(a) || !Number.isFinite(b)) return '';
  const sign = b < a ? '\u2212' : '+';
  if (after.unit === 'dB') return `${sign}${Math.abs(b - a).toFixed(1)} dB`;
  if (a === 0 || Math.sign(a) !== Math.sign(b)) return '';
  const percent = Math.abs(b / a - 1) * 100;
  return change === 0 ? '' : `${sign}${percent < 10 ? percent.toFixed(1) : percent.toFixed(0)} %`;
}

const curveMove = ({ quantity }: Curve, change: number): string =>
  quantity === 'level' ? `${(20 * Math.log10(1 + change)).toFixed(1)} dB` : `${(change * 100).toFixed(0)} %`;

/** The differences as plain text for a forum. */
export function differenceText(differences: Differences, sides: Sides): string {
  const groups = groupsOf(differences, sides);
  const head = `${sides.first} → ${sides.second}`;
  if (groups.length === 0) return `${head}\n\nNothing differs.\n`;
  const parts = groups.map(({ heading, rows }) => [heading.toUpperCase(), ...rows.map(rowText)].join('\n'));
  return `${[head, ...parts].join('\n\n')}\n`;
}

function rowText(row: Consequence): string {
  const { label, before, after, flip } = row;
  if (before.kind === 'empty') return `- ${label}: ${sideText(after)}`;
  if (after.kind === 'empty') return `- ${label}: ${sideText(before)}`;
  const move = moveText(row);
  const words = flip ? `${flip.from.toUpperCase()} → ${flip.to.toUpperCase()}. ` : '';
  if (after.kind === 'curve' && before.kind === 'curve') return `- ${label}: the curve moves ${move}`;
  return `- ${label}: ${words}${sideText(before)} → ${sideText(after)}${move === '' ? '' : ` (${move})`}`;
}
