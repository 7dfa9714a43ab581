import type { Answer, Choices, FieldData, Wish } from '../../src/components/ask/data.ts';

export const wish: Wish = {
  kind: 'seek',
  result: 's!C3',
  target: '0.707',
  input: { id: 's!B1', from: '1 L', to: '300 L' },
  second: { id: 's!B2', from: '20 Hz', to: '60 Hz' },
  steps: '41',
  isWhole: false,
  spreads: [{ id: 's!B9', label: 'Woofer', texts: [{ name: 'cms', label: 'compliance', text: '12 %' }] }],
  runs: '1000',
  seed: '1',
  given: '',
  limits: [],
  varied: [{ id: 's!B1', label: 'Net volume', from: '1 L', to: '300 L', values: '8 L, 10 L' }],
  settings: [{ id: 's!B1', label: 'Net volume', from: '1 L', to: '300 L', values: 'E12' }],
  aim: 'least',
  band: ['50 Hz', '200 Hz'],
  keep: 'good',
  listed: ['s!C3'],
  order: 'least',
  rows: '20',
  drivers: ['Woofer'],
  isOwnShelf: false,
  cost: 'money',
  changes: '2',
};

export const choices: Choices = {
  inputs: [
    { id: 's!B1', label: 'Net volume (B1)', group: 'Box' },
    { id: 's!B2', label: 'Resonance Fs (B2)', group: 'Box' },
  ],
  results: [{ id: 's!C3', label: 'Damping Qtc (C3)', group: 'Box' }],
  spreads: [],
  varied: [{ id: 's!B2', label: 'Resonance Fs (B2)', group: 'Box' }],
  listed: [],
  numbers: [],
  drivers: ['Woofer', 'Tweeter'],
  costs: [{ id: 'money', label: 'money', group: 'Counted' }],
  isVerdict: false,
  unit: '',
};

export const setting = (column: number, row: number) => [
  { sheet: 's', cell: 'B1', label: 'Net volume', text: `${column} L` },
  { sheet: 's', cell: 'B2', label: 'Resonance Fs', text: `${row} Hz` },
];

export const field: FieldData = {
  title: 'Qtc by volume and Fs',
  across: { label: 'Net volume', quantity: 'volume', from: 0.001, to: 0.003 },
  up: { label: 'Resonance Fs', quantity: 'frequency', from: 20, to: 40 },
  lines: [
    {
      points: [
        [0.001, 20],
        [0.002, 30],
        [0.003, 40],
      ],
      label: '0.7',
    },
  ],
  good: [
    [
      [0.001, 20],
      [0.002, 30],
    ],
  ],
  columns: [0.001, 0.002, 0.003],
  rows: [20, 30, 40],
  present: [0.001, 20],
  reading: (column, row) => `column ${column}, row ${row}`,
  settings: setting,
};

export const answer: Answer = {
  said: 'Found.',
  found: [{ words: 'Net volume 12.1 L', consequence: 'Qtc 0.707', sets: setting(1, 2) }],
  field,
  bars: [
    {
      title: 'Shares',
      rows: [
        { label: 'Compliance', share: 0.75, text: '75 %', place: { sheet: 's', cell: 'B4' } },
        { label: 'good', share: 0.25, text: '25 %', status: 'good' },
      ],
    },
  ],
  tree: {
    sheet: 's',
    cell: 'C3',
    label: 'Qtc',
    text: 'C3',
    branches: [{ sheet: 's', cell: 'B1', label: 'Net volume', text: 'B1', branches: [] }],
  },
  steps: [
    {
      words: 'Woofer: A in place of B',
      turns: [{ sheet: 's', cell: 'E2', label: 'Travel', text: 'fail → good', reason: 'Good: enough.' }],
    },
    { words: 'Gap: 4 mm in place of 10 mm', turns: [] },
  ],
  tables: [
    {
      sets: [setting(1, 2), setting(1, 3)],
      table: {
        kind: 'table',
        title: 'Value by value',
        columns: [{ name: 'Net volume', quantity: 'volume' }],
        rows: [[0.0121], [null]],
      },
    },
    { table: { kind: 'table', title: 'Only kept', columns: [], rows: [] }, isForSheet: true },
  ],
  note: '',
};
