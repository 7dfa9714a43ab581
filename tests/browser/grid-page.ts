import { fixture, html } from '@open-wc/testing';
import '../../src/app/fonts/faces.css';
import type { Curve } from '../../functions/values/curve.ts';
import { frequencies } from '../../functions/values/grid.ts';
import '../../src/components/grid/sheet-grid.ts';
import type { GridModel, Selection } from '../../src/components/grid/model.ts';
import type { SheetGrid } from '../../src/components/grid/sheet-grid.ts';
import type { ShownCell } from '../../src/document/shown.ts';
import type { Cell, Column } from '../../src/document/types.ts';
import { formatAddress, parseAddress } from '../../src/formula/address.ts';

/** A model of cells by address, to be changed by a test. */
export interface TestModel extends GridModel {
  readonly cells: Map<string, Cell>;
  readonly looks: Map<string, ShownCell>;
  readonly was: Map<string, string>;
  readonly findings: Map<string, 'error' | 'doubt'>;
}

export const curve = {
  kind: 'curve',
  title: 'Woofer, on axis',
  quantity: 'level',
  y: Float64Array.from(frequencies, (frequency) => 86 - 20 * Math.log10(1 + (60 / frequency) ** 2)),
} as unknown as Curve;

const drawn: readonly [string, Cell, ShownCell?][] = [
  ['A1', { text: 'Drivers', look: 'section' }],
  ['A2', { text: 'Nominal impedance' }],
  ['B2', { text: '8 ohm' }, { kind: 'number', number: '8', unit: 'Ω' }],
  ['C2', { text: '6 ohm' }, { kind: 'number', number: '6', unit: 'Ω' }],
  ['A3', { text: 'Lowest impedance' }],
  ['B3', { text: '=B2*0.775' }, { kind: 'number', number: '6.2', unit: 'Ω' }],
  ['C3', { text: '=C2*0.83' }, { kind: 'number', number: '5.0', unit: 'Ω' }],
  [
    'D3',
    { text: '=CHECK(B3)' },
    { kind: 'verdict', status: 'caution', word: 'Caution', reason: '3.6 Ω is below 4 Ω.', note: '' },
  ],
  ['A4', { text: 'Response' }],
  ['B4', { text: '=CURVE()' }, { kind: 'curve', curve, text: 'Woofer, on axis: 86 dB at 1 kHz' }],
  ['A5', { text: 'Driver' }],
  ['B5', { text: '=DRIVER()' }, { kind: 'record', title: 'W-165 A', text: 'W-165 A, fs 38 Hz, Qts 0.35' }],
  ['C5', { text: '=B5/0' }, { kind: 'problem', message: 'The divisor is 0: give another one.' }],
  ['D5', { text: '=B5' }, { kind: 'waiting', text: '12 L' }],
  ['A6', { text: 'Travel' }],
  ['B6', { text: '11 mm p-p' }, { kind: 'number', number: '11', unit: 'mm p-p' }],
  ['B7', { text: '0.4' }, { kind: 'number', number: '0.4', unit: '' }],
];

const columns: readonly Column[] = [
  { width: 200, title: 'Quantity' },
  { width: 130, title: 'Woofer', line: 'woofer' },
  { width: 130, title: 'Tweeter', line: 'tweeter' },
  { width: 260, title: 'Verdict', line: 'system' },
  ...Array.from({ length: 46 }, () => ({ width: 90 })),
];

export function testModel(rows = 100_000): TestModel {
  const cells = new Map(drawn.map(([address, cell]) => [address, cell]));
  const looks = new Map(drawn.flatMap(([address, , look]) => (look ? [[address, look] as const] : [])));
  const was = new Map<string, string>();
  const findings = new Map<string, 'error' | 'doubt'>();
  return {
    cells,
    looks,
    was,
    findings,
    rows,
    columns,
    cell: (row, column) => cells.get(formatAddress({ row, column })),
    shown: (row, column) => {
      const address = formatAddress({ row, column });
      const text = cells.get(address)?.text;
      return looks.get(address) ?? (text === undefined ? { kind: 'empty' } : { kind: 'text', text });
    },
    before: (row, column) => was.get(formatAddress({ row, column })),
    finding: (row, column) => findings.get(formatAddress({ row, column })),
    tally: () => ({ good: 3, caution: 1, fail: 0 }),
  };
}

/** A grid on the page with what it told, oldest first. */
export class GridPage {
  readonly grid: SheetGrid;
  readonly model: TestModel;
  readonly told: [string, unknown][] = [];

  constructor(grid: SheetGrid, model: TestModel) {
    this.grid = grid;
    this.model = model;
    const names = ['cell-commit', 'formula-start', 'clear', 'fill', 'nudge', 'column-resize', 'menu'];
    for (const name of names)
      grid.addEventListener(name, (event) => this.told.push([name, (event as CustomEvent<unknown>).detail]));
  }

  static async open(model = testModel()): Promise<GridPage> {
    const frame = await fixture(html`
      <div style="position: relative; width: 800px; height: 480px">
        <sheet-grid style="position: absolute; inset: 0" label="Two drivers" .model=${model}></sheet-grid>
      </div>
    `);
    const grid = frame.querySelector('sheet-grid')!;
    await grid.updateComplete;
    grid.focus();
    return new GridPage(grid, model);
  }

  get root(): ShadowRoot {
    return this.grid.shadowRoot!;
  }

  get scroller(): HTMLElement {
    return this.root.querySelector('[role=grid]')!;
  }

  get input(): HTMLInputElement | null {
    return this.root.querySelector('input.inline');
  }

  /** The element that shows a cell; there may be only one. */
  cell(address: string): HTMLElement | undefined {
    const found = [...this.root.querySelectorAll<HTMLElement>(`#cell-${address}`)];
    if (found.length > 1) throw new Error(`${address} is shown ${String(found.length)} times.`);
    return found[0];
  }

  /** The number that is seen beside the row of a cell. */
  rowHead(address: string): HTMLElement {
    const row = String(parseAddress(address)!.row + 1);
    return [...this.root.querySelectorAll<HTMLElement>('.rowhead')].find((each) => each.textContent === row)!;
  }

  /** What a screen reader reads of a cell: its text without drawings, hidden parts included. */
  said(address: string): string {
    return (this.cell(address)?.textContent ?? '').replaceAll(/\s+/g, ' ').trim();
  }

  /** The cells that the pool shows. */
  get shown(): HTMLElement[] {
    return [...this.root.querySelectorAll<HTMLElement>('.cell')].filter((each) => each.checkVisibility());
  }

  /** The active cell and, where more is selected, the far corner: `B4` or `B4:C6` from the active one. */
  get selected(): string {
    const { focus, anchor } = this.grid.selection;
    const [active, far] = [formatAddress(focus), formatAddress(anchor)];
    return active === far ? active : `${active}:${far}`;
  }

  /** Selects as a caller does. */
  async select(cells: string): Promise<void> {
    const [focus, anchor = focus] = cells.split(':').map((address) => parseAddress(address)!);
    this.grid.selection = { focus, anchor } as Selection;
    await this.grid.updateComplete;
  }

  /** The middle of a cell or of another element, for the mouse. */
  middle(of: string | Element): [number, number] {
    const element = typeof of === 'string' ? this.cell(of)! : of;
    const { left, top, width, height } = element.getBoundingClientRect();
    return [Math.round(left + width / 2), Math.round(top + height / 2)];
  }

  /** Until the next frame is drawn, scroll events and resizing included. */
  async drawn(): Promise<void> {
    await this.grid.updateComplete;
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame);
  }
}
