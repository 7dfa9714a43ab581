import { isRefusal, type Applied, type Command, type Refusal } from './command.ts';
import { cellChanges } from './commands/cell-edits.ts';
import { putCells } from './commands/put-cells.ts';
import { moveCells } from './commands/move-cells.ts';
import { deleteLines, insertLines } from './commands/lines.ts';
import { defineName, deleteName, renameName } from './commands/names.ts';
import { deletePlot, putPlot } from './commands/plots.ts';
import { addSheet, deleteSheet, describeColumn, moveSheet, renameSheet, summariseSheet } from './commands/sheets.ts';
import { duplicateSheet } from './commands/duplicate.ts';
import type { OctavoDocument } from './types.ts';

/** Does a command. Nothing is mutated: the document given stays as it was, and shares with the new one what is equal. */
export function apply(document: OctavoDocument, command: Command): Applied | Refusal {
  switch (command.kind) {
    case 'put-cells':
      return putCells(document, command.sheet, command.cells, command.extent);
    case 'write':
    case 'describe':
    case 'clear':
    case 'paste-text':
    case 'paste':
    case 'fill': {
      const changes = cellChanges(document, command);
      if (isRefusal(changes)) return changes;
      return putCells(document, 'to' in command ? command.to.sheet : command.sheet, changes);
    }
    case 'all':
      return applyAll(document, command.commands);
    default: {
      const outcome = reshaped(document, command);
      return isRefusal(outcome) ? outcome : { document: outcome, undo: { kind: 'restore', document } };
    }
  }
}

/** Why a command would be refused; nothing where it can be done. */
export function refusalOf(document: OctavoDocument, command: Command): string | undefined {
  const outcome = apply(document, command);
  return isRefusal(outcome) ? outcome.refused : undefined;
}

function applyAll(document: OctavoDocument, commands: readonly Command[]): Applied | Refusal {
  let current = document;
  const undos: Command[] = [];
  for (const command of commands) {
    const outcome = apply(current, command);
    if (isRefusal(outcome)) return outcome;
    current = outcome.document;
    undos.unshift(outcome.undo);
  }
  return { document: current, undo: { kind: 'all', commands: undos } };
}

type CellsOnly = 'put-cells' | 'write' | 'describe' | 'clear' | 'paste-text' | 'paste' | 'fill' | 'all';

/** The commands that reach further than the cells of one sheet; taken back by putting the earlier document back. */
function reshaped(document: OctavoDocument, command: Exclude<Command, { kind: CellsOnly }>): OctavoDocument | Refusal {
  switch (command.kind) {
    case 'move':
      return moveCells(document, command.from, command.to);
    case 'insert':
      return insertLines(document, command);
    case 'delete':
      return deleteLines(document, command);
    case 'column':
      return describeColumn(document, command.sheet, command.column, command.attributes);
    case 'add-sheet':
      return addSheet(document, command.sheet, command.at);
    case 'rename-sheet':
      return renameSheet(document, command.sheet, command.name);
    case 'summarise-sheet':
      return summariseSheet(document, command.sheet, command.summary);
    case 'move-sheet':
      return moveSheet(document, command.sheet, command.to);
    case 'delete-sheet':
      return deleteSheet(document, command.sheet);
    case 'duplicate-sheet':
      return duplicateSheet(document, command.sheet, command.id, command.name);
    case 'define-name':
      return defineName(document, command.sheet, command.name, command.cells);
    case 'rename-name':
      return renameName(document, command.sheet, command.from, command.to);
    case 'delete-name':
      return deleteName(document, command.sheet, command.name);
    case 'put-plot':
      return putPlot(document, command.sheet, command.plot, command.at);
    case 'delete-plot':
      return deletePlot(document, command.sheet, command.plot);
    case 'title':
      return command.title.trim() === ''
        ? { refused: 'A document needs a title of at least one character.' }
        : { ...document, title: command.title.trim() };
    case 'system':
      return { ...document, system: command.system };
    case 'pin':
      return { ...document, baseline: command.baseline };
    case 'unpin': {
      const { baseline: _, ...rest } = document;
      return rest;
    }
    case 'restore':
      return command.document;
  }
}
