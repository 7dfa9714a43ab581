import { createAnalyst } from '../analysis/analyst.ts';
import { QuestionError } from '../analysis/subject/place-error.ts';
import { subjectOf } from '../analysis/subject/subject.ts';
import { typedValue } from '../analysis/subject/typed-value.ts';
import type { Subject } from '../analysis/subject/types.ts';
import { unitOf } from '../analysis/subject/unit-of.ts';
import type { OctavoDocument } from '../document/types.ts';
import { keyOf } from '../engine/cell-index.ts';
import type { Place } from '../engine/types.ts';
import type { Asking } from './ask-arguments.ts';
import { findCells } from './find-cell.ts';

/** The place of one cell as a reader writes it.
 *  @throws A {@link QuestionError} in words for the reader. */
export function cellAt(document: OctavoDocument, written: string): Place {
  const found = findCells(document, written);
  if ('wrong' in found) throw new QuestionError(found.wrong);
  if (found.cells.includes(':'))
    throw new QuestionError(`“${written}” is the range ${found.cells}; one cell is wanted.`);
  return { sheet: found.sheet.id, cell: found.cells };
}

/** `NAME=WHAT` taken apart. */
export function namedPart(text: string, flag: string, example: string): readonly [name: string, what: string] {
  const [, name, what] = /^([^=]+)=(.+)$/s.exec(text) ?? [];
  if (name === undefined || what === undefined)
    throw new QuestionError(`--${flag} wants ${example}, but got “${text}”.`);
  return [name.trim(), what.trim()];
}

/** `5 L..20 L`: two ends. */
export function endsOf(text: string, flag: string): readonly [from: string, to: string] {
  const [from, to, ...more] = text.split('..').map((part) => part.trim());
  if (!from || !to || more.length > 0)
    throw new QuestionError(`--${flag}: “${text}” are no two ends, as in '5 L..20 L'.`);
  return [from, to];
}

/** The flags of a question, read as cells, numbers and words. */
export class Flags {
  readonly #document: OctavoDocument;
  readonly #asking: Asking;
  #subject: Promise<Subject> | undefined;

  constructor(document: OctavoDocument, asking: Asking) {
    this.#document = document;
    this.#asking = asking;
  }

  has(flag: string): boolean {
    return this.#asking.flags.has(flag);
  }

  all(flag: string): readonly string[] {
    return this.#asking.flags.get(flag) ?? [];
  }

  text(flag: string, absent?: string): string {
    const value = this.all(flag).at(-1) ?? absent;
    if (value === undefined)
      throw new QuestionError(`${this.#asking.word} wants --${flag}; --help shows how it is written.`);
    return value;
  }

  number(flag: string, absent: number): number {
    const written = this.text(flag, String(absent));
    const number = written.trim() === '' ? Number.NaN : Number(written);
    if (Number.isFinite(number)) return number;
    throw new QuestionError(`--${flag} wants a number, as in --${flag} ${absent}, but got “${written}”.`);
  }

  /** A quantity as it is typed for a cell: of its kind, a number alone in its unit. */
  async typedFor(place: Place, text: string): Promise<number> {
    const isAt = (each: Place): boolean => keyOf(each) === keyOf(place);
    const input = subjectOf(this.#document, () => undefined).inputs.find(isAt);
    if (input) return typedValue(text, input);
    this.#subject ??= createAnalyst().subject(this.#document);
    const result = (await this.#subject).results.find(isAt);
    const unit = result ? unitOf(result, this.#document) : '';
    return typedValue(text, { label: place.cell, ...result, unit });
  }

  /** One of some words; the first where none was given. */
  choice<T extends string>(flag: string, words: readonly [T, ...T[]]): T {
    const given = this.text(flag, words[0]);
    const found = words.find((word) => word === given);
    if (!found) throw new QuestionError(`--${flag} is one of ${words.join(', ')}, but got “${given}”.`);
    return found;
  }

  cell(flag: string): Place {
    return cellAt(this.#document, this.text(flag));
  }

  cells(flag: string): readonly Place[] {
    const places = this.all(flag).map((written) => cellAt(this.#document, written));
    return places.length > 0 ? places : [this.cell(flag)];
  }
}
