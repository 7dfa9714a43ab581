import { expect, test } from 'vitest';
import { readQuestion } from '../../src/analysis/read/question.ts';
import type { ReadQuestion } from '../../src/analysis/read/types.ts';
import { EVERY } from '../../src/analysis/seek/types.ts';
import { withModel } from '../../src/analysis/model/document-model.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { named, templateNamed } from './documents.ts';

const read = (document: OctavoDocument, sentence: string): Promise<ReadQuestion> =>
  withModel(document, (model) => readQuestion(model, sentence));
const box = templateNamed('vented-box');
const volume = named(box, 'Volume');
const tuning = named(box, 'Tuning');

test.each([
  [
    'smallest box that keeps every verdict',
    { inputs: [volume], objective: { kind: 'least', result: volume }, keep: 'good' },
  ],
  [
    'the largest Volume with no verdict failing',
    { inputs: [volume], objective: { kind: 'most', result: volume }, keep: 'clear' },
  ],
  [
    'flattest Response between 40 Hz and 200 Hz by volume and tuning',
    { inputs: [volume, tuning], objective: { kind: 'flattest', result: named(box, 'Response'), from: 40, to: 200 } },
  ],
  [
    'Which Volume and Tuning give the lowest Fall3, every verdict good?',
    { inputs: [volume, tuning], objective: { kind: 'least', result: named(box, 'Fall3') }, keep: 'good' },
  ],
  [
    'lowest Fall3 by Volume from 10 L to 40 L and Tuning between 25 Hz and 45 Hz while every verdict passes',
    {
      inputs: [
        { ...volume, range: [0.01, 0.04] },
        { ...tuning, range: [25, 45] },
      ],
      objective: { kind: 'least', result: named(box, 'Fall3') },
      keep: 'clear',
    },
  ],
  [
    'smallest box by moving Tuning, keeping every verdict free of failure',
    { inputs: [volume, tuning], objective: { kind: 'least', result: volume }, keep: 'clear' },
  ],
])('“%s” asks for the best', async (sentence, question) => {
  const asked = await read(box, sentence);
  expect(asked).toMatchObject({ kind: 'best', question });
  const kept = 'keep' in question ? question.keep : undefined;
  expect('kind' in asked && asked.kind === 'best' ? asked.question.keep : 'none').toBe(kept);
});

test.each([
  ['cheapest change', { kind: 'cheapest', cost: 'money', given: [] }],
  ['What is the cheapest change that makes every verdict good?', { kind: 'cheapest', cost: 'money', given: [] }],
  ['fewest changes that pass', { kind: 'cheapest', cost: 'changes', orCaution: true, given: [] }],
])('“%s” asks for changes', async (sentence, wanted) => {
  expect(await read(box, sentence)).toEqual(wanted);
});

test('every verdict stands for all of them, and the input is one that any of them follows from', async () => {
  const document = templateNamed('two-driver-check');
  expect(await read(document, 'which Xmax makes every verdict good at 106 dB?')).toMatchObject({
    kind: 'seek',
    question: { result: EVERY, input: named(document, 'C12'), given: [{ ...named(document, 'Target'), value: 106 }] },
  });
});

test.each([
  ['flattest Response by Volume', 'between which frequencies'],
  ['lowest Fall3', 'what may move'],
  ['best Fall3 by Volume', 'lowest or the highest'],
  ['lowest Bananas by Volume', 'No result that fits'],
  ['lowest Fall3 by Bananas', 'No input that fits'],
])('“%s” asks back', async (sentence, wrong) => {
  const asked = await read(box, sentence);
  expect('wrong' in asked && asked.wrong).toContain(wrong);
});
