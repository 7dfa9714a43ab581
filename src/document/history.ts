import { apply } from './apply.ts';
import { isRefusal, type Command, type Refusal } from './command.ts';
import type { OctavoDocument } from './types.ts';

/** One step back, as the command that takes it. */
interface Step {
  readonly command: Command;
  /** Steps of one group that follow one another are undone together. */
  readonly group: string | undefined;
}

const LONGEST = 1000;

/** A document with its past and its future. A value like the document: every method gives the next history. */
export class History {
  readonly document: OctavoDocument;
  readonly #past: readonly Step[];
  readonly #future: readonly Step[];

  constructor(document: OctavoDocument, past: readonly Step[] = [], future: readonly Step[] = []) {
    this.document = document;
    this.#past = past;
    this.#future = future;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  /** After a command. Commands of the same group that follow one another become one step back. */
  do(command: Command, group?: string): History | Refusal {
    const outcome = apply(this.document, command);
    if (isRefusal(outcome)) return outcome;
    if (outcome.document === this.document) return this;
    const last = this.#past.at(-1);
    const joined = group !== undefined && last?.group === group;
    const undo: Command = joined ? { kind: 'all', commands: [outcome.undo, last.command] } : outcome.undo;
    const earlier = joined ? this.#past.slice(0, -1) : this.#past.slice(-LONGEST + 1);
    return new History(outcome.document, [...earlier, { command: undo, group }]);
  }

  /** One step back; the same history at its beginning. */
  undo(): History {
    const step = this.#past.at(-1);
    if (!step) return this;
    const { document, undo } = this.#taken(step);
    return new History(document, this.#past.slice(0, -1), [...this.#future, { command: undo, group: undefined }]);
  }

  /** One step forth again; the same history at its end. */
  redo(): History {
    const step = this.#future.at(-1);
    if (!step) return this;
    const { document, undo } = this.#taken(step);
    return new History(document, [...this.#past, { command: undo, group: undefined }], this.#future.slice(0, -1));
  }

  #taken(step: Step): { document: OctavoDocument; undo: Command } {
    const outcome = apply(this.document, step.command);
    if (isRefusal(outcome)) throw new Error(`A step back was refused: ${outcome.refused}`);
    return outcome;
  }
}
