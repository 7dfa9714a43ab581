import type { Reference } from '../formula/types.ts';
import type { Entry } from './cell-index.ts';
import { withoutMarks } from './problem-text.ts';

/** What the engine is told of a cell. A leading apostrophe keeps a text a text. */
export function rawOf(entry: Entry | undefined): string | number | boolean | null {
  switch (entry?.content.kind) {
    case undefined:
    case 'empty':
      return null;
    case 'number':
    case 'quantity':
      return entry.content.value;
    case 'truth':
      return entry.content.truth;
    case 'text':
      return `'${withoutMarks(entry.content.text)}`;
    case 'formula': {
      const error = entry.compiled?.findings.find(({ level }) => level === 'error');
      return error ? unsound(error.message, entry.compiled?.references) : withoutMarks(entry.compiled?.text ?? '=');
    }
  }
}

/** A formula that gives nothing but a problem. It keeps what it refers to, or a loop would be told or not by chance. */
export const unsound = (message: string, references: readonly Reference[] = []): string =>
  withoutMarks(
    `=UNSOUND(${[`"${message.replaceAll('"', '""')}"`, ...references.map(({ sheet, cells }) => `'${sheet}'!${cells}`)].join(',')})`,
  );
