import { airDensity, halfSpaceWattLevel, soundSpeed, standardVolts } from '../air.ts';

/** The small-signal parameters that determine one another. */
export const linked = ['fs', 'qms', 'qes', 'qts', 'vas', 're', 'sd', 'mms', 'cms', 'rms', 'bl', 'level'] as const;

export type Linked = (typeof linked)[number];
export type Parameters = { [K in Linked]?: number };

/** The same with some put aside. */
export type SomeParameters = { [K in Linked]?: number | undefined };

interface Rule {
  readonly gives: Linked;
  readonly needs: readonly Linked[];
  readonly compute: (a: number, b: number, c: number, d: number) => number;
}

const rule = (
  gives: Linked,
  needs: readonly Linked[],
  compute: (a: number, b: number, c: number, d: number) => number,
): Rule => ({
  gives,
  needs,
  compute,
});

const turn = 2 * Math.PI;
const bulk = airDensity * soundSpeed ** 2;

/** Reference efficiency into half space from fs, vas and qes. */
export const efficiencyOf = (fs: number, vas: number, qes: number): number =>
  (4 * Math.PI ** 2 * fs ** 3 * vas) / (soundSpeed ** 3 * qes);

/** Level in dB at 1 m, half space, for 2.83 V. */
export const levelOf = (fs: number, vas: number, qes: number, re: number): number =>
  halfSpaceWattLevel + 10 * Math.log10((efficiencyOf(fs, vas, qes) * standardVolts ** 2) / re);

/** The relations between the parameters, each solved for one of them; the most direct first. */
const rules: readonly Rule[] = [
  rule('qts', ['qms', 'qes'], (qms, qes) => (qms * qes) / (qms + qes)),
  rule('qes', ['qms', 'qts'], (qms, qts) => (qms * qts) / (qms - qts)),
  rule('qms', ['qes', 'qts'], (qes, qts) => (qes * qts) / (qes - qts)),
  rule('fs', ['mms', 'cms'], (mms, cms) => 1 / (turn * Math.sqrt(mms * cms))),
  rule('cms', ['vas', 'sd'], (vas, sd) => vas / (bulk * sd ** 2)),
  rule('cms', ['fs', 'mms'], (fs, mms) => 1 / ((turn * fs) ** 2 * mms)),
  rule('mms', ['fs', 'cms'], (fs, cms) => 1 / ((turn * fs) ** 2 * cms)),
  rule('vas', ['sd', 'cms'], (sd, cms) => bulk * sd ** 2 * cms),
  rule('sd', ['vas', 'cms'], (vas, cms) => Math.sqrt(vas / (bulk * cms))),
  rule('rms', ['fs', 'mms', 'qms'], (fs, mms, qms) => (turn * fs * mms) / qms),
  rule('qms', ['fs', 'mms', 'rms'], (fs, mms, rms) => (turn * fs * mms) / rms),
  rule('bl', ['fs', 'mms', 're', 'qes'], (fs, mms, re, qes) => Math.sqrt((turn * fs * mms * re) / qes)),
  rule('qes', ['fs', 'mms', 're', 'bl'], (fs, mms, re, bl) => (turn * fs * mms * re) / bl ** 2),
  rule('mms', ['fs', 're', 'qes', 'bl'], (fs, re, qes, bl) => (bl ** 2 * qes) / (turn * fs * re)),
  rule('mms', ['fs', 'qms', 'rms'], (fs, qms, rms) => (rms * qms) / (turn * fs)),
  rule('re', ['fs', 'mms', 'qes', 'bl'], (fs, mms, qes, bl) => (bl ** 2 * qes) / (turn * fs * mms)),
  rule('fs', ['mms', 'qms', 'rms'], (mms, qms, rms) => (rms * qms) / (turn * mms)),
  rule('fs', ['mms', 're', 'qes', 'bl'], (mms, re, qes, bl) => (bl ** 2 * qes) / (turn * mms * re)),
  rule('level', ['fs', 'vas', 'qes', 're'], (fs, vas, qes, re) => levelOf(fs, vas, qes, re)),
];

const valueOf = (known: Parameters, name: Linked | undefined): number | undefined =>
  name === undefined ? Number.NaN : known[name];

/** What a rule makes of the parameters; `undefined` when one is missing or the result is not a physical value. */
function applied({ needs, compute }: Rule, known: Parameters): number | undefined {
  const a = valueOf(known, needs[0]);
  const b = valueOf(known, needs[1]);
  if (a === undefined || b === undefined) return undefined;
  const c = valueOf(known, needs[2]);
  const d = valueOf(known, needs[3]);
  if (c === undefined || d === undefined) return undefined;
  const result = compute(a, b, c, d);
  return Number.isFinite(result) && result > 0 ? result : undefined;
}

/** Adds every parameter that the given ones determine, or as many as it takes to find the wanted one; whatever else is
 *  given stays. `derived` names the added ones, in the order found. */
export function complete<P extends SomeParameters>(
  given: P,
  wanted?: Linked,
): { readonly known: P & Parameters; readonly derived: readonly Linked[] } {
  const known = { ...given } as P & Parameters;
  const derived: Linked[] = [];
  for (let found = true; found;) {
    found = false;
    for (const each of rules) {
      if (known[each.gives] !== undefined) continue;
      const value = applied(each, known);
      if (value === undefined) continue;
      (known as Parameters)[each.gives] = value;
      derived.push(each.gives);
      if (each.gives === wanted) return { known, derived };
      found = true;
    }
  }
  return { known, derived };
}

/** One parameter that others determine; `undefined` when they do not. */
export const determined = (wanted: Linked, others: SomeParameters): number | undefined =>
  complete({ ...others, [wanted]: undefined }, wanted).known[wanted];
