import { describe, expect, test } from 'vitest';
import { alternativesOf } from '../../src/analysis/cheapest/changes.ts';
import { cheapest } from '../../src/analysis/cheapest/cheapest.ts';
import type { Change, Cheapest, CheapestQuestion } from '../../src/analysis/cheapest/types.ts';
import { DocumentModel, withModel } from '../../src/analysis/model/document-model.ts';
import { standingOf, type Standing } from '../../src/analysis/subject/types.ts';
import { Problem } from '../../functions/values/problem.ts';
import { driverOf } from '../../src/document/shelf/driver-of.ts';
import { parseQuantity } from '../../src/units/parse.ts';
import { subjectOf } from '../../src/analysis/subject/subject.ts';
import { typedValues } from '../../src/analysis/subject/typed-value.ts';
import { apply } from '../../src/document/apply.ts';
import { isRefusal } from '../../src/document/command.ts';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import type { Writing } from '../../src/engine/types.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };
import { at, documentOf, named, templateNamed } from './documents.ts';

const shelf = decodeShelf(drivers) as readonly DriverEntry[];
const of = (...names: string[]): DriverEntry[] => shelf.filter(({ name }) => names.includes(name));

function written(document: OctavoDocument, texts: readonly Writing[]): OctavoDocument {
  return texts.reduce((held, { sheet, cell, text }) => {
    const done = apply(held, { kind: 'write', sheet, texts: new Map([[cell, text]]) });
    if (isRefusal(done)) throw new Error(done.refused);
    return done.document;
  }, document);
}

/** The standings of all verdicts of a document, opened anew. */
async function judged(document: OctavoDocument): Promise<Standing[]> {
  return withModel(document, async (model) => model.verdicts.map(({ present }) => standingOf(present)));
}

async function answered(question: CheapestQuestion, signal?: AbortSignal): Promise<Cheapest> {
  return withModel(question.document, (model) => cheapest(model, question, signal ? { signal } : {}));
}

const order: readonly Standing[] = ['good', 'caution', 'fail', 'problem'];

/** Every set of changes in a document of its own: the least money that serves. */
async function byForce(question: CheapestQuestion): Promise<{ money: number; changes: number } | undefined> {
  const model = await DocumentModel.open(question.document);
  const lists = alternativesOf(model, question);
  model.dispose();
  const before = await judged(question.document);
  let sets: Change[][] = [[]];
  for (const { changes } of lists) sets = sets.flatMap((set) => [set, ...changes.map((change) => [...set, change])]);
  let least: { money: number; changes: number } | undefined;
  const serving: (readonly Change[])[] = [];
  const isWithin = (part: readonly Change[], set: readonly Change[]): boolean =>
    part.length < set.length && part.every((each) => set.includes(each));
  const inOrder = sets.filter(({ length }) => length > 0 && length <= question.changes);
  for (const set of inOrder.toSorted((a, b) => a.length - b.length)) {
    const after = await judged(
      written(
        question.document,
        set.flatMap(({ texts }) => texts),
      ),
    );
    const serves = after.every((standing, index) => {
      const was = order.indexOf(before[index] ?? 'problem');
      return was >= 2 ? order.indexOf(standing) <= (question.orCaution ? 1 : 0) : order.indexOf(standing) <= was;
    });
    const money = set.reduce((sum, change) => sum + change.money, 0);
    const isLess =
      !least ||
      (question.cost === 'money'
        ? money < least.money || (money === least.money && set.length < least.changes)
        : set.length < least.changes || (set.length === least.changes && money < least.money));
    if (serves) serving.push(set);
    // What serves without one of its changes has one that is not needed.
    const isNeeded = question.cost !== 'money' || !serving.some((other) => isWithin(other, set));
    if (serves && isNeeded && isLess) least = { money, changes: set.length };
  }
  return least;
}

