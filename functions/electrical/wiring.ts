import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';

/** How units are joined: one unit, or several wirings in series or in parallel. */
export type Wiring =
  | { readonly kind: 'unit'; readonly unit: number }
  | { readonly kind: 'series' | 'parallel'; readonly parts: readonly Wiring[] };

/** The numbers of all units, left to right. */
export const unitsOf = (wiring: Wiring): readonly number[] =>
  wiring.kind === 'unit' ? [wiring.unit] : wiring.parts.flatMap(unitsOf);

/** As one writes it: `1+2 | 3+4`, series before parallel. */
export function wiringText(wiring: Wiring): string {
  if (wiring.kind === 'unit') return String(wiring.unit);
  if (wiring.kind === 'parallel') return wiring.parts.map(wiringText).join(' | ');
  return wiring.parts.map((part) => (part.kind === 'parallel' ? `(${wiringText(part)})` : wiringText(part))).join('+');
}

/** Joins parts, flattening what is of the same kind. */
export function joined(kind: 'series' | 'parallel', parts: readonly Wiring[]): Wiring {
  if (parts.length === 1) return parts[0]!;
  return { kind, parts: parts.flatMap((part) => (part.kind === kind ? part.parts : [part])) };
}

const syntax = (text: string): Problem =>
  new Problem(
    say`“${text}” is no wiring; write + for series, | for parallel and brackets, as in 1+2 | 3+4, with each unit by its number.`,
    'wiring',
  );

/** Reads a wiring of `count` units, each of which must stand in it once. */
export function readWiring(text: string, count: number): Wiring | Problem {
  const tokens = text.replaceAll('||', '|').match(/\d+|[+|()]|\S/g) ?? [];
  let at = 0;
  const list = (kind: 'series' | 'parallel', sign: string, inner: () => Wiring | undefined): Wiring | undefined => {
    const parts: Wiring[] = [];
    do {
      const part = inner();
      if (!part) return undefined;
      parts.push(part);
    } while (tokens[at] === sign && (at += 1) > 0);
    return joined(kind, parts);
  };
  const whole = (): Wiring | undefined => list('parallel', '|', () => list('series', '+', single));
  const single = (): Wiring | undefined => {
    const token = tokens[at] ?? '';
    at += 1;
    if (/^\d+$/.test(token)) return { kind: 'unit', unit: Number(token) };
    if (token !== '(') return undefined;
    const inner = whole();
    at += 1;
    return tokens[at - 1] === ')' ? inner : undefined;
  };
  const wiring = tokens.length > 200 ? undefined : whole();
  if (!wiring || at < tokens.length) return syntax(text);
  const units = [...unitsOf(wiring)].sort((one, other) => one - other);
  if (units.length === count && units.every((unit, index) => unit === index + 1)) return wiring;
  return new Problem(
    say`“${text}” must name each of the ${String(count)} units given once, from 1 to ${String(count)}.`,
    'wiring',
  );
}
