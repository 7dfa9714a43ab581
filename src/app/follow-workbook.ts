import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Workbook } from '../document/workbook.ts';

type Host = ReactiveControllerHost & { readonly workbook: Workbook | undefined };

/** Draws a page again when the numbers of its workbook change: it may have been opened before the engine had answered. */
export class FollowWorkbook implements ReactiveController {
  readonly #host: Host;
  #followed: Workbook | undefined;

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostUpdated(): void {
    if (this.#followed === this.#host.workbook) return;
    this.hostDisconnected();
    this.#followed = this.#host.workbook;
    this.#followed?.addEventListener('change', this.#changed);
  }

  hostDisconnected(): void {
    this.#followed?.removeEventListener('change', this.#changed);
    this.#followed = undefined;
  }

  readonly #changed = (): void => this.#host.requestUpdate();
}
