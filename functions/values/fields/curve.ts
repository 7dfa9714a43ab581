import type { Curve } from '../curve.ts';
import { frequencies } from '../grid.ts';
import { field, type ReadableField } from './field.ts';

export const ofCurve: readonly ReadableField<Curve>[] = [
  field('title', 'Title', 'text', (curve) => curve.title),
  field('quantity', 'What it measures', 'text', (curve) => curve.quantity, 'Quantity'),
  field('minimum', 'Lowest value in its band', 'ratio', (curve) => extreme(curve, Math.min), 'Lowest'),
  field('maximum', 'Highest value in its band', 'ratio', (curve) => extreme(curve, Math.max), 'Highest'),
  field('from', 'Lowest frequency at which it holds', 'frequency', (curve) => curve.from, 'From'),
  field('to', 'Highest frequency at which it holds', 'frequency', (curve) => curve.to, 'To'),
];

function extreme(curve: Curve, pick: (...values: number[]) => number): number | undefined {
  const inside = curve.y.filter((_, index) => within(curve, index));
  return inside.length === 0 ? undefined : pick(...inside);
}

const within = (curve: Curve, index: number): boolean => {
  const f = frequencies[index]!;
  return f >= curve.from * (1 - 1e-9) && f <= curve.to * (1 + 1e-9);
};
