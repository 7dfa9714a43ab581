import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { basketTable } from '../../../functions/cabinet/basket.ts';
import { cabinetCutList, cabinetLayout, cabinetSheets } from '../../../functions/cabinet/cut-list.ts';
import { materialOf, partsOf, joints } from '../../../functions/cabinet/parts.ts';
import { panelMode } from '../../../functions/cabinet/panel.ts';
import { cabinetDepthFor, cabinetHeightFor, cabinetNetVolume } from '../../../functions/cabinet/volume.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';

const context = { quantity: 'ratio' } as const;
const cabinet = { height: 0.36, width: 0.22, depth: 0.28, thickness: 0.015 };
const sizes = fc.record({
  height: fc.double({ min: 0.15, max: 2, noNaN: true }),
  width: fc.double({ min: 0.12, max: 0.8, noNaN: true }),
  depth: fc.double({ min: 0.12, max: 0.8, noNaN: true }),
  thickness: fc.double({ min: 0.006, max: 0.03, noNaN: true }),
});

describe('volume', () => {
  test('a depth or a height for a net volume gives that volume back', () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0, max: 0.0005, noNaN: true }), (size, displaced) => {
        const volume = cabinetNetVolume.compute({ ...size, displaced }, context) as number;
        expect(cabinetDepthFor.compute({ ...size, volume, displaced }, context)).toBeCloseTo(size.depth, 9);
        expect(cabinetHeightFor.compute({ ...size, volume, displaced }, context)).toBeCloseTo(size.height, 9);
      }),
    );
  });

  test('panels that use up the inside are named with the limit', () => {
    const refused = cabinetNetVolume.compute({ ...cabinet, width: 0.03, displaced: 0 }, context) as Problem;
    expect(refused).toBeInstanceOf(Problem);
    expect(refused.parameter).toBe('width');
  });

  test('more inside than the cabinet holds is refused', () => {
    expect(cabinetNetVolume.compute({ ...cabinet, displaced: 0.02 }, context)).toBeInstanceOf(Problem);
  });
});

describe('layout', () => {
  test('on a grid of 5 mm no place is under two panels, and the panels of the cut list are all there', () => {
    const given = {
      height: 0.9,
      width: 0.25,
      depth: 0.35,
      thickness: 0.018,
      joint: 'front covers' as const,
      braces: 2,
      solid: 0.5,
      cabinets: 4,
      sheetLength: 2.5,
      sheetWidth: 1.25,
      kerf: 0.003,
      grain: 'any' as const,
    };
    const placed = (cabinetLayout.compute(given, context) as TableRecord).rows.map((row) => row.slice(1) as number[]);
    const wanted = (cabinetCutList.compute(given, context) as TableRecord).rows.flatMap(([, count, ...size]) =>
      Array.from({ length: Number(count) }, () => (size.slice(0, 2) as number[]).map((edge) => edge.toFixed(6)).sort()),
    );
    const found = placed.map(([, , , ...size]) =>
      size
        .slice(0, 2)
        .map((edge) => edge.toFixed(6))
        .sort(),
    );
    expect(found.map(String).sort()).toEqual(wanted.map(String).sort());
    const sheets = Math.max(...placed.map(([sheet]) => sheet!));
    for (let sheet = 1; sheet <= sheets; sheet += 1)
      for (let x = 0.0025; x < 2.5; x += 0.005)
        for (let y = 0.0025; y < 1.25; y += 0.005) {
          const over = placed.filter(
            ([on, left, below, along, across]) =>
              on === sheet && x > left! && x < left! + along! && y > below! && y < below! + across!,
          );
          if (over.length > 1) throw new Error(`two panels at ${String(x)}, ${String(y)} on sheet ${String(sheet)}`);
        }
  });
});

