import { expect, test } from 'vitest';
import { remembering } from '../../functions/remembering.ts';

test('what is kept is made once, what was asked for longest ago is let go first', () => {
  const made: string[] = [];
  const upper = remembering((word: string) => {
    made.push(word);
    return word === '' ? undefined : word.toUpperCase();
  }, 2);
  expect([upper('a'), upper(''), upper(''), upper('a')]).toEqual(['A', undefined, undefined, 'A']);
  expect(made).toEqual(['a', '']);
  upper('b');
  upper('a');
  expect(made).toEqual(['a', '', 'b']);
  upper('');
  expect(made).toEqual(['a', '', 'b', '']);
});
