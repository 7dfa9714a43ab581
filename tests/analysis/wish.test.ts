import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readWish, type Wish } from '../../src/analysis/shortlist/wish.ts';

test.each<[string, Wish]>([
  [
    'a two-way under 300 that reaches 45 Hz and plays 103 dB',
    { ways: 2, price: '300', reach: '45 Hz', plays: '103 dB' },
  ],
  [
    '3-way for €1 200 that goes down to 32Hz, sealed, 106 dB at 1 m',
    { ways: 3, price: '1 200', reach: '32 Hz', plays: '106 dB', box: 'closed' },
  ],
  ['mains with subs, 30 Hz, 108 decibels', { ways: 'subs', reach: '30 Hz', plays: '108 dB' }],
  ['Small mains and two subs under 900 a pair that reach 25 Hz', { ways: 'subs', price: '900', reach: '25 Hz' }],
  ['mains with a vented sub under 500', { ways: 'subs', box: 'vented', price: '500' }],
  ['closed subs and mains', { ways: 'subs', box: 'closed' }],
  ['mains with one closed sub, 300 max', { ways: 'subs', box: 'closed', price: '300' }],
  ['two-way under 1.200 €', { ways: 2, price: '1200' }],
  ['three-way for $1,200 or less', { ways: 3, price: '1200' }],
  ['two-way under 299,95', { ways: 2, price: '299,95' }],
  ['two-way costing 300 at most in total', { ways: 2, price: '300' }],
  ['reach: 45; level: 103; price: 300', { reach: '45 Hz', plays: '103 dB', price: '300' }],
  ['F3 = 40 Hz', { reach: '40 Hz' }],
  ['I want the cheapest pair of two way speakers, please', { ways: 2, ranking: '-price' }],
  ['two-way for 150 each', { ways: 2, price: '300' }],
  ['reaches 45 and plays 103 under 300', { price: '300', reach: '45 Hz', plays: '103 dB' }],
  ['2-way < 300€ F3 45Hz', { ways: 2, price: '300', reach: '45 Hz' }],
  ['budget 250.50, deepest, vented box', { price: '250.50', ranking: '-reach', box: 'vented' }],
  ['F3 of 38,5 Hz in a closed box', { reach: '38,5 Hz', box: 'closed' }],
  ['', {}],
])('“%s” is understood whole', (sentence, wish) => {
  expect(readWish(sentence)).toMatchObject({ left: [] });
  expect(readWish(sentence).wish).toEqual(wish);
});

test.each<[string, Wish, readonly string[]]>([
  ['cheapest two-way with walnut veneer', { ways: 2, ranking: '-price' }, ['walnut veneer']],
  ['a two-way under 300 under 200', { ways: 2, price: '300' }, ['under 200']],
  ['over 300 euros', {}, ['over 300 euros']],
  ['under 103 dB', {}, ['under 103 dB']],
  ['a two-way for 30 litres', { ways: 2 }, ['30 litres']],
  ['plays 45 Hz', { reach: '45 Hz' }, ['plays']],
  ['four-way', {}, ['four-way']],
  ['two-way with 90 dB sensitivity', { ways: 2 }, ['90 dB sensitivity']],
  ['88 dB at 2.83 V', {}, ['88 dB at 2.83 V']],
])('of “%s” what is not understood is handed back', (sentence, wish, left) => {
  const read = readWish(sentence);
  expect(read.wish).toEqual(wish);
  expect(read.left).toEqual(left);
});

test('no number is invented, and no word lost', () => {
  const word = fc.constantFrom(
    ...'a two-way 3 under over 300 € euros each that reaches down to 45 Hz and plays 103 dB with subs closed , . walnut 1 m < at least'.split(
      ' ',
    ),
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 14 }), (words) => {
      const sentence = words.join(' ');
      const { wish, understood, left } = readWish(sentence);
      for (const { words: own } of understood) expect(sentence).toContain(own);
      for (const phrase of left) expect(sentence).toContain(phrase);
      for (const text of [wish.reach, wish.plays]) expect(sentence).toContain(text?.split(' ')[0] ?? '');
      expect(['300', '600', '45', '90', '103', '206', '3', '6', '1', '2', undefined]).toContain(wish.price);
      expect(understood).toHaveLength(Object.keys(wish).length);
      const told = [...understood.map((each) => each.words), ...left].join(' ');
      if (words.includes('walnut')) expect(told).toContain('walnut');
    }),
  );
});
