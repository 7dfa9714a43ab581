import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { usual } from '../usual.ts';
import { nest, type Piece, type Placed, type Sheet } from './nesting.ts';
import { depth, height, thickness, width } from './parameters.ts';
import { joints, partsOf, type Part } from './parts.ts';

export const cabinetParameters = {
  height,
  width,
  depth,
  thickness,
  joint: {
    choice: joints,
    default: 'front covers',
    summary: 'which panels run to the outside: front and back, the sides, or all by mitres',
  },
  braces: { quantity: 'ratio', whole: true, min: 0, max: 50, default: 0, summary: 'level braces in each cabinet' },
  solid: { quantity: 'ratio', min: 0, max: 1, default: 0.5, summary: 'share of a brace that is left standing' },
} as const;

const cabinets = {
  quantity: 'ratio',
  whole: true,
  min: 1,
  max: 1000,
  default: 2,
  summary: 'how many cabinets',
} as const;

const saw = { source: 'own', at: 'geometry of the joints' } as const;

export const cabinetCutList = define({
  name: 'CABINET.CUT_LIST',
  summary: 'The panels of rectangular cabinets: how many of each, and how large.',
  parameters: { ...cabinetParameters, cabinets },
  returns: { record: 'table', summary: 'part, count, length, width' },
  source: saw,
  example: { formula: '=CABINET.CUT_LIST("360 mm", "220 mm", "280 mm", "15 mm")', gives: { rows: 3 } },
  remarks:
    'Sizes are finished ones: add what your edges, rebates or veneer need. Fibreboard dust and the vapours of glue and finish harm the lungs: extraction, a mask and fresh air, and the label of each product.',
  compute(given): TableRecord | Problem {
    const parts = partsOf(given);
    if (parts instanceof Problem) return parts;
    return {
      kind: 'table',
      title: 'Cut list',
      columns: [
        { name: 'Part', quantity: 'text' },
        { name: 'Count', quantity: 'ratio' },
        { name: 'Length', quantity: 'length' },
        { name: 'Width', quantity: 'length' },
        { name: 'Thickness', quantity: 'length' },
      ],
      rows: parts.map((part) => [part.name, part.count * given.cabinets, part.length, part.width, given.thickness]),
    };
  },
});

const sheetParameters = {
  ...cabinetParameters,
  cabinets,
  sheetLength: { ...usual.length, default: 2.5, summary: 'length of a sheet as sold' },
  sheetWidth: { ...usual.length, default: 1.25, summary: 'width of a sheet' },
  kerf: {
    quantity: 'length',
    min: 0,
    max: 0.02,
    default: 0.003,
    typical: [0.0015, 0.005],
    summary: 'what the blade takes',
  },
  grain: {
    choice: ['any', 'along'],
    default: 'any',
    summary: 'whether panels may be turned, or their length must follow that of the sheet',
  },
} as const;

interface Order {
  readonly cabinets: number;
  readonly sheetLength: number;
  readonly sheetWidth: number;
  readonly kerf: number;
  readonly grain: string;
}

/** Every panel of every cabinet on sheets, or the panel that is larger than one. */
function layOut(parts: readonly Part[], order: Order): readonly Placed[] | Problem {
  const sheet: Sheet = { length: order.sheetLength, width: order.sheetWidth, kerf: order.kerf };
  const pieces: Piece[] = parts.flatMap(({ name, count, length, width: breadth }) =>
    Array.from({ length: Math.round(count * order.cabinets) }, () => ({
      name,
      length,
      width: breadth,
      turns: order.grain === 'any',
    })),
  );
  if (pieces.length > 2000)
    return new Problem(
      say`${String(pieces.length)} panels are more than the 2000 that can be laid out at once. Ask for fewer cabinets.`,
      'cabinets',
    );
  const placed = nest(pieces, sheet);
  if (placed !== undefined) return placed;
  const tooLarge = pieces.find((piece) => nest([piece], sheet) === undefined);
  return new Problem(
    say`The panel ${tooLarge?.name ?? ''}, ${measured(tooLarge?.length ?? 0, 'length')} by ${measured(tooLarge?.width ?? 0, 'length')}, is larger than a sheet of ${measured(sheet.length, 'length')} by ${measured(sheet.width, 'length')}. Take larger sheets, or let panels be turned.`,
    'sheetLength',
  );
}

const nesting = {
  source: 'own',
  at: 'best-fit nesting with cuts from edge to edge; tested for overlap, size and sawability',
} as const;

export const cabinetSheets = define({
  name: 'CABINET.SHEETS',
  summary: 'How many sheets the panels of the cabinets need when they are laid out for the saw.',
  parameters: sheetParameters,
  returns: { quantity: 'ratio', summary: 'number of sheets' },
  source: nesting,
  example: { formula: '=CABINET.SHEETS("900 mm", "250 mm", "350 mm", "18 mm")', gives: 1 },
  remarks: 'A good layout, not proven to be the best. Sheets have rough edges: allow for trimming them.',
  compute(given) {
    const parts = partsOf(given);
    if (parts instanceof Problem) return parts;
    const placed = layOut(parts, given);
    return placed instanceof Problem ? placed : Math.max(0, ...placed.map(({ sheet }) => sheet));
  },
});

export const cabinetLayout = define({
  name: 'CABINET.LAYOUT',
  summary: 'Where each panel lies on its sheet, so that every cut runs from edge to edge.',
  parameters: sheetParameters,
  returns: { record: 'table', summary: 'part, sheet, corner and size along the sheet' },
  source: nesting,
  example: { formula: '=CABINET.LAYOUT("900 mm", "250 mm", "350 mm", "18 mm")', gives: { rows: 12 } },
  compute(given): TableRecord | Problem {
    const parts = partsOf(given);
    if (parts instanceof Problem) return parts;
    const placed = layOut(parts, given);
    if (placed instanceof Problem) return placed;
    return {
      kind: 'table',
      title: 'Layout on sheets',
      columns: [
        { name: 'Part', quantity: 'text' },
        { name: 'Sheet', quantity: 'ratio' },
        { name: 'From left', quantity: 'length' },
        { name: 'From below', quantity: 'length' },
        { name: 'Along', quantity: 'length' },
        { name: 'Across', quantity: 'length' },
      ],
      rows: [...placed]
        .sort((a, b) => a.sheet - b.sheet || a.y - b.y || a.x - b.x)
        .map(({ piece, sheet, x, y, length, width: across }) => [piece.name, sheet, x, y, length, across]),
    };
  },
});
