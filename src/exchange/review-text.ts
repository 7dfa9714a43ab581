import { originWords } from '../document/origin-words.ts';
import type { Review, ReviewSection, ReviewVerdict } from '../document/review/types.ts';
import type { Plot } from '../document/types.ts';

/** A review as plain text for a forum: short lines, no mark-up, one thing after the other. */
export function reviewText(review: Review): string {
  const { title, sheet, summary, made, counts, doubts, assumptions, notes, sources } = review;
  const parts = [
    [
      sheet === title ? title : `${title}, ${sheet}`,
      summary,
      `${made.slice(0, 10)}: ${counts.fail} fail, ${counts.caution} caution, ${counts.good} good`,
    ].filter(Boolean),
    under('Verdicts', review.verdicts.flatMap(verdictLines)),
    under('Open doubts', doubts.map(asItem)),
    under('Inputs', review.inputs.flatMap(sectionLines)),
    under('Results', review.results.flatMap(sectionLines)),
    under('Plots', review.plots.map(plotLine)),
    under('Where the numbers come from', review.origins.map(originLine)),
    under('Taken for granted', assumptions.map(asItem)),
    under('Rules of thumb, common practice without a source', review.rules.map(asItem)),
    under('Notes', notes.map(asItem)),
    under(
      'Sources',
      sources.map(({ title: source, functions }) => `- ${source}: ${functions.join(', ')}`),
    ),
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

const asItem = (text: string): string => `- ${text}`;

const under = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [heading.toUpperCase(), ...lines];

/** What stands between a label and what is told of it. */
const after = (label: string): string => (label.endsWith('?') ? '' : ':');

function verdictLines({ label, status, word, reason, note, limits }: ReviewVerdict): string[] {
  const held = limits.length === 0 ? [] : [`  Held against: ${limits.join(', ')}`];
  return [
    `- ${status.toUpperCase()} ${label}${after(label)} ${word.toLowerCase() === status ? reason : `${word}. ${reason}`}`,
    ...(note === '' ? [] : [`  ${note}`]),
    ...held,
  ];
}

/** `- Resonance Fs: Woofer 38 Hz, Tweeter 850 Hz`; a column that stands alone needs no name. */
function sectionLines({ title, columns, rows }: ReviewSection): string[] {
  const lines = rows.map(({ label, cells }) => {
    const told = cells.flatMap(({ text }, index) =>
      text === '' ? [] : [columns.length > 1 ? `${columns[index] ?? ''} ${text}` : text],
    );
    return asItem([label, told.join(', ')].filter(Boolean).join(': '));
  });
  return title === '' ? lines : [title, ...lines];
}

function plotLine({ title, series, limits, marks }: Plot): string {
  const limited = limits.map(({ label, forbidden }) => `${label} (not ${forbidden})`);
  const marked = marks.map(({ label }) => `${label} marked`);
  return asItem(`${title}: ${[...series.map(({ label }) => label), ...limited, ...marked].join(', ')}`);
}

const originLine = ({ origin, inputs }: Review['origins'][number]): string =>
  asItem(`${origin === 'unstated' ? 'not stated' : originWords[origin]}: ${inputs.join(', ')}`);
