import { focused } from '../focused.ts';

/** What becomes of what is typed while something is held. */
export interface HeldActs {
  press(event: KeyboardEvent): void;
  type(text: string): void;
}

/** Holds back what would change the page until the page is drawn anyhow: done at once, it would be painted by itself, and what
 *  else there is to paint would wait for that. Whatever is typed meanwhile is meant for the cells, though the focus is not there yet. */
export class Held {
  readonly #acts: HeldActs;
  #act: ((isHere: boolean) => void) | undefined;
  #focus: HTMLElement | undefined;
  #until = new AbortController();

  constructor(acts: HeldActs) {
    this.#acts = acts;
  }

  /** @param act - Is told whether the focus is still where it was. */
  hold(act: (isHere: boolean) => void): void {
    this.release();
    this.#act = act;
    this.#focus = focused();
    this.#until = new AbortController();
    const how = { capture: true, signal: this.#until.signal };
    document.addEventListener('keydown', (event) => this.#pass(event, () => this.#acts.press(event)), how);
    // What comes by no key, as from a telephone.
    document.addEventListener(
      'beforeinput',
      (event) => this.#pass(event, () => this.#acts.type(event.data ?? '')),
      how,
    );
    document.addEventListener('pointerdown', () => this.release(), how);
  }

  /** Does what is held. */
  release(): void {
    const act = this.#act;
    this.#act = undefined;
    this.#until.abort();
    act?.(focused() === this.#focus);
  }

  #pass(event: Event, act: () => void): void {
    const isHere = focused() === this.#focus;
    this.release();
    if (!isHere) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    act();
  }
}
