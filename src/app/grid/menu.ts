import type { MenuItem } from '../../components/menu/pop-menu.ts';

/** What can be done with the selected cells, beside the keys. */
export const gridMenu: readonly MenuItem[] = [
  { name: 'open', label: 'Open in full', hint: 'Ctrl I' },
  { name: 'ask', label: 'Ask about this cell…', hint: 'Ctrl Shift F' },
  { name: 'shelf', label: 'Put another driver here…', hint: 'F8' },
  { name: 'plot', label: 'Add a plot of these cells…', hint: 'F9' },
  { name: 'name', label: 'Name these cells…', separated: true },
  { name: 'unnamed', label: 'Take the name away' },
  { name: 'range', label: 'Plausible range of this input…' },
  { name: 'choices', label: 'Choices of this input…' },
  { name: 'unit', label: 'Show in another unit…' },
  { name: 'origin', label: 'Where these numbers come from…' },
  { name: 'looks', label: 'Looks and column titles…' },
  { name: 'csv', label: 'Save these cells as a table (CSV)' },
  { name: 'rows-above', label: 'Insert rows above', separated: true },
  { name: 'columns-before', label: 'Insert columns before' },
  { name: 'delete-rows', label: 'Delete these rows' },
  { name: 'delete-columns', label: 'Delete these columns' },
  { name: 'fill-down', label: 'Fill down', hint: 'Ctrl D', separated: true },
  { name: 'fill-right', label: 'Fill right', hint: 'Ctrl R' },
  { name: 'clear', label: 'Clear', hint: 'Delete' },
];
