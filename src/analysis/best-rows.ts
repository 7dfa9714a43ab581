/** The best few of many, kept in a heap whose first is the worst of them. Equal scores keep what came first. */
export class BestRows {
  readonly #most: number;
  readonly #scores: number[] = [];
  readonly #ids: number[] = [];

  constructor(most: number) {
    this.#most = most;
  }

  offer(score: number, id: number): void {
    if (Number.isNaN(score)) return;
    if (this.#ids.length < this.#most) {
      this.#scores.push(score);
      this.#ids.push(id);
      this.#up(this.#ids.length - 1);
    } else if (this.#most > 0 && score > this.#scoreAt(0)) {
      this.#scores[0] = score;
      this.#ids[0] = id;
      this.#down();
    }
  }

  /** Best first. */
  sorted(): { readonly id: number; readonly score: number }[] {
    return this.#ids
      .map((id, index) => ({ id, score: this.#scoreAt(index) }))
      .sort((a, b) => b.score - a.score || a.id - b.id);
  }

  #scoreAt(index: number): number {
    return this.#scores[index] ?? Number.NaN;
  }

  #idAt(index: number): number {
    return this.#ids[index] ?? -1;
  }

  #isWorse(a: number, b: number): boolean {
    const difference = this.#scoreAt(a) - this.#scoreAt(b);
    return difference < 0 || (difference === 0 && this.#idAt(a) > this.#idAt(b));
  }

  #swap(a: number, b: number): void {
    [this.#scores[a], this.#scores[b]] = [this.#scoreAt(b), this.#scoreAt(a)];
    [this.#ids[a], this.#ids[b]] = [this.#idAt(b), this.#idAt(a)];
  }

  #up(start: number): void {
    for (let at = start; at > 0;) {
      const parent = (at - 1) >> 1;
      if (!this.#isWorse(at, parent)) return;
      this.#swap(at, parent);
      at = parent;
    }
  }

  #down(): void {
    for (let at = 0; ;) {
      let worst = at;
      for (const child of [2 * at + 1, 2 * at + 2])
        if (child < this.#ids.length && this.#isWorse(child, worst)) worst = child;
      if (worst === at) return;
      this.#swap(at, worst);
      at = worst;
    }
  }
}

type Figures = readonly [number, number, number, number];

interface Point {
  readonly figures: Figures;
  readonly id: number;
}

/** The rows that no other is at least as good as in every respect, and better in one: more of each is better. */
export class Front {
  #points: Point[] = [];

  offer(id: number, a: number, b: number, c: number, d: number): void {
    let isEqual = false;
    let before: Point | undefined;
    for (const [index, point] of this.#points.entries()) {
      const [e, f, g, h] = point.figures;
      if (e >= a && f >= b && g >= c && h >= d) {
        isEqual = e === a && f === b && g === c && h === d;
        if (isEqual) break;
        // What rules one out often rules out the next too.
        if (before) {
          this.#points[index] = before;
          this.#points[index - 1] = point;
        }
        return;
      }
      before = point;
    }
    const isKept = ({ figures: [e, f, g, h] }: Point): boolean => isEqual || e > a || f > b || g > c || h > d;
    if (!this.#points.every(isKept)) this.#points = this.#points.filter(isKept);
    this.#points.push({ figures: [a, b, c, d], id });
  }

  get ids(): number[] {
    return this.#points.map(({ id }) => id);
  }
}
