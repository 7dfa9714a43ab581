import { expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

test('the price of a driver keeps its money through record, sum and verdict', async () => {
  const opened = await openTemplate('two-driver-check');
  expect(opened.text('PairPrice')).toBe('192 ¤');
  await opened.write({ B19: '€62', C19: '34 €' });
  expect(opened.text('Woofer')).toContain('Price 62 €');
  expect(opened.text('PairPrice')).toBe('192 €');
  expect(opened.text('E67')).toContain('192 €, at most 250 € wanted: 58 € to spare');
});

test('two kinds of money are not added up, and one price without a sign takes that of the other', async () => {
  const opened = await openTemplate('two-driver-check');
  await opened.write({ B19: '62 €', C19: '34 $' });
  expect(opened.problems()).toContainEqual(
    expect.stringContaining('D67: A price in $ cannot be added to a price in €'),
  );
  await opened.write({ C19: '34 ¤' });
  expect(opened.problems()).toEqual([]);
  expect(opened.text('PairPrice')).toBe('192 €');
});

test('a driver that is made of another keeps the money of its price', async () => {
  const opened = await openTemplate('two-driver-check');
  await opened.write({
    B19: '62 kr',
    H1: '=DRIVER.GROUP(Woofer,2)',
    H2: '=H1.price',
    H3: '=IF(Pad>0 dB,Woofer,H1)',
    H4: '=H3.price+1 kr',
    H5: '=H4+1 €',
  });
  expect(['H2', 'H4'].map(opened.text)).toEqual(['124 kr', '63 kr']);
  expect(opened.text('H5')).toContain('A price in € cannot be added to a price in kr');
});
