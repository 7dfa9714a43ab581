/** Which cells are filled by a formula whose column of results runs down into them. */
export class Spills {
  readonly #owners = new Map<string, string>();
  readonly #members = new Map<string, Set<string>>();

  /** The formula to which a cell belongs. */
  ownerOf(key: string): string | undefined {
    return this.#owners.get(key);
  }

  /** The cells below a formula that belong to it. */
  membersOf(owner: string): Iterable<string> {
    return this.#members.get(owner) ?? [];
  }

  /** Gives a cell to a formula, or to none. Gives whether that is new. */
  give(key: string, owner: string | undefined): boolean {
    const before = this.#owners.get(key);
    if (before === owner) return false;
    if (before !== undefined) this.#members.get(before)?.delete(key);
    if (owner === undefined) this.#owners.delete(key);
    else {
      this.#owners.set(key, owner);
      this.#members.set(owner, (this.#members.get(owner) ?? new Set()).add(key));
    }
    return true;
  }
}
