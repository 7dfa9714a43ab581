import { describe, expect, test } from 'vitest';
import { readQuestion } from '../../src/analysis/read/question.ts';
import type { ReadQuestion } from '../../src/analysis/read/types.ts';
import { withModel } from '../../src/analysis/model/document-model.ts';
import { sheetOf } from '../../src/document/sheets.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { named, templateNamed } from './documents.ts';

const read = (document: OctavoDocument, sentence: string): Promise<ReadQuestion> =>
  withModel(document, (model) => readQuestion(model, sentence));

const pair = templateNamed('two-driver-check');
const closed = templateNamed('closed-box-bench');
const vented = templateNamed('vented-box');
const team = templateNamed('three-way-team');

type Range = readonly [number, number];
interface Wanted {
  readonly inputs: Readonly<Record<string, Range | undefined>>;
  readonly kind?: 'least' | 'most';
  readonly result: string;
  readonly given?: Readonly<Record<string, string>>;
  readonly limits?: readonly (readonly [result: string, at: 'least' | 'most', value: number])[];
  readonly keep?: 'good' | 'clear';
}

const best: readonly (readonly [string, OctavoDocument, Wanted])[] = [
  [
    'the smallest box that still plays 106 dB',
    vented,
    { inputs: { Volume: undefined }, result: 'Volume', limits: [['TravelLevel', 'least', 106]] },
  ],
  [
    'smallest box at 106 dB that keeps every verdict',
    vented,
    { inputs: { Volume: undefined }, result: 'Volume', limits: [['TravelLevel', 'least', 106]], keep: 'good' },
  ],
  [
    'What is the smallest box that reaches 45 Hz by moving Tuning, with the highest port speed under 17 m/s?',
    vented,
    {
      inputs: { Volume: undefined, Tuning: undefined },
      result: 'Volume',
      limits: [
        ['TopSpeed', 'most', 17],
        ['Fall3', 'most', 45],
      ],
    },
  ],
  [
    'lowest F3 in a box of at most 20 L by Volume and Tuning while no verdict fails',
    vented,
    { inputs: { Volume: [0.005, 0.02], Tuning: undefined }, result: 'Fall3', keep: 'clear' },
  ],
  [
    'lowest Fall3 by Volume and Tuning with Power 100 W and every verdict good',
    vented,
    { inputs: { Volume: undefined, Tuning: undefined }, result: 'Fall3', given: { Power: '100 W' }, keep: 'good' },
  ],
  [
    'smallest box with Qtc below 0.8',
    closed,
    { inputs: { Volume: undefined }, result: 'Volume', limits: [['Qtc', 'most', 0.8]] },
  ],
  [
    'lowest F3 in a box under 15 L, every verdict good',
    closed,
    { inputs: { Volume: [0.001, 0.015] }, result: 'Fall3', keep: 'good' },
  ],
  [
    'widest gap that plays 106 dB at the chair and keeps every verdict good',
    pair,
    { inputs: { Gap: undefined }, kind: 'most', result: 'Gap', given: { Target: '106 dB' }, keep: 'good' },
  ],
  [
    'the lowest HandOver at 103 dB with no verdict failing',
    pair,
    { inputs: { HandOver: undefined }, result: 'HandOver', given: { Target: '103 dB' }, keep: 'clear' },
  ],
  [
    'which MidVolume and Gap give the widest LowWindowWidth at a target level of 100 dB, every verdict good?',
    team,
    {
      inputs: { MidVolume: undefined, Gap: undefined },
      kind: 'most',
      result: 'LowWindowWidth',
      given: { Target: '100 dB' },
      keep: 'good',
    },
  ],
];

const textAt = (document: OctavoDocument, name: string): string | undefined => {
  const { sheet, cell } = named(document, name);
  return sheetOf(document, sheet).cells.get(cell)?.text;
};

describe('what a builder asks of the best', () => {
  test.each(best)('%s', async (sentence, document, { inputs, kind = 'least', result, given = {}, limits, keep }) => {
    const asked = await read(document, sentence);
    if (!('kind' in asked) || asked.kind !== 'best') throw new Error(JSON.stringify(asked));
    const { question } = asked;
    expect(question.objective).toEqual({ kind, result: named(document, result) });
    expect(question.inputs).toHaveLength(Object.keys(inputs).length);
    for (const [name, range] of Object.entries(inputs)) {
      const input = question.inputs.find(({ cell }) => cell === named(document, name).cell);
      expect(input).toMatchObject(named(document, name));
      if (range) expect(input?.range?.[1]).toBeCloseTo(range[1], 9);
      else expect(input?.range).toBeUndefined();
    }
    expect(question.limits).toEqual(
      limits?.map(([name, at, value]) => ({ ...named(document, name), at, value: expect.closeTo(value, 9) as number })),
    );
    expect(question.keep).toBe(keep);
    expect(Object.fromEntries(asked.given.map(({ cell, text }) => [cell, text]))).toEqual(
      Object.fromEntries(Object.entries(given).map(([name, text]) => [named(document, name).cell, text])),
    );
    for (const [name, text] of Object.entries(given)) expect(textAt(question.document, name)).toBe(text);
  });
});

test.each([
  ['cheapest change at 106 dB', 'money'],
  ['the cheapest change that plays 106 dB at the chair', 'money'],
  ['fewest changes to play 106 dB', 'changes'],
])('“%s” sets the target of the sheet', async (sentence, cost) => {
  expect(await read(pair, sentence)).toMatchObject({
    kind: 'cheapest',
    cost,
    given: [{ ...named(pair, 'Target'), text: '106 dB' }],
  });
});

test.each([
  [closed, 'smallest box that plays 106 dB', 'No result that fits'],
  [pair, 'widest gap at 106 bananas', 'no quantity'],
  [pair, 'widest gap with Bananas below 3 dB', 'No result that fits'],
  [pair, 'cheapest change with WindowWidth above 1 oct', 'judged by the verdicts'],
])('what cannot be set or bounded is asked back: %#', async (document, sentence, wrong) => {
  const asked = await read(document, sentence);
  expect('wrong' in asked && asked.wrong).toContain(wrong);
});
