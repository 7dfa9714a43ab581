import { expect } from '@open-wc/testing';
import { createWorkerAnalyst } from '../../src/analysis/client.ts';
import type { Watch } from '../../src/analysis/subject/types.ts';
import { newDocument } from '../../src/document/create.ts';
import type { OctavoDocument } from '../../src/document/types.ts';

const QTS = 0.386;
const VAS = 28.52;

function bench(): OctavoDocument {
  const empty = newDocument('Bench');
  const [sheet] = empty.sheets;
  if (!sheet) throw new Error('A new document has a sheet.');
  const cells = new Map([
    ['A1', { text: 'Net volume' }],
    ['B1', { text: '20 L', range: ['5 L', '60 L'] as const }],
    ['A2', { text: 'Damping Qtc' }],
    ['B2', { text: `=CLOSED.QTC(${QTS}, "${VAS} L", B1)` }],
  ]);
  return { ...empty, sheets: [{ ...sheet, cells, names: new Map([['Qtc', 'B2']]) }] };
}

describe('questions in their worker', () => {
  it('reads a question in plain words and finds the litres of the closed form', async () => {
    const analyst = createWorkerAnalyst();
    const read = await analyst.read(bench(), 'which litres give Qtc 0.707?');
    if ('wrong' in read || read.kind !== 'seek') throw new Error('It was read as something else.');
    const { found } = await analyst.seek(read.question);
    // Vb = Vas / ((Qtc / Qts)² − 1).
    const litres = VAS / ((0.707 / QTS) ** 2 - 1);
    expect(found).to.have.length(1);
    expect(Number(found[0]?.set.value) * 1000).to.be.closeTo(litres, litres * 1e-4);
    analyst.dispose();
  });

  it('is given up at any moment and answers the next question', async () => {
    const analyst = createWorkerAnalyst();
    const document = bench();
    const [volume, qtc] = ['B1', 'B2'].map((cell) => ({ sheet: document.sheets[0]?.id ?? '', cell }));
    if (!volume || !qtc) throw new Error('There are two cells.');
    const values = Array.from({ length: 3000 }, (_, index) => (index + 1) / 1e5);
    const long = [
      (watch: Watch) => analyst.combine({ document, inputs: [{ ...volume, values }], results: [qtc], most: 9 }, watch),
      (watch: Watch) =>
        analyst.optimise({ document, inputs: [volume], objective: { kind: 'least', result: qtc } }, watch),
      (watch: Watch) =>
        analyst.seek({ document, input: volume, result: qtc, target: { kind: 'number', value: 0.7 } }, watch),
    ];
    for (const [turn, ask] of [...long, ...long, ...long].entries()) {
      const stopping = new AbortController();
      setTimeout(() => stopping.abort(), turn ** 2);
      const outcome = await ask({ signal: stopping.signal }).then(
        () => 'answered',
        (error: Error) => error.name,
      );
      expect(['answered', 'AbortError']).to.include(outcome);
    }
    const { found } = await analyst.optimise({ document, inputs: [volume], objective: { kind: 'least', result: qtc } });
    expect(found?.set[0]?.text).to.equal('60 L');
    analyst.dispose();
  });

  it('gives up a long question at once, and answers the next', async () => {
    const analyst = createWorkerAnalyst();
    const document = bench();
    const sheet = document.sheets[0]?.id ?? '';
    const stopping = new AbortController();
    const question = {
      document,
      input: { sheet, cell: 'B1', from: 0.005, to: 0.06, steps: 10_000, spacing: 'linear' as const },
      results: [{ sheet, cell: 'B2' }],
    };
    const given = analyst.sweep(question, { signal: stopping.signal, progress: () => stopping.abort() });
    const outcome = await given.then(
      () => 'answered',
      (error: Error) => error.name,
    );
    expect(outcome).to.equal('AbortError');
    const { values } = await analyst.sweep({ ...question, input: { ...question.input, steps: 3 } });
    expect(values).to.deep.equal([0.005, 0.0325, 0.06]);
    analyst.dispose();
  });
});
