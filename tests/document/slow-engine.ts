import { say, measured } from '../../functions/values/say.ts';
import type { CellState, CellValue, Changes, SheetContent, SheetEngine, Writing } from '../../src/engine/types.ts';

/** An engine small enough to see through: sums of products of cells, and `=CHECK(cell,limit)`. It answers only when told
 *  to, so that a test decides what lies between question and answer. */
export class SlowEngine implements SheetEngine {
  /** What was asked, in order: `load`, or the texts written. */
  readonly asked: string[] = [];
  #sheets = new Map<string, { name: string; cells: Map<string, string>; names: ReadonlyMap<string, string> }>();
  #known = new Map<string, CellState>();
  #held: (() => void)[] = [];
  #isHolding = false;
  #failures = 0;

  /** From now on, answers wait for `release`. */
  hold(): void {
    this.#isHolding = true;
  }

  /** Gives the next answer that waits, and lets what follows from it happen. */
  async releaseOne(): Promise<void> {
    await settled();
    this.#held.shift()?.();
    await settled();
  }

  async release(): Promise<void> {
    this.#isHolding = false;
    await settled();
    for (const answer of this.#held.splice(0)) answer();
    await settled();
  }

  failNext(): void {
    this.#failures++;
  }

  async load(sheets: readonly SheetContent[]): Promise<Changes> {
    this.asked.push('load');
    await this.#turn();
    this.#sheets = new Map(sheets.map(({ id, name, cells, names }) => [id, { name, cells: new Map(cells), names }]));
    return this.#changes();
  }

  async write(writings: readonly Writing[]): Promise<Changes> {
    this.asked.push(writings.map(({ cell, text }) => `${cell}: ${text}`).join(', '));
    await this.#turn();
    for (const { sheet, cell, text } of writings) {
      if (text === '') this.#sheets.get(sheet)?.cells.delete(cell);
      else this.#sheets.get(sheet)?.cells.set(cell, text);
    }
    return this.#changes();
  }

  async evaluate(sheet: string, text: string): Promise<CellState> {
    await this.#turn();
    return { sheet, cell: '', ...this.#evaluated(sheet, text, 0) };
  }

  async probe(): Promise<[]> {
    return [];
  }

  async functions(): Promise<[]> {
    return [];
  }

  async words(): ReturnType<SheetEngine['words']> {
    return new Map();
  }

  async dependents(): Promise<[]> {
    return [];
  }

  dispose(): void {
    this.#sheets.clear();
  }

  async #turn(): Promise<void> {
    if (this.#isHolding) await new Promise<void>((answer) => this.#held.push(answer));
    if (this.#failures > 0) {
      this.#failures--;
      throw new Error('The engine stumbled.');
    }
  }

  #changes(): Changes {
    const next = new Map<string, CellState>();
    for (const [sheet, { cells }] of this.#sheets) {
      for (const [cell, text] of cells)
        next.set(`${sheet}!${cell}`, { sheet, cell, ...this.#evaluated(sheet, text, 0) });
    }
    const changed = [...next].filter(([key, state]) => JSON.stringify(this.#known.get(key)) !== JSON.stringify(state));
    const gone = [...this.#known].filter(([key]) => !next.has(key));
    this.#known = next;
    return {
      cells: [...changed.map(([, state]) => state), ...gone.map(([, { sheet, cell }]) => ({ sheet, cell, ...EMPTY }))],
      timing: { compile: 0, evaluate: 0 },
    };
  }

  #evaluated(sheet: string, text: string, depth: number): Omit<CellState, 'sheet' | 'cell'> {
    const check = /^=CHECK\((.+),(.+)\)$/.exec(text);
    if (check) return { ...EMPTY, value: this.#checked(sheet, check[1] ?? '', check[2] ?? '', depth) };
    const [, number, unit] = /^([\d.]+)(?: (\S+))?$/.exec(text) ?? [];
    if (!text.startsWith('=') && number === undefined) return { ...EMPTY, value: { kind: 'text', text } };
    const value = number === undefined ? this.#sum(sheet, text.slice(1), depth) : Number(number);
    const type = unit === 'Hz' ? ({ kind: 'number', quantity: 'frequency', dimension: { s: -1 } } as const) : PLAIN;
    return { value: { kind: 'number', value }, type, findings: [], ...(unit !== undefined && { unit }) };
  }

  #checked(sheet: string, left: string, limit: string, depth: number): CellValue {
    const value = this.#sum(sheet, left, depth);
    const isGood = value <= this.#sum(sheet, limit, depth);
    const reason = say`The value is ${measured(value, 'ratio')}.`;
    const record = {
      kind: 'verdict',
      status: isGood ? 'good' : 'fail',
      word: isGood ? 'Good' : 'Too high',
      reason,
    } as const;
    return { kind: 'record', record };
  }

  #sum(sheet: string, text: string, depth: number): number {
    if (depth > 50) return Number.NaN;
    const factor = (word: string): number => {
      if (/^[\d.]+$/.test(word)) return Number(word);
      const held = this.#sheets.get(sheet);
      const named = [...(held?.names ?? [])].find(([name]) => name === word)?.[1] ?? word;
      const { value } = this.#evaluated(sheet, held?.cells.get(named) ?? '0', depth + 1);
      return value.kind === 'number' ? value.value : 0;
    };
    return text
      .split('+')
      .map((term) => term.split('*').reduce((product, word) => product * factor(word.trim()), 1))
      .reduce((sum, term) => sum + term, 0);
  }
}

const PLAIN = { kind: 'number', quantity: 'ratio', dimension: {} } as const;
const EMPTY = { value: { kind: 'empty' }, type: { kind: 'empty' }, findings: [] } as const;

/** Lets all promises that can be kept be kept. */
export const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 0));
