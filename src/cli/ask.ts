import { createAnalyst } from '../analysis/analyst.ts';
import { QuestionError } from '../analysis/subject/place-error.ts';
import { typedInto } from '../analysis/subject/typed-into.ts';
import type { CauseName, SeekQuestion, Spread } from '../analysis/types.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import type { OctavoDocument } from '../document/types.ts';
import { parseQuantity } from '../units/parse.ts';
import type { Asking } from './ask-arguments.ts';
import { cellAt, Flags } from './ask-flags.ts';
import { askMany, cheapestQuestion } from './ask-many.ts';

const analyst = createAnalyst();

/** Answers a question over a whole sheet, as plain data.
 *  @throws A {@link QuestionError} in words for the reader. */
export async function ask(document: OctavoDocument, asking: Asking, shelf: readonly DriverEntry[]): Promise<unknown> {
  const flags = new Flags(document, asking);
  switch (asking.word) {
    case 'sweep': {
      const at = flags.cell('input');
      const input = {
        ...at,
        from: await flags.typedFor(at, flags.text('from')),
        to: await flags.typedFor(at, flags.text('to')),
        steps: flags.number('steps', 20),
        spacing: flags.choice('spacing', ['linear', 'logarithmic']),
      };
      return plain(await analyst.sweep({ document, input, results: flags.cells('result') }));
    }
    case 'seek':
      return plain(await sought(document, flags, shelf));
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
    default:
      return plain(await askMany(document, asking.word, flags, shelf));
  }
}

/** What a sentence asks may be another question than for one value. */
async function sought(document: OctavoDocument, flags: Flags, shelf: readonly DriverEntry[]): Promise<unknown> {
  if (!flags.has('ask')) return analyst.seek(await seekQuestion(document, flags));
  const read = await analyst.read(document, flags.text('ask'));
  if ('wrong' in read) throw new QuestionError([read.wrong, ...read.suggestions.map((each) => `  ${each}`)].join('\n'));
  switch (read.kind) {
    case 'seek':
      return analyst.seek(read.question);
    case 'best':
      return { given: read.given, ...(await analyst.optimise(read.question)) };
    case 'cheapest':
      return {
        given: read.given,
        ...(await analyst.cheapest({
          ...cheapestQuestion(typedInto(document, read.given), flags, shelf),
          cost: read.cost,
          ...(read.orCaution && { orCaution: true }),
        })),
      };
  }
}

async function seekQuestion(document: OctavoDocument, flags: Flags): Promise<SeekQuestion> {
  const [input, result] = [flags.cell('input'), flags.cell('result')];
  const isJudged = flags.has('good') || flags.has('clear');
  const target: SeekQuestion['target'] = isJudged
    ? { kind: 'good', orCaution: flags.has('clear') }
    : { kind: 'number', value: await flags.typedFor(result, flags.text('target')) };
  return { document, input, result, target };
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

/** Typed arrays as lists, for JSON. */
function plain(value: unknown): unknown {
  if (value instanceof Float64Array || value instanceof Uint8Array) return Array.from(value);
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, plain(part)]));
}
