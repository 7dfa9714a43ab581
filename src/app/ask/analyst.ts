import type { SetInput, Watch } from '../../analysis/subject/types.ts';
import { typedInto } from '../../analysis/subject/typed-into.ts';
import type { Analyst } from '../../analysis/types.ts';
import type { Answer } from '../../components/ask/data.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import { placeOf } from '../../engine/cell-index.ts';
import { bestAnswer } from './best.ts';
import { cheapestAnswer } from './cheapest.ts';
import { combinedAnswer } from './combined.ts';
import { drivesAnswer, followsAnswer, seekAnswer } from './found.ts';
import { bestQuestion, cheapestQuestion, combineQuestion } from './many-question.ts';
import { mapAnswer } from './map.ts';
import { noteOf } from './note.ts';
import { mapQuestion, scatterQuestion, seekQuestion, sweepQuestion, type Asking } from './question.ts';
import { scatterAnswer } from './scattered.ts';
import { sweepAnswer } from './sweep.ts';

/** Puts the question that stands in the form, and makes the answer ready to be shown.
 *  @param shelf - The drivers that may be bought.
 *  @throws An error in words for the reader where the question is none. */
export async function answerTo(
  analyst: Analyst,
  asking: Asking,
  given: readonly SetInput[],
  watch: Watch,
  shelf: () => Promise<readonly DriverEntry[]> = () => Promise.resolve([]),
): Promise<Answer> {
  const { document, subject, wish } = asking;
  const { system } = document;
  const note = noteOf(asking, given);
  const first = { ...asking, document: typedInto(document, given) };
  const hasVerdicts = subject.results.some(({ kind }) => kind === 'verdict');
  switch (wish.kind) {
    case 'best': {
      const question = bestQuestion(first);
      return bestAnswer(await analyst.optimise(question, watch), question, given, system, note);
    }
    case 'combine':
      return combinedAnswer(await analyst.combine(combineQuestion(asking), watch), hasVerdicts, system, note);
    case 'cheapest':
      return cheapestAnswer(
        await analyst.cheapest(cheapestQuestion(first, await shelf()), watch),
        given,
        first.document,
        note,
      );
    case 'seek':
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
