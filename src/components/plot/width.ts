import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** The width of an element, of the host itself or of a part of it, in whole pixels; asks for an update when it changes. */
export class Width implements ReactiveController {
  readonly #host: ReactiveControllerHost & Element;
  readonly #part: string | undefined;
  readonly #observer: ResizeObserver;
  #observed: Element | undefined;
  #frame = 0;
  #pixels = 0;

  /** `part`: a selector of what to measure inside the host. */
  constructor(host: ReactiveControllerHost & Element, part?: string) {
    this.#host = host;
    this.#part = part;
    // Drawing inside the observer's own turn would change what it observes: the browser reports a loop.
    this.#observer = new ResizeObserver(([entry]) => {
      const width = Math.round(entry?.contentRect.width ?? 0);
      cancelAnimationFrame(this.#frame);
      this.#frame = requestAnimationFrame(() => this.#take(width));
    });
    host.addController(this);
  }

  /** 0 until it has been measured. */
  get pixels(): number {
    return this.#pixels;
  }

  hostConnected(): void {
    this.#observe();
  }

  hostUpdated(): void {
    this.#observe();
  }

  hostDisconnected(): void {
    cancelAnimationFrame(this.#frame);
    this.#observer.disconnect();
    this.#observed = undefined;
  }

  #observe(): void {
    const target = this.#part === undefined ? this.#host : this.#host.shadowRoot?.querySelector(this.#part);
    if (!target || target === this.#observed) return;
    this.#observer.disconnect();
    this.#observer.observe(target);
    this.#observed = target;
  }

  #take(width: number): void {
    if (width === this.#pixels) return;
    this.#pixels = width;
    this.#host.requestUpdate();
  }
}
