import { halfSpaceWattLevel, standardVolts } from '../air.ts';
import { define } from '../define.ts';
import { measured, say } from '../values/say.ts';
import type { Verdict } from '../values/verdict.ts';
import { usual } from '../usual.ts';
import { largestConstant } from './claim-bound.ts';

const level = {
  ...usual.level,
  min: 20,
  max: 160,
  typical: [75, 110],
  summary: 'claimed level at 1 m for 2.83 V',
} as const;
const re = { ...usual.ohms, typical: [2, 16], summary: 'voice-coil resistance Re' } as const;
const volume = { ...usual.volume, typical: [1e-3, 1], summary: 'claimed net volume' } as const;
const cutoff = { ...usual.frequency, typical: [15, 150], summary: 'claimed F3' } as const;
const style = { choice: ['closed', 'vented'], default: 'vented', summary: 'kind of box' } as const;
const leakageQ = {
  quantity: 'ratio',
  min: 3,
  max: 1e6,
  default: 1e6,
  summary: 'leakage Q of a vented box; without loss when left out, 7 for what is built',
} as const;
const source = {
  source: 'small1973vented',
  at: 'efficiency constant k = η₀/(f₃³·V_B), greatest over all responses',
} as const;
const remarks =
  'All damping electrical and the box the only spring: no driver can do better with an even response. The vented bound is that of Chebyshev responses: other even ones pass it by 2 % at most as far as seen, one whose bass sags by 1 to 3 dB above F3 by up to a third. Box gain of rooms is no part of it.';

const efficiencyAt = (claimed: number, ohms: number): number =>
  10 ** ((claimed - halfSpaceWattLevel) / 10) * (ohms / standardVolts ** 2);
const levelAt = (efficiency: number, ohms: number): number =>
  halfSpaceWattLevel + 10 * Math.log10((efficiency * standardVolts ** 2) / ohms);

export const claimConstant = define({
  name: 'CLAIM.CONSTANT',
  summary: 'Efficiency over volume and cubed F3 of a claim: what no box can have beyond a bound.',
  parameters: { level, re, volume, cutoff },
  returns: { quantity: 'ratio', summary: 'k, in s³/m³' },
  source,
  example: { formula: '=CLAIM.CONSTANT("92 dB", "5.8 ohm", "20 L", "30 Hz") * 1000000', gives: 12.93 },
  compute: (given) => efficiencyAt(given.level, given.re) / (given.cutoff ** 3 * given.volume),
});

export const claimBound = define({
  name: 'CLAIM.BOUND',
  summary: 'The greatest efficiency over volume and cubed F3 that a closed or a vented box can have.',
  parameters: { style, leakageQ },
  returns: { quantity: 'ratio', summary: 'k, in s³/m³' },
  source,
  example: { formula: '=CLAIM.BOUND("closed") * 1000000', gives: 2.05 },
  remarks,
  compute: (given) => largestConstant(given.style, given.leakageQ),
});

export const claimVolume = define({
  name: 'CLAIM.VOLUME',
  summary: 'The smallest net volume in which a level and an F3 are possible together.',
  parameters: { level, re, cutoff, style, leakageQ },
  returns: { quantity: 'volume', summary: 'smallest net volume' },
  source,
  example: { formula: '=CLAIM.VOLUME("92 dB", "5.8 ohm", "30 Hz")', gives: 0.0648 },
  remarks,
  compute: (given) =>
    efficiencyAt(given.level, given.re) / (largestConstant(given.style, given.leakageQ) * given.cutoff ** 3),
});

export const claimCutoff = define({
  name: 'CLAIM.CUTOFF',
  summary: 'The lowest F3 that a level and a net volume leave possible.',
  parameters: { level, re, volume, style, leakageQ },
  returns: { quantity: 'frequency', summary: 'lowest F3' },
  source,
  example: { formula: '=CLAIM.CUTOFF("92 dB", "5.8 ohm", "20 L")', gives: 44.4 },
  remarks,
  compute: (given) =>
    Math.cbrt(efficiencyAt(given.level, given.re) / (largestConstant(given.style, given.leakageQ) * given.volume)),
});

export const claimLevel = define({
  name: 'CLAIM.LEVEL',
  summary: 'The highest level for 2.83 V that a net volume and an F3 leave possible.',
  parameters: { re, volume, cutoff, style, leakageQ },
  returns: { quantity: 'level', summary: 'highest level at 1 m for 2.83 V' },
  source,
  example: { formula: '=CLAIM.LEVEL("5.8 ohm", "20 L", "30 Hz")', gives: 86.9 },
  remarks,
  compute: (given) =>
    levelAt(largestConstant(given.style, given.leakageQ) * given.cutoff ** 3 * given.volume, given.re),
});

/** Leakage Q of a box as it is usually built; common practice, no source. */
const builtLeakage = 7;
/** Share of the bound that the losses of a closed box leave; common practice, no source. */
const builtShare = 0.8;

export const claimCheck = define({
  name: 'CLAIM.CHECK',
  summary: 'Whether a claimed level, net volume and F3 are possible together, and how much of which to give up.',
  parameters: { level, re, volume, cutoff, style },
  returns: { record: 'verdict', summary: 'judgement' },
  source,
  example: {
    formula: '=CLAIM.CHECK("92 dB", "5.8 ohm", "20 L", "30 Hz")',
    gives: { status: 'fail', word: 'Impossible' },
  },
  remarks: `${remarks} A vented box is held against both bounds: without any loss, and with a leakage Q of 7; a closed one counts as strained above 80 % of its bound: common practice, no source.`,
  compute: (given): Verdict => {
    const kind = given.style;
    const wanted = efficiencyAt(given.level, given.re);
    const k = wanted / (given.cutoff ** 3 * given.volume);
    const greatest = largestConstant(kind, 1e6);
    const built = kind === 'closed' ? greatest * builtShare : largestConstant(kind, builtLeakage);
    const trade = (bound: number) =>
      say`Give up one of three: ${measured(wanted / (bound * given.cutoff ** 3), 'volume')} or more, an F3 of ${measured(Math.cbrt(wanted / (bound * given.volume)), 'frequency')} or higher, or ${measured(levelAt(bound * given.cutoff ** 3 * given.volume, given.re), 'level')} at most.`;
    const share = measured(k / greatest, 'ratio');
    if (k > greatest) {
      return {
        kind: 'verdict',
        status: 'fail',
        word: 'Impossible',
        reason: say`No driver of this level can do this in a ${kind} box: the claim is ${share} times the bound. ${trade(greatest)}`,
      };
    }
    if (k > built) {
      return {
        kind: 'verdict',
        status: 'caution',
        word: 'Strained',
        reason: say`The claim is ${share} of the bound, more than real losses leave. ${trade(built)}`,
      };
    }
    return {
      kind: 'verdict',
      status: 'good',
      word: 'Possible',
      reason: say`The claim is ${share} of the bound for a ${kind} box: a suitable driver can do it.`,
    };
  },
});
