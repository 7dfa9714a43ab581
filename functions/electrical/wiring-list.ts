import { joined, wiringText, type Wiring } from './wiring.ts';

type Joint = 'series' | 'parallel';
const other = { series: 'parallel', parallel: 'series' } as const;

/** Shapes of one size, made of like units that all carry the number 0; those of each kind of joint apart. */
type Shapes = Readonly<Record<Joint, readonly Wiring[]>>;

const unit: Wiring = { kind: 'unit', unit: 0 };

/** Ways of writing a number as two or more parts, none above the one before. */
function partitions(total: number, most: number): readonly (readonly number[])[] {
  if (total === 0) return [[]];
  const found: (readonly number[])[] = [];
  for (let first = Math.min(total, most); first >= 1; first -= 1)
    for (const rest of partitions(total - first, first)) found.push([first, ...rest]);
  return found;
}

/** Choices of one shape for each size, without regard to the order among equal sizes. */
function choices(sizes: readonly number[], of: (size: number) => readonly Wiring[]): readonly (readonly Wiring[])[] {
  const extend = (place: number, least: number): readonly (readonly Wiring[])[] => {
    const size = sizes[place];
    if (size === undefined) return [[]];
    const all = of(size);
    const from = sizes[place - 1] === size ? least : 0;
    return all.slice(from).flatMap((shape, index) => extend(place + 1, from + index).map((rest) => [shape, ...rest]));
  };
  return extend(0, 0);
}

/** Every series-parallel shape of so many like units: 1, 2, 4, 10, 24, 66, 180, 522. */
function shapesOf(count: number): readonly Wiring[] {
  const sizes: Shapes[] = [{ series: [], parallel: [] }];
  for (let size = 1; size <= count; size += 1) {
    const made = (kind: Joint): readonly Wiring[] =>
      size === 1
        ? [unit]
        : partitions(size, size - 1).flatMap((parts) =>
            choices(parts, (part) => sizes[part]![other[kind]]).map((shapes) => joined(kind, shapes)),
          );
    sizes.push({ series: made('series'), parallel: made('parallel') });
  }
  const last = sizes[count]!;
  return count === 1 ? last.series : [...last.series, ...last.parallel];
}

/** The same shape with the units numbered from left to right. */
function numbered(shape: Wiring): Wiring {
  let next = 0;
  const walk = (each: Wiring): Wiring =>
    each.kind === 'unit' ? { kind: 'unit', unit: (next += 1) } : { kind: each.kind, parts: each.parts.map(walk) };
  return walk(shape);
}

/** Every wiring of like units, numbered from left to right. */
export const likeWirings = (count: number): readonly Wiring[] => shapesOf(count).map(numbered);

/** Splits of units into two or more groups; the first unit of each group is its lowest. */
function splits(units: readonly number[]): readonly (readonly (readonly number[])[])[] {
  const [first, ...rest] = units;
  if (first === undefined) return [[]];
  return splits(rest).flatMap((groups) => [
    [[first], ...groups],
    ...groups.map((group, at) => groups.map((each, index) => (index === at ? [first, ...group] : each))),
  ]);
}

/** Every wiring of units that are told apart by a class each: 2, 8, 52, 472 when all differ. Those that only swap like
 *  units stand once. */
export function mixedWirings(classes: readonly number[]): readonly Wiring[] {
  const made = (units: readonly number[], kind: Joint): readonly Wiring[] => {
    if (units.length === 1) return [{ kind: 'unit', unit: units[0]! }];
    return splits(units)
      .filter((groups) => groups.length > 1)
      .flatMap((groups) =>
        groups
          .reduce<readonly (readonly Wiring[])[]>(
            (found, group) => found.flatMap((so) => made(group, other[kind]).map((part) => [...so, part])),
            [[]],
          )
          .map((parts) => joined(kind, parts)),
      );
  };
  const key = (wiring: Wiring): string =>
    wiring.kind === 'unit'
      ? `c${String(classes[wiring.unit - 1])}`
      : `${wiring.kind}(${wiring.parts.map(key).sort().join()})`;
  const units = classes.map((_, index) => index + 1);
  const all = units.length === 1 ? made(units, 'series') : [...made(units, 'series'), ...made(units, 'parallel')];
  const seen = new Map<string, Wiring>();
  for (const wiring of all) if (!seen.has(key(wiring))) seen.set(key(wiring), wiring);
  return [...seen.values()].sort((one, two) => wiringText(one).length - wiringText(two).length);
}
