import { expect, test } from 'vitest';
import { changedOf } from '../../../src/document/take-over/as-made.ts';
import { takeFrom } from '../../../src/document/take-over/take.ts';
import type { Sheet } from '../../../src/document/types.ts';
import { templates } from '../../../templates/index.ts';
import { starterDocument } from '../../templates/starter-document.ts';

const starters = templates.map(({ id }) => starterDocument(id));
const called = (id: string): Sheet => starterDocument(id).sheets[0]!;
const two = called('two-driver-check');
const leftOf = (from: Sheet, into: string) => takeFrom([from], called(into), () => undefined).left;

test('of a two-way as its starter sheet gives it, nothing is missed in a three-way', () => {
  const left = leftOf(two, 'three-way-team');
  expect(left.length).toBeGreaterThan(5);
  expect(changedOf(left, two, starters)).toEqual({ changed: [], asMade: left.length });
});

test('a rule that the reader has changed is told, and a driver without a place always', () => {
  const cells = new Map(two.cells).set('F33', { ...two.cells.get('F33')!, text: '1.8 ×' });
  const left = leftOf({ ...two, cells }, 'closed-box-bench');
  const { changed, asMade } = changedOf(left, { ...two, cells }, starters);
  expect(changed.map(({ what, text }) => [what, text])).toEqual([
    ['Tweeter', 'T-25 A'],
    ['resonance', '1.8 ×'],
  ]);
  expect(asMade).toBe(left.length - 2);
});

test('of a sheet that no starter sheet made, everything is told', () => {
  const own = { ...two, names: new Map([['Own', 'B5']]) };
  const left = leftOf(own, 'closed-box-bench');
  expect(changedOf(left, own, starters)).toEqual({ changed: left, asMade: 0 });
});
