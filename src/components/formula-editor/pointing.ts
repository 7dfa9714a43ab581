/** Where an arrow leads over the cells while a reference is pointed at. */
export interface PointStep {
  readonly toward: 'up' | 'down' | 'left' | 'right';
  /** To the edge of data. */
  readonly isEdge: boolean;
  /** The reference becomes a range that keeps its first corner. */
  readonly isExtending: boolean;
  /** Nothing is pointed at yet. */
  readonly isFirst: boolean;
}

const EXPECTS_REFERENCE = /[=+\-*/^&<>(,;:]\s*$/;
const towards: Readonly<Record<string, PointStep['toward']>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
};

/** The reference that is being pointed at in a formula, and whether one can stand where the caret is. */
export class Pointing {
  /** Where the reference stands that the next cell pointed at replaces. */
  word: { readonly from: number; readonly to: number } | undefined;
  /** Something was written at the caret; a caret that was led there is led on by the arrows. */
  #isWritten = false;

  /** A click on a cell means that cell. */
  isOpen(text: string, caret: number): boolean {
    if (!text.startsWith('=')) return false;
    return this.word !== undefined || EXPECTS_REFERENCE.test(text.slice(0, caret));
  }

  /** What an arrow means over the cells; nothing where it is one for the caret. */
  step({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent, text: string, caret: number): PointStep | undefined {
    const toward = towards[key];
    const isLed = altKey || !this.#isWritten || !this.isOpen(text, caret) || /[^\s)]/.test(text.slice(caret));
    return !toward || isLed
      ? undefined
      : { toward, isEdge: ctrlKey || metaKey, isExtending: shiftKey, isFirst: !this.word };
  }

  /** The text was written in: by a reference that now stands there, or otherwise. */
  wrote(word?: { readonly from: number; readonly to: number }): void {
    this.word = word;
    this.#isWritten = true;
  }

  /** The caret was led elsewhere. */
  end(): void {
    this.word = undefined;
    this.#isWritten = false;
  }
}
