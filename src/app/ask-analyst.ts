import { QuestionError } from '../analysis/place-error.ts';
import type { SeekQuestion } from '../analysis/seek-types.ts';
import { settingText } from '../analysis/setting-text.ts';
import type { SetInput, Subject, Watch } from '../analysis/subject-types.ts';
import type { Analyst } from '../analysis/types.ts';
import { kinds, type Answer, type Wish } from '../components/ask/data.ts';
import type { OctavoDocument } from '../document/types.ts';
import { keyOf, placeOf } from '../engine/cell-index.ts';
import { drivesAnswer, followsAnswer, seekAnswer, setWords } from './ask-found.ts';
import { mapAnswer } from './ask-map.ts';
import { sweepAnswer } from './ask-sweep.ts';
import { everyVerdict } from './ask-every.ts';
import { mapQuestion, scatterQuestion, seekQuestion, sweepQuestion, type Asking } from './ask-question.ts';
import { scatterAnswer } from './ask-scattered.ts';
import { EVERY, inputOf, movedOf, resultOf, unitOf } from './ask-wish.ts';

/** Puts the question that stands in the form, and makes the answer ready to be shown.
 *  @throws An error in words for the reader where the question is none. */
export async function answerTo(
  analyst: Analyst,
  asking: Asking,
  given: readonly SetInput[],
  watch: Watch,
): Promise<Answer> {
  const { document, subject, wish } = asking;
  const { system } = document;
  const note = noteOf(asking, given);
  const hasVerdicts = subject.results.some(({ kind }) => kind === 'verdict');
  switch (wish.kind) {
    case 'seek':
      if (wish.result === EVERY) return everyVerdict(analyst, asking, given, watch, note);
      return seekAnswer(await analyst.seek(seekQuestion(asking, given), watch), given, system, note);
    case 'sweep':
      return sweepAnswer(await analyst.sweep(sweepQuestion(asking), watch), hasVerdicts, system, note);
    case 'map':
      return mapAnswer(await analyst.map(mapQuestion(asking), watch), system, note);
    case 'scatter':
      return scatterAnswer(await analyst.scatter(scatterQuestion(asking), watch), system, note);
    case 'drives':
      return drivesAnswer(await analyst.drives({ document, at: placeOf(wish.result) }, watch), system, note);
    case 'follows':
      return followsAnswer(await analyst.follows({ document, at: placeOf(wish.input.id) }, watch), system, note);
  }
}

/** What was asked with all its settings, so that it can be asked again. */
function noteOf({ document, subject, wish }: Asking, given: readonly SetInput[]): string {
  const result = wish.result === EVERY ? EVERY : (resultOf(subject, wish.result)?.label ?? '');
  const range = ({ id, from, to }: Wish['input']): string => {
    const label = inputOf(subject, id)?.label ?? '';
    return from === '' ? label : `${label} from ${from} to ${to}`;
  };
  const parts: Readonly<Record<Wish['kind'], readonly string[]>> = {
    seek: [
      `${result} to ${wish.target || 'good'}`,
      range(wish.input),
      ...given.map(({ label, text }) => `${label} ${text}`),
    ],
    sweep: [result, range(wish.input), `${wish.steps} values`],
    map: [result, range(wish.input), range(wish.second), `${wish.steps} points each way`],
    scatter: [
      result,
      `${wish.runs} runs`,
      `seed ${wish.seed}`,
      ...wish.spreads.map(
        ({ label, texts }) => `${label} ${texts.map((each) => `${each.label} ${each.text}`).join(', ')}`,
      ),
    ],
    drives: [result],
    follows: [range({ ...wish.input, from: '', to: '' })],
  };
  return `${kinds[wish.kind]}, asked of “${document.title}”: ${parts[wish.kind].join('; ')}. Everything else as the sheet stood.`;
}

/** A sentence read into the form. “Every verdict” stands for all of them together.
 *  @throws A {@link QuestionError} in words for the reader where it cannot be read. */
export async function readSentence(
  analyst: Analyst,
  document: OctavoDocument,
  subject: Subject,
  sentence: string,
): Promise<{
  readonly wish: Pick<Wish, 'kind' | 'result' | 'target' | 'input' | 'given'>;
  readonly given: readonly SetInput[];
}> {
  const isEvery = ALL.test(sentence);
  const read = isEvery ? await readEvery(analyst, document, subject, sentence) : await analyst.read(document, sentence);
  if ('wrong' in read) {
    const [first, ...others] = read.suggestions.map((each) => `“${each}”`);
    throw new QuestionError(
      [read.wrong, ...(first ? [`For instance ${[first, ...others].slice(0, 5).join(', ')}.`] : [])].join(' '),
    );
  }
  const { result, target, input, given = [] } = read;
  const at = resultOf(subject, keyOf(result));
  const moved = movedOf(inputOf(subject, keyOf(input)));
  return {
    wish: {
      kind: 'seek',
      result: isEvery ? EVERY : keyOf(result),
      target:
        target.kind === 'good'
          ? target.orCaution && !isEvery
            ? 'clear'
            : 'good'
          : settingText({ unit: at ? unitOf(at, document) : '' }, target.value, 6),
      input: moved,
      given: setWords(given),
    },
    given,
  };
}

const ALL = /\b(?:every|all|each)(?: of)?(?: the)? verdicts?\b/i;

/** Read for one verdict after the other, until one is met that the input has to do with. */
async function readEvery(
  analyst: Analyst,
  document: OctavoDocument,
  subject: Subject,
  sentence: string,
): Promise<Awaited<ReturnType<Analyst['read']>>> {
  const verdicts = subject.results.filter(({ kind }) => kind === 'verdict');
  let last: Awaited<ReturnType<Analyst['read']>> = {
    wrong: 'No cell of this document holds a verdict: ask for a number instead.',
    suggestions: [],
  };
  for (const verdict of verdicts) {
    const read = await analyst.read(document, sentence.replace(ALL, verdict.cell));
    if (!('wrong' in read)) return read satisfies SeekQuestion;
    last = read;
  }
  return last;
}
