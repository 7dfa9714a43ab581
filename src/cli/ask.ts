import { createAnalyst } from '../analysis/analyst.ts';
import { QuestionError } from '../analysis/place-error.ts';
import type { CauseName, SeekQuestion, Spread } from '../analysis/types.ts';
import type { OctavoDocument } from '../document/types.ts';
import type { Place } from '../engine/types.ts';
import { parseQuantity } from '../units/parse.ts';
import type { Asking } from './ask-arguments.ts';
import { findCells } from './find-cell.ts';

const analyst = createAnalyst();

/** Answers a question over a whole sheet, as plain data.
 *  @throws A {@link QuestionError} in words for the reader. */
export async function ask(document: OctavoDocument, asking: Asking): Promise<unknown> {
  const flags = new Flags(document, asking);
  switch (asking.word) {
    case 'sweep':
      return plain(
        await analyst.sweep({
          document,
          input: {
            ...flags.cell('input'),
            from: flags.quantity('from'),
            to: flags.quantity('to'),
            steps: flags.number('steps', 20),
            spacing: flags.text('spacing', 'linear') === 'logarithmic' ? 'logarithmic' : 'linear',
          },
          results: flags.cells('result'),
        }),
      );
    case 'seek':
      return plain(await analyst.seek(await seekQuestion(document, flags)));
    case 'scatter':
      return plain(
        await analyst.scatter({
          document,
          spreads: flags.all('spread').map((text) => spreadOf(document, text)),
          results: flags.cells('result'),
          runs: flags.number('runs', 2000),
          seed: flags.number('seed', 1),
        }),
      );
    case 'drives':
      return plain(
        flags.has('input')
          ? await analyst.follows({ document, at: flags.cell('input') })
          : await analyst.drives({ document, at: flags.cell('result') }),
      );
  }
}

async function seekQuestion(document: OctavoDocument, flags: Flags): Promise<SeekQuestion> {
  if (flags.has('ask')) {
    const read = await analyst.read(document, flags.text('ask'));
    if (!('wrong' in read)) return read;
    throw new QuestionError([read.wrong, ...read.suggestions.map((each) => `  ${each}`)].join('\n'));
  }
  const isJudged = flags.has('good') || flags.has('clear');
  const target: SeekQuestion['target'] = isJudged
    ? { kind: 'good', orCaution: flags.has('clear') }
    : { kind: 'number', value: flags.quantity('target') };
  return { document, input: flags.cell('input'), result: flags.cell('result'), target };
}

const causes: readonly CauseName[] = ['cms', 'bl', 'mms', 're'];

/** `Woofer=cms 0.12 bl 0.03` spreads the causes behind a driver, `Volume=0.03` an input by a share, `Volume=0.3 L` by an amount. */
function spreadOf(document: OctavoDocument, text: string): Spread {
  const [, name, spread = ''] = /^([^=]+)=(.+)$/.exec(text) ?? [];
  if (name === undefined)
    throw new QuestionError(`--spread wants NAME=SPREAD, as in 'Volume=0.03', but got “${text}”.`);
  const at = cellAt(document, name.trim());
  const quantity = parseQuantity(spread);
  if (quantity) return { kind: quantity.unit === '' ? 'share' : 'amount', at, deviation: quantity.value };
  const words = spread.trim().split(/\s+/);
  const pairs = words.flatMap((word, index) =>
    index % 2 === 0 ? [[word.toLowerCase(), Number(words[index + 1])] as const] : [],
  );
  const odd = pairs.find(([cause, share]) => !causes.some((each) => each === cause) || !Number.isFinite(share));
  if (odd)
    throw new QuestionError(
      `“${spread}” names no causes: write ${causes.join(', ')} each with a share, as in 'cms 0.12'.`,
    );
  return { kind: 'driver', at, causes: Object.fromEntries(pairs) };
}

function cellAt(document: OctavoDocument, written: string): Place {
  const found = findCells(document, written);
  if ('wrong' in found) throw new QuestionError(found.wrong);
  if (found.cells.includes(':'))
    throw new QuestionError(`“${written}” is the range ${found.cells}; one cell is wanted.`);
  return { sheet: found.sheet.id, cell: found.cells };
}

class Flags {
  readonly #document: OctavoDocument;
  readonly #asking: Asking;

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
    return this.has(flag) ? this.quantity(flag) : absent;
  }

  quantity(flag: string): number {
    const read = parseQuantity(this.text(flag));
    if (!read) throw new QuestionError(`--${flag}: “${this.text(flag)}” is no quantity; type a number with its unit.`);
    return read.value;
  }

  cell(flag: string): Place {
    return cellAt(this.#document, this.text(flag));
  }

  cells(flag: string): readonly Place[] {
    const places = this.all(flag).map((written) => cellAt(this.#document, written));
    return places.length > 0 ? places : [this.cell(flag)];
  }
}

/** Typed arrays as lists, for JSON. */
function plain(value: unknown): unknown {
  if (value instanceof Float64Array || value instanceof Uint8Array) return Array.from(value);
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, plain(part)]));
}
