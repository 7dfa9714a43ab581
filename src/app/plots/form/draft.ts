import { kinds, type PlotDraft, type SeriesDraft } from '../../../components/plot-form/data.ts';
import type { Plot } from '../../../document/types.ts';

export const emptySeries: SeriesDraft = { cell: '', label: '', line: 'system', column: '', across: '', names: '' };

export const emptyDraft: Omit<PlotDraft, 'id'> = {
  title: '',
  kind: 'curves',
  series: [emptySeries],
  limits: [],
  marks: [],
  horizontal: ['', ''],
  vertical: ['', ''],
  best: ['', ''],
  ground: ['', ''],
};

/** A plot as its form begins. */
export const draftOf = ({ series, ...plot }: Plot): PlotDraft => ({
  ...emptyDraft,
  ...plot,
  series: series.length === 0 ? [emptySeries] : series.map((each) => ({ ...emptySeries, ...each })),
});

/** The plot that a form comes to. What its kind does not ask for is left out, and what was left empty. */
export function plotOf(draft: PlotDraft): Plot {
  const { id, title, kind, limits, marks, horizontal, vertical, best, ground } = draft;
  const fields = kinds[kind];
  const [across, up] = best;
  return {
    id,
    title: title.trim(),
    kind,
    series: draft.series.map((each) => seriesOf(each, kind)),
    limits: fields.limits ? limits : [],
    marks: fields.marks ? marks : [],
    ...(fields.horizontal && horizontal[0] !== '' && horizontal[1] !== '' && { horizontal }),
    ...(fields.vertical && vertical[0] !== '' && vertical[1] !== '' && { vertical }),
    ...(fields.best && across !== '' && up !== '' && { best: [across, up] }),
    ...(fields.ground && ground[0] !== '' && ground[1] !== '' && { ground }),
  };
}

function seriesOf(
  { cell, label, line, column, across, names }: SeriesDraft,
  kind: Plot['kind'],
): Plot['series'][number] {
  const fields = kinds[kind];
  return {
    cell,
    label,
    line,
    ...(fields.area && column !== '' && { column }),
    ...(fields.across && across !== '' && { across }),
    ...(fields.names && names !== '' && { names }),
  };
}
