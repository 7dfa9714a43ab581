import { expect, test } from 'vitest';
import { choicesIn, choicesText } from '../../src/app/grid/choice-words.ts';

test('choices are read at commas, or at semicolons where there are some', () => {
  expect(choicesIn(' closed, vented ,')).toEqual(['closed', 'vented']);
  expect(choicesIn('1,5 mm; 2 mm')).toEqual(['1,5 mm', '2 mm']);
  expect(choicesIn('  ')).toEqual([]);
});

test('a single word and a word that is there twice are refused', () => {
  expect(choicesIn('closed')).toEqual({ refused: expect.stringContaining('“closed” alone is no choice') });
  expect(choicesIn('closed, vented, Closed')).toEqual({ refused: expect.stringContaining('“Closed” is there twice') });
});

test.each([[['closed', 'vented']], [['1,5 mm', '2 mm']]])('%j are written as they are read', (choices) => {
  expect(choicesIn(choicesText(choices))).toEqual(choices);
});
