import { define } from '../define.ts';
import type { TableRecord } from '../values/table.ts';
import { frequency, pass } from './parameters.ts';
import { allSlopes, sectionsOf, slopeWords } from './slope.ts';

export const filterSections = define({
  name: 'FILTER.SECTIONS',
  summary: 'The sections of an active filter: frequency and Q of each, to be set one by one.',
  parameters: { frequency, slope: { choice: allSlopes, summary: 'family and order' }, pass },
  returns: { record: 'table', summary: 'Section, Order, Frequency and Q; a first-order section has no Q' },
  source: { source: 'linkwitz1976', at: 'squared Butterworth filters; poles of the others by their polynomials' },
  example: {
    formula: '=TABLE.AT(FILTER.SECTIONS("2 kHz", "BW4", "low"), 2, "Q", 1)',
    gives: 1.307,
  },
  remarks: `A Q above 0.71 peaks on its own: put that section behind the others, so that it does not clip. All sections in a row give what FILTER.SLOPE shows. ${slopeWords}`,
  compute(given): TableRecord {
    const sections = sectionsOf(given.slope).toSorted((one, other) => (one.q ?? 0) - (other.q ?? 0));
    return {
      kind: 'table',
      title: `Sections of a ${given.slope} ${given.pass}-pass`,
      columns: [
        { name: 'Section', quantity: 'ratio' },
        { name: 'Order', quantity: 'ratio' },
        { name: 'Frequency', quantity: 'frequency' },
        { name: 'Q', quantity: 'ratio' },
      ],
      rows: sections.map(({ at, q }, index) => [
        index + 1,
        q === undefined ? 1 : 2,
        given.pass === 'low' ? given.frequency * at : given.frequency / at,
        q ?? null,
      ]),
    };
  },
});
