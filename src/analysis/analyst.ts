import { cheapest } from './cheapest/cheapest.ts';
import { combine } from './combine/combine.ts';
import { drives, follows } from './drives/drives.ts';
import { optimise } from './optimise/optimise.ts';
import { readQuestion } from './read/question.ts';
import { summarised } from './scatter/summary.ts';
import { scatter, scatterPart } from './scatter/scatter.ts';
import { seek } from './seek/seek.ts';
import { withModel } from './model/document-model.ts';
import { shortlist } from './shortlist/shortlist.ts';
import { map, sweep } from './sweep/sweep.ts';
import type { Analyst } from './types.ts';

/** Answers in this thread, each document on an engine of its own for as long as the question takes. */
export const createAnalyst = (): Analyst => ({
  subject: (document) => withModel(document, async ({ subject }) => subject),
  read: (document, sentence) => withModel(document, (model) => readQuestion(model, sentence)),
  sweep: (question, watch) => withModel(question.document, (model) => sweep(model, question, watch)),
  map: (question, watch) => withModel(question.document, (model) => map(model, question, watch)),
  seek: (question, watch) => withModel(question.document, (model) => seek(model, question, watch)),
  combine: (question, watch) => withModel(question.document, (model) => combine(model, question, watch)),
  optimise: (question, watch) => withModel(question.document, (model) => optimise(model, question, watch)),
  cheapest: (question, watch) => withModel(question.document, (model) => cheapest(model, question, watch)),
  scatter: (question, watch) => withModel(question.document, (model) => scatter(model, question, watch)),
  scatterPart: (share, watch) => withModel(share.document, (model) => scatterPart(model, share, watch)),
  scatterSummary: summarised,
  drives: (question, watch) => withModel(question.document, (model) => drives(model, question, watch)),
  follows: (question, watch) => withModel(question.document, (model) => follows(model, question, watch)),
  shortlist,
  dispose: () => undefined,
});
