import type { Sentence } from '../say.ts';
import type { Verdict } from '../verdict.ts';
import { field, type ReadableField } from './field.ts';

/** Words of a sentence, its numbers in SI: for a field that a formula reads. */
const words = (sentence: Sentence): string =>
  sentence.map((part) => (typeof part === 'string' ? part : String(part.value))).join('');

export const ofVerdict: readonly ReadableField<Verdict>[] = [
  field('status', 'Good, caution or fail', 'text', (verdict) => verdict.status, 'Status'),
  field('word', 'The word on its chip', 'text', (verdict) => verdict.word, 'Verdict'),
  field('reason', 'Why', 'text', (verdict) => words(verdict.reason), 'Reason'),
  field('note', 'Note', 'text', (verdict) => (verdict.note === undefined ? undefined : words(verdict.note))),
];