describe('cut list', () => {
  test.each(joints.filter((joint) => joint !== 'mitred'))(
    'the panels of butt joints, %s, have the volume of outside less inside',
    (joint) => {
      fc.assert(
        fc.property(sizes, fc.integer({ min: 0, max: 4 }), (size, braces) => {
          const whole = { ...size, joint, braces, solid: 0.4 };
          const parts = partsOf(whole);
          if (parts instanceof Problem) throw new Error('there is room');
          const sawn = parts.reduce(
            (sum, part) => sum + part.count * part.length * part.width * size.thickness * (1 - part.open),
            0,
          );
          expect(sawn).toBeCloseTo(materialOf(whole) as number, 12);
        }),
      );
    },
  );

  test('mitred panels lose half of the square prism at each of the four long edges twice', () => {
    const whole = { ...cabinet, joint: 'mitred', braces: 0, solid: 1 };
    const parts = partsOf(whole);
    if (parts instanceof Problem) throw new Error('there is room');
    const sawn = parts.reduce((sum, part) => sum + part.count * part.length * part.width * cabinet.thickness, 0);
    expect(sawn - (materialOf(whole) as number)).toBeCloseTo(4 * cabinet.thickness ** 2 * cabinet.depth, 12);
  });

  test('lists the panels of a pair by hand', () => {
    const table = cabinetCutList.compute(
      { ...cabinet, joint: 'front covers', braces: 1, solid: 0.5, cabinets: 2 },
      context,
    );
    if (table instanceof Problem) throw new Error('there is room');
    const millimetres = table.rows.map((row) =>
      row.map((value) => (typeof value === 'number' ? Math.round(value * 1e4) / 10 : value)),
    );
    expect(millimetres.map(([part, count, ...size]) => [part, (count as number) / 1000, ...size])).toEqual([
      ['Front and back', 4, 360, 220, 15],
      ['Side', 4, 360, 250, 15],
      ['Top and bottom', 4, 190, 250, 15],
      ['Brace', 2, 190, 250, 15],
    ]);
  });

  test('a panel larger than the sheet is named', () => {
    const refused = cabinetSheets.compute(
      {
        ...cabinet,
        height: 3,
        joint: 'front covers',
        braces: 0,
        solid: 1,
        cabinets: 2,
        sheetLength: 2.5,
        sheetWidth: 1.25,
        kerf: 0.003,
        grain: 'any',
      },
      context,
    );
    expect(refused).toBeInstanceOf(Problem);
  });
});

describe('panels', () => {
  const material = { stiffness: 3e9, density: 740, poisson: 0.3 };
  test('clamped edges are stiffer than supported ones, and both follow the scale laws of thin plates', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1.5, noNaN: true }),
        fc.double({ min: 0.1, max: 1.5, noNaN: true }),
        (length, width) => {
          const mode = (scale: number, thickness: number, edges: 'supported' | 'clamped') =>
            panelMode.compute(
              { ...material, length: length * scale, width: width * scale, thickness, edges },
              context,
            ) as number;
          expect(mode(1, 0.018, 'clamped')).toBeGreaterThan(mode(1, 0.018, 'supported'));
          expect(mode(2, 0.018, 'supported')).toBeCloseTo(mode(1, 0.018, 'supported') / 4, 6);
          expect(mode(1, 0.036, 'clamped')).toBeCloseTo(2 * mode(1, 0.018, 'clamped'), 6);
        },
      ),
    );
  });
});

describe('basket', () => {
  test('shares add to the whole, what is owned costs nothing, spares are whole pieces', () => {
    const table = basketTable.compute(
      {
        items: [['Woofer'], ['Coil'], [null], ['Wire']],
        counts: [[2], [4], [null], [1]],
        prices: [[62], [5], [null], [20]],
        groups: undefined,
        owned: [[null], [null], [null], ['yes']],
        spares: 0.1,
      },
      context,
    );
    if (table instanceof Problem) throw new Error('the basket is whole');
    expect(table.rows.map((row) => [row[0], row[2], row[4]])).toEqual([
      ['Woofer', 3, 186],
      ['Coil', 5, 25],
      ['Wire', 0, 0],
    ]);
    expect(table.rows.reduce((sum, row) => sum + (row[5] as number), 0)).toBeCloseTo(1, 12);
  });

  test('a row with a name and no price says which', () => {
    const refused = basketTable.compute(
      { items: [['Woofer']], counts: [[2]], prices: [['many']], groups: undefined, owned: undefined, spares: 0 },
      context,
    ) as Problem;
    expect(refused.parameter).toBe('prices');
  });
});
