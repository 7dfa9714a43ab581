import { expect } from '@open-wc/testing';
import { createWorkerEngine } from '../../src/engine/client.ts';

const sheet = (cells: Readonly<Record<string, string>>) => [
  { id: 's', name: 'S', cells: new Map(Object.entries(cells)), names: new Map<string, string>() },
];

describe('the engine in its worker', () => {
  it('calculates, and tells which functions it knows', async () => {
    const engine = createWorkerEngine();
    const { cells } = await engine.load(sheet({ A1: '12 L', A2: '=A1*2', A3: '=CLOSED.QTC(0.386, "28.52 L", A1)' }));
    const valueOf = (cell: string) => cells.find((each) => each.cell === cell)?.value;
    expect(valueOf('A2')).to.deep.equal({ kind: 'number', value: 0.024 });
    expect(valueOf('A3')?.kind).to.equal('number');
    const functions = await engine.functions();
    expect(functions.map(({ name }) => name)).to.include('CLOSED.QTC');
    expect(functions.some((each) => 'compute' in each && each.compute !== undefined)).to.equal(false);
    engine.dispose();
  });
});
