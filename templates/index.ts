import closedBoxBench from './closed-box-bench.json' with { type: 'json' };
import twoDriverCheck from './two-driver-check.json' with { type: 'json' };
import ventedBox from './vented-box.json' with { type: 'json' };

/** The starter sheets in the order of a build: first the drivers, then their boxes. The id is the file's name. */
export const templates = [
  { id: 'two-driver-check', content: twoDriverCheck },
  { id: 'closed-box-bench', content: closedBoxBench },
  { id: 'vented-box', content: ventedBox },
] as const;
