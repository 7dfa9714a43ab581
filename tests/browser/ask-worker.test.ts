import { expect } from '@open-wc/testing';
import { createWorkerAnalyst } from '../../src/analysis/client.ts';
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
