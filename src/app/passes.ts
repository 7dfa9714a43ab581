import type { Status } from '../../functions/values/verdict.ts';
import type { RulerPass } from '../components/ruler/value-ruler.ts';
import { verdictIn } from '../document/verdicts.ts';
import type { Workbook } from '../document/workbook.ts';
import type { CellState, Place } from '../engine/types.ts';
import { quantities } from '../../functions/quantities.ts';

const SAMPLES = 32;
/** Each end of a band is then halved this often: 1/32 of the rule becomes 1/2000 of it. */
const HALVINGS = 6;

type Statuses = ReadonlyMap<string, Status>;

/** Where on its rule an input lets the checks that depend on it pass. A check that passes nowhere on the rule is left out,
 *  and the label counts the rest. Gives nothing where `go` says that the answer is no longer wanted. */
export async function passesOf(
  workbook: Workbook,
  place: Place,
  [low, high]: readonly [number, number],
  go: () => boolean,
): Promise<readonly RulerPass[] | undefined> {
  const state = workbook.state(place.sheet, place.cell);
  if (state?.type.kind !== 'number') return undefined;
  const unit = quantities[state.type.quantity ?? 'ratio'].si;
  const isLogarithmic = low > 0 && high / low >= 2;
  const valueAt = (share: number): number => (isLogarithmic ? low * (high / low) ** share : low + (high - low) * share);
  const look = async (share: number): Promise<Statuses> => {
    const cells = await workbook.probe(place, `${String(Number(valueAt(share).toPrecision(12)))} ${unit}`.trim());
    return new Map(cells.flatMap((cell) => pair(cell)));
  };

  const seen: Statuses[] = [];
  for (let index = 0; index <= SAMPLES; index++) {
    if (!go()) return undefined;
    seen.push(await look(index / SAMPLES));
  }
  const now = (key: string): Status | undefined => {
    const [sheet = '', cell = ''] = key.split('!');
    return verdictIn(workbook.state(sheet, cell))?.status;
  };
  const all = new Set(seen.flatMap((statuses) => [...statuses.keys()]));
  const isGood = (statuses: Statuses, key: string): boolean => (statuses.get(key) ?? now(key)) === 'good';
  const able = [...all].filter((key) => seen.some((statuses) => isGood(statuses, key)));
  if (able.length === 0) return [];
  const passes = (statuses: Statuses): boolean => able.every((key) => isGood(statuses, key));

  const edge = async (passing: number, failing: number): Promise<number | undefined> => {
    for (let step = 0; step < HALVINGS; step++) {
      if (!go()) return undefined;
      const middle = (passing + failing) / 2;
      if (passes(await look(middle))) passing = middle;
      else failing = middle;
    }
    return passing;
  };
  const of = all.size === able.length ? '' : ` of ${String(all.size)}`;
  const label = `${checks(able.length)}${of} ${able.length === 1 ? 'passes' : 'pass'}`;
  const bands: RulerPass[] = [];
  for (const [first, last] of runs(seen.map(passes))) {
    const from = first === 0 ? 0 : await edge(first / SAMPLES, (first - 1) / SAMPLES);
    const to = last === SAMPLES ? 1 : await edge(last / SAMPLES, (last + 1) / SAMPLES);
    if (from === undefined || to === undefined) return undefined;
    bands.push({ from: valueAt(from), to: valueAt(to), label });
  }
  return bands;
}

const pair = (cell: CellState): [string, Status][] => {
  const status = verdictIn(cell)?.status;
  return status ? [[`${cell.sheet}!${cell.cell}`, status]] : [];
};

const checks = (count: number): string => (count === 1 ? '1 check' : `${String(count)} checks`);

/** First and last index of each unbroken run of truths. */
function runs(flags: readonly boolean[]): [number, number][] {
  const found: [number, number][] = [];
  for (const [index, flag] of flags.entries()) {
    const last = found.at(-1);
    if (!flag) continue;
    if (last?.[1] === index - 1) last[1] = index;
    else found.push([index, index]);
  }
  return found;
}
