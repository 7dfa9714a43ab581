import type { Completion } from './completion.ts';

/** Where a move after an edit leads; `leave` is an edit kept because the reader went elsewhere. */
export type Move = 'down' | 'up' | 'left' | 'right' | 'leave';

export interface KeyActs {
  commit(move: Move): void;
  cancel(): void;
  guide(): void;
  readonly step: ((way: 'undo' | 'redo') => void) | undefined;
  /** Opens the list where no letter has opened it. */
  suggest(): void;
  accept(): void;
  /** The next way of the reference at the caret of staying put when copied. */
  pin(): void;
  /** What an arrow does over the cells, where it does. */
  point(event: KeyboardEvent): (() => void) | undefined;
}

const PAGE = 8;

/** What a key does in the line; nothing for those that write or move the caret. The list, where it is open, comes first. */
export function keyAct(event: KeyboardEvent, list: Completion, acts: KeyActs): (() => void) | undefined {
  const isControl = event.ctrlKey || event.metaKey;
  if (isControl || event.altKey) return acts.point(event) ?? withControl(event, acts);
  return inList(event, list, acts) ?? acts.point(event) ?? inLine(event, acts);
}

function inList({ key, shiftKey }: KeyboardEvent, list: Completion, acts: KeyActs): (() => void) | undefined {
  if (!list.isOpen || shiftKey) return undefined;
  const steps: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1, PageDown: PAGE, PageUp: -PAGE };
  const by = steps[key];
  if (by !== undefined) return () => list.move(by);
  if (key === 'Escape') return () => list.close();
  return (key === 'Enter' || key === 'Tab') && list.isTaking ? acts.accept : undefined;
}

function inLine({ key, shiftKey }: KeyboardEvent, acts: KeyActs): (() => void) | undefined {
  switch (key) {
    case 'Enter':
      return () => acts.commit(shiftKey ? 'up' : 'down');
    case 'Tab':
      // With nothing being written it leads on through the page: nobody is held here.
      return acts.step && (() => acts.commit(shiftKey ? 'left' : 'right'));
    case 'Escape':
      return acts.cancel;
    case 'F4':
      return acts.pin;
    case 'F1':
      return acts.guide;
    default:
      return undefined;
  }
}

function withControl({ key, shiftKey, altKey }: KeyboardEvent, acts: KeyActs): (() => void) | undefined {
  if (altKey) return undefined;
  if (key === ' ') return acts.suggest;
  const letter = key.toLowerCase();
  const { step } = acts;
  if (!step || (letter !== 'z' && letter !== 'y')) return undefined;
  return () => step(letter === 'y' || shiftKey ? 'redo' : 'undo');
}
