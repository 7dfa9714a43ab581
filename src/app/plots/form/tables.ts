import type { TableRecord } from '../../../../functions/values/table.ts';

/** The columns that a drawing to scale is read from. */
const PLACES = ['From left', 'From below', 'Along', 'Across'];

export const isDrawing = ({ columns }: TableRecord): boolean =>
  PLACES.every((wanted) => columns.some(({ name }) => name === wanted));

export const tableColumns = ({
  columns,
}: TableRecord): { readonly numbers: readonly string[]; readonly words: readonly string[] } => ({
  numbers: columns.filter(({ quantity }) => quantity !== 'text').map(({ name }) => name),
  words: columns.filter(({ quantity }) => quantity === 'text').map(({ name }) => name),
});
