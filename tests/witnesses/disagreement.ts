import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

/** Largest differences over all frequencies between us and a simulated circuit. */
export interface Apart {
  readonly decibels: number;
  readonly degrees: number;
}

const folder = resolve(import.meta.dirname, '../../node_modules/.cache/disagreements');
const fileOf = (name: string): string => join(folder, `${name.replaceAll(/[^a-z0-9]+/gi, '-')}.json`);

/** Collects how far a test finds us from the simulator, and keeps the worst for the reference page. */
export class Disagreement {
  readonly #name: string;
  #decibels = 0;
  #degrees = 0;

  constructor(name: string) {
    this.#name = name;
  }

  note(decibels: number, degrees: number): void {
    this.#decibels = Math.max(this.#decibels, Math.abs(decibels));
    this.#degrees = Math.max(this.#degrees, Math.abs(degrees));
  }

  keep(): void {
    mkdirSync(folder, { recursive: true });
    writeFileSync(fileOf(this.#name), JSON.stringify({ decibels: this.#decibels, degrees: this.#degrees }));
  }
}

/** What the tests last found; `undefined` where they have not run. */
export const apartOf = (name: string): Apart | undefined =>
  existsSync(fileOf(name)) ? (JSON.parse(readFileSync(fileOf(name), 'utf8')) as Apart) : undefined;
