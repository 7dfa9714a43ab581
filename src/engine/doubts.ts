import type { EngineAddress, Spot, Spots } from './spots.ts';

const NONE: readonly string[] = [];

/** What is implausible among the arguments of formulas, kept with their cells. Several calls may stand in one formula: their
 *  doubts add up within a calculation. */
export class Doubts {
  readonly #spots: Spots;
  /** Cells with doubts. */
  readonly #doubtful = new Set<Spot>();
  /** Cells whose doubts changed in this calculation; their values need not have. */
  #changed = new Set<Spot>();
  /** Counts calculations. */
  #run = 0;
  /** The doubts of a formula that stands nowhere. */
  #trial: string[] | undefined;

  constructor(spots: Spots) {
    this.#spots = spots;
  }

  beginCalculation(): void {
    this.#run++;
  }

  hear(at: EngineAddress, messages: readonly string[]): void {
    if (this.#trial) {
      this.#trial.push(...messages);
      return;
    }
    if (messages.length === 0 && this.#doubtful.size === 0) return;
    const spot = this.#spots.at(at);
    if (!spot || (messages.length === 0 && spot.doubts.length === 0)) return;
    const before = spot.doubtedIn === this.#run ? spot.doubts : NONE;
    spot.doubts = [...new Set([...before, ...messages])];
    spot.doubtedIn = this.#run;
    this.#doubtful.add(spot);
    this.#changed.add(spot);
  }

  clear(spot: Spot): void {
    spot.doubts = NONE;
    this.#doubtful.delete(spot);
  }

  /** The cell was calculated: if no call in it got as far as to doubt, what was doubted before is settled. */
  calculated(spot: Spot): void {
    if (spot.doubts.length > 0 && spot.doubtedIn !== this.#run) this.clear(spot);
  }

  takeChanged(): ReadonlySet<Spot> {
    const changed = this.#changed;
    this.#changed = new Set();
    return changed;
  }

  /** Runs something whose doubts belong to no cell; gives both. */
  tryOut<T>(run: () => T): { readonly result: T; readonly doubts: readonly string[] } {
    const doubts: string[] = [];
    this.#trial = doubts;
    try {
      return { result: run(), doubts };
    } finally {
      this.#trial = undefined;
    }
  }
}
