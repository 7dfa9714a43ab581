/** What one wants to know, in the order of a build: the groups of the gallery. */
export const templateGroups = [
  'Will they work together?',
  'Which box?',
  'How loud?',
  'From parts to wood',
  'Check and learn',
] as const;

export type TemplateGroup = (typeof templateGroups)[number];

/** A starter sheet. The id is the name of its file. */
interface Listed {
  readonly id: string;
  readonly group: TemplateGroup;
}

/** The starter sheets in the order of a build: first the drivers, then their boxes. */
export const templateList: readonly Listed[] = [
  { id: 'two-driver-check', group: 'Will they work together?' },
  { id: 'shortlist-grid', group: 'Will they work together?' },
  { id: 'three-way-team', group: 'Will they work together?' },
  { id: 'many-cones', group: 'Will they work together?' },
  { id: 'mains-and-sub', group: 'Will they work together?' },
  { id: 'closed-box-bench', group: 'Which box?' },
  { id: 'vented-box', group: 'Which box?' },
  { id: 'loud-enough', group: 'How loud?' },
  { id: 'shopping-basket', group: 'From parts to wood' },
  { id: 'datasheet-detective', group: 'Check and learn' },
  { id: 'own-bench-data', group: 'Check and learn' },
  { id: 'drift', group: 'Check and learn' },
  { id: 'front-panel', group: 'From parts to wood' },
  { id: 'first-crossover', group: 'From parts to wood' },
  { id: 'saw-list', group: 'From parts to wood' },
  { id: 'first-speaker', group: 'Check and learn' },
];
