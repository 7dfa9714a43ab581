import { sameData } from '../plot/same-data.ts';
import { unitOf } from '../plot/unit.ts';
import type { BarsData, DrawingData, PointsData, Shape, ShapesData } from './data.ts';
import { frontOf } from './front.ts';
import { isOnGround } from './shapes.ts';

/** One thing of a drawing in words: its name, and what can be read off it. */
export interface Reading {
  readonly name: string;
  readonly values: readonly (readonly [label: string, text: string])[];
}

/** The readings of a drawing, in the order of its places; what was another at the baseline is told, too. */
export function readingsOf(data: DrawingData): readonly Reading[] {
  const before = ghostOf(data);
  if (!before) return plainReadings(data);
  const was = plainReadings(before);
  return plainReadings(data).map(({ name, values }, index) => ({
    name,
    values: values.map(([label, text]) => {
      const old = was[index]?.values.find(([each]) => each === label)?.[1];
      return [label, old === undefined || old === text ? text : `${text}, was ${old}`] as const;
    }),
  }));
}

function plainReadings(data: DrawingData): readonly Reading[] {
  switch (data.form) {
    case 'bars':
      return barReadings(data);
    case 'points':
    case 'lines':
      return pointReadings(data);
    case 'shapes':
      return data.grounds.flatMap((shapes, index) => shapes.map((shape) => shapeReading(shape, data, index)));
  }
}

/** The drawing as it was at the baseline. */
function ghostOf(data: DrawingData): DrawingData | undefined {
  if (!data.ghost) return undefined;
  const { ghost: _, ...now } = data;
  switch (now.form) {
    case 'bars':
      return { ...now, bars: data.ghost as BarsData['bars'] };
    case 'points':
    case 'lines':
      return { ...now, groups: data.ghost as PointsData['groups'] };
    case 'shapes':
      return { ...now, grounds: data.ghost as ShapesData['grounds'] };
  }
}

/** How a drawing stands to its baseline. */
export function drawingComparison(data: DrawingData): 'none' | 'same' | 'changed' {
  const before = ghostOf(data);
  if (!before) return 'none';
  return sameData(plainReadings(before), plainReadings(data)) ? 'same' : 'changed';
}

function barReadings({ bars, axis, system }: BarsData): Reading[] {
  const unit = unitOf(axis.quantity, axis.symbol, system);
  return bars.map(({ name, parts }) => {
    const values = parts.map(({ label, value }) => [label, unit.exactly(value)] as const);
    const total = parts.reduce((sum, { value }) => sum + value, 0);
    return { name, values: parts.length > 1 ? [...values, ['together', unit.exactly(total)] as const] : values };
  });
}

function pointReadings(data: PointsData): Reading[] {
  const { groups, across, up, form, best } = data;
  const [x, y] = [across, up].map(({ quantity, symbol }) => unitOf(quantity, symbol, data.system));
  const front = best
    ? frontOf(
        groups.flatMap(({ points }) => points),
        best,
      )
    : [];
  return groups.flatMap(({ label, points }) =>
    points.map((point) => {
      const at = x?.exactly(point.x) ?? '';
      const value = y?.exactly(point.y) ?? '';
      const values: [string, string][] =
        form === 'lines'
          ? [[label, value]]
          : [
              ['across', at],
              ['upwards', value],
            ];
      if (front.includes(point)) values.push(['', 'no other beats it in both']);
      return {
        name: form === 'lines' ? [point.name, point.name === at ? '' : at].filter(Boolean).join(', ') : point.name,
        values,
      };
    }),
  );
}

function shapeReading(shape: Shape, data: ShapesData, index: number): Reading {
  const unit = unitOf(data.axis.quantity, data.axis.symbol, data.system);
  const { outline, left, below, width, height } = shape;
  const isRound = outline === 'circle';
  return {
    name: shape.name,
    values: [
      [
        isRound ? 'diameter' : 'size',
        isRound ? unit.exactly(width) : `${unit.exactly(width)} × ${unit.exactly(height)}`,
      ],
      [isRound ? 'middle from left' : 'from left', unit.exactly(left)],
      [isRound ? 'middle from below' : 'from below', unit.exactly(below)],
      ...(data.grounds.length > 1 ? [['on', `${index + 1} of ${data.grounds.length}`] as const] : []),
      ...(isOnGround(shape, data) ? [] : [['', 'reaches over the edge'] as const]),
    ],
  };
}

/** A reading in one line, as it is spoken. */
export const spoken = ({ name, values }: Reading): string =>
  [name, values.map(([label, text]) => `${label} ${text}`.trim()).join(', ')].filter(Boolean).join(': ');

/** What a drawing shows, in sentences. */
export function drawingFinding(data: DrawingData): string {
  const readings = readingsOf(data);
  const limits = data.form === 'shapes' ? [] : data.limits;
  const axis = data.form === 'bars' ? data.axis : data.form === 'shapes' ? undefined : data.up;
  const told = limits.map(({ label, value, forbidden }) => {
    const text = axis ? unitOf(axis.quantity, axis.symbol, data.system).exactly(value) : '';
    return `${label}: not ${forbidden} ${text}.`;
  });
  if (data.form === 'points' && data.best) {
    const best = readings.filter(({ values }) => values.some(([label]) => label === ''));
    return [`${data.title}.`, ...told, `${readings.length} points. Not beaten: ${best.map(spoken).join('; ')}.`].join(
      ' ',
    );
  }
  return [`${data.title}.`, ...told, `${readings.map(spoken).join('; ')}.`].join(' ');
}
