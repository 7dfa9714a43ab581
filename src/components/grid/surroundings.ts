import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Less a part of a pixel. */
const WHOLE = 0.999;

/** How an element lies in the window, as the browser tells of its own accord: to ask would lay the page out. */
export class Surroundings implements ReactiveController {
  /** The element is seen as a whole. */
  isWhole = false;
  readonly #host: Element;
  readonly #size: ResizeObserver;
  readonly #seen = new IntersectionObserver((told) => this.#see(told), { threshold: WHOLE });

  constructor(host: ReactiveControllerHost & Element, resized: () => void) {
    this.#host = host;
    this.#size = new ResizeObserver(resized);
    host.addController(this);
  }

  hostConnected(): void {
    for (const each of [this.#size, this.#seen]) each.observe(this.#host);
  }

  hostDisconnected(): void {
    for (const each of [this.#size, this.#seen]) each.disconnect();
    this.isWhole = false;
  }

  #see(told: readonly IntersectionObserverEntry[]): void {
    this.isWhole = (told.at(-1)?.intersectionRatio ?? 0) >= WHOLE;
  }
}
