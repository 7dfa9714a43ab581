import type { DriverEntry } from '../../document/shelf/entry.ts';

/** A driver as a datasheet in text, a line a row, which {@link readDatasheet} reads again. */
export const writeDatasheet = ({ name, rows }: Pick<DriverEntry, 'name' | 'rows'>): string =>
  [`Name: ${name}`, ...rows.map(({ label, text }) => `${label}: ${text}`)].join('\n');
