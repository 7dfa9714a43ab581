/** Twice the distance from 1 to the next double. */
const digits = 2 * Number.EPSILON;

/**
 * The root of a continuous function between two places where its sign differs, to the last digits of a double;
 * `undefined` where the signs agree or are not numbers. Chandrupatla's method: through the last three places where they
 * bend little, by halves where they do not, so that it never needs many more steps than bisection (Advances in Engineering
 * Software 28, 1997).
 */
export function bracketedRoot(value: (x: number) => number, from: number, to: number): number | undefined {
  let [here, other, before] = [to, from, to];
  let atOther = value(other);
  let atHere = value(here);
  let atBefore = atHere;
  if (atOther === 0) return other;
  if (atHere === 0) return here;
  if (!(atOther < 0 !== atHere < 0) || Number.isNaN(atOther) || Number.isNaN(atHere)) return undefined;
  let share = 0.5;
  for (let step = 0; step < 200; step += 1) {
    const next = here + share * (other - here);
    const atNext = value(next);
    if (atNext === 0) return next;
    [before, atBefore] = [here, atHere];
    if (atNext < 0 !== atHere < 0) [before, atBefore, other, atOther] = [other, atOther, here, atHere];
    [here, atHere] = [next, atNext];
    const best = Math.abs(atHere) < Math.abs(atOther) ? here : other;
    const least = (digits * Math.abs(best) + Number.MIN_VALUE) / Math.abs(other - here);
    if (least > 0.5) return best;
    share = Math.min(Math.max(shareBy(here, other, before, atHere, atOther, atBefore), least), 1 - least);
  }
  return here;
}

/** How far to go from the last place to the other one: by the parabola through three values where it rises or falls
 *  throughout, otherwise half. */
function shareBy(a: number, b: number, c: number, atA: number, atB: number, atC: number): number {
  const place = (a - b) / (c - b);
  const height = (atA - atB) / (atC - atB);
  const isTame = height * height < place && (1 - height) * (1 - height) < 1 - place;
  if (!isTame) return 0.5;
  return (atA / (atB - atA)) * (atC / (atB - atC)) + ((c - a) / (b - a)) * (atA / (atC - atA)) * (atB / (atC - atB));
}
