/** Reads a JSON value of unknown shape. What does not fit is noted with its path, what was found and what is wanted, and
 *  a stand-in is given, so that reading goes on and every fault is found. The result counts only where none was noted. */
export class Reader {
  readonly value: unknown;
  readonly path: string;
  readonly #faults: string[];

  constructor(value: unknown, path = '', faults: string[] = []) {
    this.value = value;
    this.path = path;
    this.#faults = faults;
  }

  get faults(): readonly string[] {
    return this.#faults;
  }

  get isMissing(): boolean {
    return this.value === undefined;
  }

  fault(message: string): void {
    this.#faults.push(`${this.path || 'the file'}: ${message}`);
  }

  text(): string {
    return typeof this.value === 'string' ? this.value : this.#unfit('a text', '');
  }

  /** A time that can be told. */
  time(): string {
    const { value } = this;
    return typeof value === 'string' && Date.parse(value)
      ? value
      : this.#unfit('a time, as "2026-05-30T14:00:00Z",', '');
  }

  whole(least: number, most: number): number {
    const { value } = this;
    if (typeof value === 'number' && Number.isInteger(value) && value >= least && value <= most) return value;
    return this.#unfit(`a whole number from ${least} to ${most}`, least);
  }

  oneOf<Word extends string>(words: readonly [Word, ...Word[]]): Word {
    const known = words.find((word) => word === this.value);
    return known ?? this.#unfit(`one of ${words.map((word) => `"${word}"`).join(', ')}`, words[0]);
  }

  /** The elements of a list. */
  list(): Reader[] {
    if (!Array.isArray(this.value)) return this.#unfit('a list', []);
    return this.value.map((element, index) => new Reader(element, `${this.path}[${index}]`, this.#faults));
  }

  /** The entries of an object whose keys are data. */
  entries(): [key: string, value: Reader][] {
    if (!this.#isObject()) return this.#unfit('an object', []);
    return Object.entries(this.value as object).map(([key, value]) => [key, this.#within(key, value)]);
  }

  /** The fields of an object of known shape; a field that is not known is a fault. */
  fields<Name extends string>(names: readonly Name[]): Record<Name, Reader> {
    const held: Readonly<Record<string, unknown>> = this.#isObject()
      ? (this.value as Record<string, unknown>)
      : this.#unfit('an object', {});
    for (const name of Object.keys(held)) {
      if (!names.some((known) => known === name)) {
        this.#within(name, undefined).fault(`is not known; known are ${names.join(', ')}.`);
      }
    }
    const pairs = names.map((name) => [name, this.#within(name, Object.hasOwn(held, name) ? held[name] : undefined)]);
    return Object.fromEntries(pairs) as Record<Name, Reader>;
  }

  #within(key: string, value: unknown): Reader {
    const step = /^\w+$/.test(key) ? (this.path === '' ? key : `.${key}`) : `[${JSON.stringify(key)}]`;
    return new Reader(value, this.path + step, this.#faults);
  }

  #isObject(): boolean {
    return typeof this.value === 'object' && this.value !== null && !Array.isArray(this.value);
  }

  #unfit<T>(wanted: string, standIn: T): T {
    this.fault(`${wanted} is wanted, but ${found(this.value)}.`);
    return standIn;
  }
}

function found(value: unknown): string {
  if (value === undefined) return 'nothing was found';
  if (value === null) return 'null was found';
  if (Array.isArray(value)) return 'a list was found';
  if (typeof value === 'object') return 'an object was found';
  const shown = JSON.stringify(value);
  const kind = typeof value === 'string' ? 'the text' : typeof value === 'number' ? 'the number' : 'the truth';
  return `${kind} ${shown.length > 40 ? `${shown.slice(0, 40)}…` : shown} was found`;
}
