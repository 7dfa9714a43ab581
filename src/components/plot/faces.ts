import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { forgetWidths } from './measure-text.ts';

/** Lays its host out again whenever faces of type have arrived: widths measured before that belong to another face. */
export class Faces implements ReactiveController {
  readonly #host: ReactiveControllerHost;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
  }

  hostConnected(): void {
    document.fonts.addEventListener('loadingdone', this.#arrived);
    void document.fonts.ready.then(this.#arrived);
  }

  hostDisconnected(): void {
    document.fonts.removeEventListener('loadingdone', this.#arrived);
  }

  readonly #arrived = (): void => {
    forgetWidths();
    this.#host.requestUpdate();
  };
}
