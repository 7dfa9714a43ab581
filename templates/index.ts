import closedBoxBench from './closed-box-bench.json' with { type: 'json' };
import datasheetDetective from './datasheet-detective.json' with { type: 'json' };
import drift from './drift.json' with { type: 'json' };
import loudEnough from './loud-enough.json' with { type: 'json' };
import firstCrossover from './first-crossover.json' with { type: 'json' };
import firstSpeaker from './first-speaker.json' with { type: 'json' };
import frontPanel from './front-panel.json' with { type: 'json' };
import mainsAndSub from './mains-and-sub.json' with { type: 'json' };
import manyCones from './many-cones.json' with { type: 'json' };
import ownBenchData from './own-bench-data.json' with { type: 'json' };
import shoppingBasket from './shopping-basket.json' with { type: 'json' };
import sawList from './saw-list.json' with { type: 'json' };
import shortlistGrid from './shortlist-grid.json' with { type: 'json' };
import threeWayTeam from './three-way-team.json' with { type: 'json' };
import twoDriverCheck from './two-driver-check.json' with { type: 'json' };
import ventedBox from './vented-box.json' with { type: 'json' };

/** What one wants to know, in the order of a build: the groups of the gallery. */
export const templateGroups = [
  'Will they work together?',
  'Which box?',
  'How loud?',
  'From parts to wood',
  'Check and learn',
] as const;

export type TemplateGroup = (typeof templateGroups)[number];

/** A starter sheet. The id is the file's name. */
interface Template {
  readonly id: string;
  readonly group: TemplateGroup;
  readonly content: { readonly title: string };
}

/** The starter sheets in the order of a build: first the drivers, then their boxes. */
export const templates: readonly Template[] = [
  { id: 'two-driver-check', group: 'Will they work together?', content: twoDriverCheck },
  { id: 'shortlist-grid', group: 'Will they work together?', content: shortlistGrid },
  { id: 'three-way-team', group: 'Will they work together?', content: threeWayTeam },
  { id: 'many-cones', group: 'Will they work together?', content: manyCones },
  { id: 'mains-and-sub', group: 'Will they work together?', content: mainsAndSub },
  { id: 'closed-box-bench', group: 'Which box?', content: closedBoxBench },
  { id: 'vented-box', group: 'Which box?', content: ventedBox },
  { id: 'loud-enough', group: 'How loud?', content: loudEnough },
  { id: 'shopping-basket', group: 'From parts to wood', content: shoppingBasket },
  { id: 'datasheet-detective', group: 'Check and learn', content: datasheetDetective },
  { id: 'own-bench-data', group: 'Check and learn', content: ownBenchData },
  { id: 'drift', group: 'Check and learn', content: drift },
  { id: 'front-panel', group: 'From parts to wood', content: frontPanel },
  { id: 'first-crossover', group: 'From parts to wood', content: firstCrossover },
  { id: 'saw-list', group: 'From parts to wood', content: sawList },
  { id: 'first-speaker', group: 'Check and learn', content: firstSpeaker },
];
