import { QuestionError } from '../../analysis/subject/place-error.ts';
import { unitOf } from '../../analysis/subject/unit-of.ts';
import { EVERY, type SeekQuestion } from '../../analysis/seek/types.ts';
import { settingText } from '../../analysis/subject/setting-text.ts';
import type { SetInput, Subject } from '../../analysis/subject/types.ts';
import type { Analyst, OptimiseQuestion } from '../../analysis/types.ts';
import type { Wish } from '../../components/ask/data.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { keyOf } from '../../engine/cell-index.ts';
import { setWords } from './found.ts';
import { inputOf, movedOf, resultOf, variedOf } from './wish.ts';

/** What a sentence puts into the form. */
export interface ReadWish {
  readonly wish: Partial<Wish>;
  /** Inputs set to something else first. */
  readonly given: readonly SetInput[];
}

/** A sentence read into the form.
 *  @throws A {@link QuestionError} in words for the reader where it cannot be read. */
export async function readSentence(
  analyst: Analyst,
  document: OctavoDocument,
  subject: Subject,
  sentence: string,
): Promise<ReadWish> {
  const read = await analyst.read(document, sentence);
  if ('wrong' in read) {
    const [first, ...others] = read.suggestions.map((each) => `“${each}”`);
    throw new QuestionError(
      [read.wrong, ...(first ? [`For instance ${[first, ...others].slice(0, 5).join(', ')}.`] : [])].join(' '),
    );
  }
  switch (read.kind) {
    case 'seek':
      return soughtIn(read.question, document, subject);
    case 'best':
      return {
        wish: { ...bestIn(read.question, document, subject), given: setWords(read.given) },
        given: read.given,
      };
    case 'cheapest':
      return {
        wish: {
          kind: 'cheapest',
          cost: typeof read.cost === 'string' ? read.cost : keyOf(read.cost),
          keep: read.orCaution ? 'clear' : 'good',
          given: setWords(read.given),
        },
        given: read.given,
      };
  }
}

function soughtIn(
  { result, target, input, given = [] }: SeekQuestion,
  document: OctavoDocument,
  subject: Subject,
): ReadWish {
  const id = result === EVERY ? EVERY : keyOf(result);
  return {
    wish: {
      kind: 'seek',
      result: id,
      target:
        target.kind === 'good' ? (target.orCaution ? 'clear' : 'good') : typedFor(id, target.value, document, subject),
      input: movedOf(inputOf(subject, keyOf(input))),
      given: setWords(given),
    },
    given,
  };
}

function bestIn(
  { inputs, objective, keep, limits = [] }: OptimiseQuestion,
  document: OctavoDocument,
  subject: Subject,
): Partial<Wish> {
  const result = keyOf(objective.result);
  return {
    kind: 'best',
    result,
    aim: objective.kind,
    ...(objective.kind === 'nearest' && { target: typedFor(result, objective.target, document, subject) }),
    ...(objective.kind === 'flattest' && { band: [`${objective.from} Hz`, `${objective.to} Hz`] as const }),
    keep: keep ?? 'any',
    limits: limits.map(({ at, value, ...place }) => {
      const id = keyOf(place);
      return { id, label: resultOf(subject, id)?.label ?? '', at, text: typedFor(id, value, document, subject) };
    }),
    varied: inputs.flatMap(({ range, ...place }) => {
      const input = inputOf(subject, keyOf(place));
      return input ? [variedOf({ ...input, ...(range && { range }) })] : [];
    }),
  };
}

/** A value as it would be typed for a result. */
function typedFor(id: string, value: number, document: OctavoDocument, subject: Subject): string {
  const at = resultOf(subject, id);
  return settingText({ unit: at ? unitOf(at, document) : '' }, value, 6);
}
