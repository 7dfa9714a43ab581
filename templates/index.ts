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

import { templateList } from './list.ts';

/** By the names of their files. */
const contents: Readonly<Record<string, { readonly title: string }>> = {
  'two-driver-check': twoDriverCheck,
  'shortlist-grid': shortlistGrid,
  'three-way-team': threeWayTeam,
  'many-cones': manyCones,
  'mains-and-sub': mainsAndSub,
  'closed-box-bench': closedBoxBench,
  'vented-box': ventedBox,
  'loud-enough': loudEnough,
  'shopping-basket': shoppingBasket,
  'datasheet-detective': datasheetDetective,
  'own-bench-data': ownBenchData,
  drift: drift,
  'front-panel': frontPanel,
  'first-crossover': firstCrossover,
  'saw-list': sawList,
  'first-speaker': firstSpeaker,
};

/** The starter sheets with what they hold, for programs that read it from this folder; the page fetches a sheet when it is wanted. */
export const templates = templateList.flatMap(({ id, group }) => {
  const content = contents[id];
  return content ? [{ id, group, content }] : [];
});
