import type { TourStop } from '../../components/tour/tour-dialog.ts';
import type { Box } from '../../components/tour/place-card.ts';

/** A way to an element through shadow roots, from that of the page on. */
type Way = readonly string[];

interface Stop {
  readonly title: string;
  readonly text: string;
  /** The first of these that can be seen. */
  readonly ways: readonly Way[];
}

const stops: readonly Stop[] = [
  {
    title: 'The sheet',
    text: 'Each row is a number or an answer. Underlined numbers are yours: go to one with the arrows and type over it. All that follows from it is there at once.',
    ways: [['sheet-grid']],
  },
  {
    title: 'The rule',
    text: 'The selected number on its plausible range. Drag it, or hold Alt and press the arrow up or down: sheet and plots follow at once, and Ctrl Z takes it back.',
    ways: [['sheet-head', 'value-ruler'], ['sheet-head']],
  },
  {
    title: 'What was typed',
    text: 'The text behind the cell, with its unit: 132 cm², 0.2 ft³. A formula begins with =; functions, names and cells are offered while you write.',
    ways: [['sheet-head', '.line']],
  },
  {
    title: 'Verdicts',
    text: 'Good, caution, fail, counted over the whole sheet. Each names in its row the limit that decides, and every limit is a cell that you can change.',
    ways: [['.tally']],
  },
  {
    title: 'Plots',
    text: 'They move with the numbers. Arrow keys read the values along a curve aloud; Values gives a table.',
    ways: [['plot-dock', '.plots'], ['plot-dock']],
  },
  {
    title: 'What changed',
    text: 'After each edit, every number that moved and every verdict that turned, the weightiest first. Pin a baseline to see the distance to it instead.',
    ways: [
      ['plot-dock', '.lower'],
      ['plot-dock', 'nav'],
    ],
  },
  {
    title: 'Sheets, starters, documents',
    text: 'The sheets of this document, starter sheets for every question from the box to the saw list, and what is kept on this device. The menu of a sheet takes its numbers over into another.',
    ways: [['sheet-rail'], ['top-bar', '.drawer']],
  },
  {
    title: 'Help',
    text: 'The guide tells of every function where it comes from; Keys lists what the keyboard does. This tour is there, too.',
    ways: [['top-bar', 'pop-menu[label="Help"]']],
  },
];

/** The stops of the tour on the page whose shadow root is given. */
export const tourStops = (page: ParentNode): readonly TourStop[] =>
  stops.map(({ title, text, ways }) => ({
    title,
    text,
    target: () => ways.map((way) => boxOf(page, way)).find((box) => box !== undefined),
  }));

/** Nothing where it is not there, has no size, or lies outside the window. */
function boxOf(page: ParentNode, way: Way): Box | undefined {
  let within: ParentNode | null | undefined = page;
  let element: Element | null | undefined;
  for (const step of way) {
    element = within?.querySelector(step);
    within = element?.shadowRoot;
  }
  const { left = 0, top = 0, right = 0, bottom = 0 } = element?.getBoundingClientRect() ?? {};
  const box = { left: Math.max(0, left), top: Math.max(0, top) };
  const width = Math.min(right, innerWidth) - box.left;
  const height = Math.min(bottom, innerHeight) - box.top;
  return width > 0 && height > 0 ? { ...box, width, height } : undefined;
}