describe('the cheapest change', () => {
  const starter = templateNamed('two-driver-check');
  const sheet = starter.sheets[0]?.id ?? '';
  // A tweeter that cannot begin so low: the hand-over fails, and with it the whole.
  const failing = written(starter, [{ sheet, cell: 'C5', text: '2400 Hz' }]);
  const question: CheapestQuestion = {
    document: failing,
    shelf: of('W-130 A', 'W-165 A', 'T-25 A', 'T-28 B'),
    drivers: ['Woofer', 'Tweeter'],
    settings: [{ ...named(failing, 'HandOver'), values: [1500, 2500] }],
    cost: 'money',
    changes: 2,
    orCaution: true,
  };

  test.each(['money', 'changes'] as const)(
    'costs what the least of all sets costs, by %s',
    async (cost) => {
      const { found, failing: broken } = await answered({ ...question, cost });
      expect(broken.length).toBeGreaterThan(0);
      const wanted = await byForce({ ...question, cost });
      expect(wanted).toBeDefined();
      expect(found && { money: found.money, changes: found.changes }).toEqual(wanted);
    },
    60_000,
  );

  test('tells step by step what each change turns, and the sheet agrees', async () => {
    const { found, said } = await answered(question);
    expect(found?.steps.length).toBe(found?.changes);
    const texts = found?.steps.flatMap(({ change }) => change.texts) ?? [];
    const after = await judged(written(failing, texts));
    expect(after).not.toContain('fail');
    expect(found?.steps.flatMap(({ flips }) => flips).some(({ from }) => from === 'fail')).toBe(true);
    expect(said).toMatch(/^Found: .* in place of .*within these nothing costs less in which every change is needed/);
  });

  test('a part takes the value of a shop, and nothing is called found where nothing serves', async () => {
    const document = documentOf({
      A1: { text: '8.2 Ω', range: ['1 Ω', '30 Ω'] },
      B1: '=CHECK.AT_MOST(A1,5.5 Ω,5.5 Ω,"It","Less.")',
      B2: '=CHECK.AT_LEAST(A1,4.8 Ω,4.8 Ω,"It","More.")',
    });
    const { inputs } = subjectOf(document, () => undefined);
    const inSeries = (series: string): CheapestQuestion => ({
      ...question,
      document,
      drivers: [],
      settings: inputs.map((input) => ({ sheet: input.sheet, cell: input.cell, values: typedValues(series, input) })),
    });
    const { found, isWhole } = await answered(inSeries('E24'));
    expect(found?.steps[0]?.change.texts).toEqual([{ ...at('A1'), text: '5.1 Ω' }]);
    expect(isWhole).toBe(true);
    const none = await answered(inSeries('E12'));
    expect(none.found).toBeUndefined();
    expect(none.said).toContain('All');
    expect(none.nearest?.left).toHaveLength(1);
  });

  test('a driver costs what a pair of it costs more than of the one in its place; a setting without a price counts as 0, and says so', async () => {
    const { found, said, unpriced, whole } = await answered(question);
    const names = found?.steps.map(({ change: { words } }) => words) ?? [];
    const priceOf = (name: string): number => {
      const driver = driverOf(shelf.find((each) => each.name === name) ?? { name, rows: [] });
      return driver instanceof Problem ? Number.NaN : (driver.price ?? Number.NaN);
    };
    const presents = failing.sheets[0]?.cells;
    const priceIn = (cell: string): number => Number(parseQuantity(presents?.get(cell)?.text ?? '')?.value);
    expect(priceIn('B19')).toBeGreaterThan(0);
    const wanted = names.reduce((sum, words) => {
      const [, place, name] = /^(Woofer|Tweeter): (.+) in place of/.exec(words) ?? [];
      return place && name ? sum + 2 * (priceOf(name) - priceIn(place === 'Woofer' ? 'B19' : 'C19')) : sum;
    }, 0);
    expect(found?.money).toBeCloseTo(wanted, 9);
    expect(unpriced).toHaveLength(1);
    expect(whole).toEqual([]);
    expect(said).toContain(`${unpriced[0] ?? ''} counted as 0: no price is given.`);
  });

  test('parts cost what their formulas say of the number in their unit: the least of all combinations', async () => {
    const values = { A1: [1, 1.5, 2.2, 3.3, 4.7, 6.8], A2: [4.7, 6.8, 10, 15, 22, 33] };
    const document = documentOf({
      A1: { text: '2.2 mH', range: ['1 mH', '7 mH'] },
      A2: { text: '10 µF', range: ['4 µF', '40 µF'] },
      B1: '=CHECK.AT_LEAST(A1/1 mH*(A2/1 µF),70,70,"Together","More.")',
      B2: '=CHECK.AT_MOST(A1/1 mH,5,5,"Coil","Less.")',
    });
    const prices = { A1: '4 + 0.9 * value^2', A2: 'ROUND(1 + value / 4, 1)' };
    const { found, unpriced } = await answered({
      ...question,
      document,
      drivers: [],
      settings: [
        { ...at('A1'), values: values.A1.map((each) => each * 1e-3), price: prices.A1 },
        { ...at('A2'), values: values.A2.map((each) => each * 1e-6), price: prices.A2 },
      ],
    });
    const costOf = (coil: number, capacitor: number): number =>
      4 + 0.9 * coil ** 2 + Math.round(10 * (1 + capacitor / 4)) / 10;
    const serves = (coil: number, capacitor: number): boolean => coil * capacitor >= 70 && coil <= 5;
    // Both are changed only where neither alone serves.
    const isNeeded = (coil: number, capacitor: number): boolean =>
      coil === 2.2 || capacitor === 10 || !(serves(coil, 10) || serves(2.2, capacitor));
    const all = values.A1.flatMap((coil) =>
      values.A2.flatMap((capacitor) =>
        serves(coil, capacitor) && isNeeded(coil, capacitor) ? [costOf(coil, capacitor)] : [],
      ),
    );
    expect(found?.money).toBeCloseTo(2 * (Math.min(...all) - costOf(2.2, 10)), 9);
    expect(unpriced).toEqual([]);
    const priced = (price: string) => ({
      ...question,
      document,
      drivers: [],
      settings: [{ ...at('A1'), values: [3e-3], price }],
    });
    await expect(answered(priced('4 +'))).rejects.toThrow('write a formula of value, the number in mH, such as');
    await expect(answered(priced('LN(value-9)'))).rejects.toThrow('no number at');
  });

  test('a price of the sheet is made least, whatever it counts', async () => {
    // Larger settings cost more by the sheet; together they must reach 10.
    const document = documentOf({
      A1: { text: '1', range: ['1', '9'] },
      A2: { text: '1', range: ['1', '9'] },
      B1: '=CHECK.AT_LEAST(A1+A2,10,10,"Together","More.")',
      B2: '=A1^2+2*A2+A2^2',
    });
    const values = [1, 2, 3, 4, 5, 6, 7, 8, 9];
    const settings = ['A1', 'A2'].map((cell) => ({ ...at(cell), values }));
    const { found, counting, said } = await answered({ ...question, document, drivers: [], settings, cost: at('B2') });
    const all = values.flatMap((x) => values.flatMap((y) => (x + y >= 10 ? [x ** 2 + 2 * y + y ** 2] : [])));
    expect(found?.counted).toBe(Math.min(...all));
    expect(counting?.present).toEqual({ kind: 'number', value: 4 });
    expect(said).toMatch(/^Found: .* All 80 sets .* the least 1 \(B2\)\.$/);
    await expect(answered({ ...question, document, drivers: [], settings, cost: at('B1') })).rejects.toThrow(
      'no number',
    );
  });

  test('nothing is done to a sheet where nothing fails; what is not there is refused; one given up ends', async () => {
    expect((await answered({ ...question, document: starter })).said).toMatch(/^Nothing fails/);
    await expect(answered({ ...question, drivers: ['Horn'] })).rejects.toThrow('No driver of this document');
    await expect(answered({ ...question, changes: 9 })).rejects.toThrow('one to four');
    const control = new AbortController();
    control.abort();
    await expect(answered(question, control.signal)).rejects.toThrow('given up');
  });
});
