import { define, type CellDatum } from '../define.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { Verdict } from '../values/verdict.ts';

const hour = 3600;
/** Criterion of the recommended limit: 85 dBA for 8 hours, halved for every 3 dB. */
const recommended = { level: 85, seconds: 8 * hour, exchange: 3 } as const;

/** No sound may be louder than this for any time, dBA: NIOSH 98-126, section 1.1, from memory. */
const ceiling = 140;

/** How long a level may last within the recommended limit. */
const allowed = (level: number): number =>
  recommended.seconds * 2 ** ((recommended.level - level) / recommended.exchange);

const level = {
  ...usual.level,
  min: 0,
  max: 200,
  typical: [60, 115],
  summary: 'average level at the ear, A-weighted',
} as const;
const caution =
  'A limit for work over many years, not a promise that nothing happens: ears differ, and ringing or dullness afterwards is a sign of too much. Levels of music are usually not A-weighted; at equal reading the A-weighted one is lower.';

export const hearingTime = define({
  name: 'HEARING.TIME',
  summary: 'How long a level may last in a day by the recommended limit for noise at work.',
  parameters: { level },
  returns: { quantity: 'time', summary: 'time in a day' },
  source: { source: 'niosh1998', at: 'T = 480/2^((L − 85)/3) minutes, table 1-1' },
  example: { formula: '=HEARING.TIME("94 dB")', gives: 3600 },
  remarks: `${caution} Above 140 dBA no time at all is allowed; more than 24 h says that the whole day is within the limit.`,
  compute: (given) =>
    given.level > ceiling
      ? new Problem(
          say`Above ${measured(ceiling, 'level')} no time at all is allowed, and the level is ${measured(given.level, 'level')}: turn it down before anyone comes near.`,
          'level',
        )
      : allowed(given.level),
});

export const hearingLegalTime = define({
  name: 'HEARING.TIME_OSHA',
  summary: 'How long a level may last in a day by the permissible exposure of United States law.',
  parameters: { level },
  returns: { quantity: 'time', summary: 'time in a day' },
  source: { source: 'osha1910', at: 'T = 8/2^((L − 90)/5) hours, table G-16a' },
  example: { formula: '=HEARING.TIME_OSHA("100 dB")', gives: 7200 },
  remarks: 'Laxer than the recommended limit: 90 dBA and 5 dB. Do not mix the two.',
  compute: (given) => 8 * hour * 2 ** ((90 - given.level) / 5),
});

export const hearingWeek = define({
  name: 'HEARING.WEEK',
  summary: 'How long an adult may listen at a level in a week by the guideline for listening devices.',
  parameters: { level },
  returns: { quantity: 'time', summary: 'time in a week' },
  source: { source: 'ituH870', at: '80 dBA for 40 hours a week, 3 dB exchange' },
  example: { formula: '=HEARING.WEEK("90 dB")', gives: 14287 },
  remarks: caution,
  compute: (given) => 40 * hour * 2 ** ((80 - given.level) / 3),
});

function doseOf(times: readonly CellDatum[], levels: readonly CellDatum[]): number | Problem {
  let dose = 0;
  for (let index = 0; index < Math.max(times.length, levels.length); index += 1) {
    const [time, at] = [times[index] ?? null, levels[index] ?? null];
    if ((time === null || time === '') && (at === null || at === '')) continue;
    if (typeof time !== 'number' || !(time >= 0 && time <= 1e9))
      return new Problem(say`Row ${String(index + 1)} has no time; give one such as 2 h, or empty the row.`, 'times');
    if (typeof at !== 'number' || !(at >= 0 && at <= 200))
      return new Problem(say`Row ${String(index + 1)} has no level between 0 and 200 dB; correct it.`, 'levels');
    dose += time / allowed(at);
  }
  return dose;
}

const lists = {
  times: { table: true, of: 'time', summary: 'cells with the time spent at each level' },
  levels: { table: true, of: 'level', summary: 'cells with the levels beside them, A-weighted' },
} as const;

export const hearingDose = define({
  name: 'HEARING.DOSE',
  summary: 'How much of the recommended limit of a day several times and levels use up.',
  parameters: lists,
  returns: { quantity: 'ratio', summary: '1 is all of it' },
  source: { source: 'niosh1998', at: 'D = ΣC/T' },
  example: { formula: '=HEARING.DOSE(2 h, 94 dB)', gives: 2 },
  remarks: caution,
  compute: (given) => doseOf(given.times.flat(), given.levels.flat()),
});

export const hearingDayLevel = define({
  name: 'HEARING.DAY_LEVEL',
  summary: 'The steady level over eight hours that uses up as much of the limit.',
  parameters: lists,
  returns: { quantity: 'level', summary: 'level over eight hours, A-weighted' },
  source: { source: 'niosh1998', at: 'TWA = 10·lg D + 85' },
  example: { formula: '=HEARING.DAY_LEVEL(2 h, 94 dB)', gives: 88.01 },
  compute: (given) => {
    const dose = doseOf(given.times.flat(), given.levels.flat());
    if (dose instanceof Problem) return dose;
    if (dose > 0) return 10 * Math.log10(dose) + recommended.level;
    return new Problem(say`There is no time in the list; give times and levels.`, 'times');
  },
});

export const hearingVerdict = define({
  name: 'HEARING.VERDICT',
  summary: 'Whether a level at the chair is safe for the time it lasts.',
  parameters: {
    level,
    time: { quantity: 'time', min: 1, max: 1e6, default: hour, summary: 'time in a day that it lasts' },
  },
  returns: { record: 'verdict', summary: 'Safe hours, Short time or Too long' },
  source: { source: 'niosh1998', at: '85 dBA for 8 hours, halved for every 3 dB' },
  example: { formula: '=HEARING.VERDICT("100 dB", "1 h")', gives: { status: 'fail', word: 'Too long' } },
  remarks: caution,
  compute: (given): Verdict => {
    const most = allowed(given.level);
    const [shown, time] = [measured(given.level, 'level'), measured(most, 'time')];
    const note = say`Sweeps and tests at low level first. Dullness or ringing afterwards is a sign of too much.`;
    if (given.time > most)
      return {
        kind: 'verdict',
        status: 'fail',
        word: 'Too long',
        reason: say`At ${shown} the recommended limit is used up after ${time}: play more quietly or for a shorter time.`,
        note,
      };
    const close = given.level >= 100 || given.time > most / 2;
    return {
      kind: 'verdict',
      status: close ? 'caution' : 'good',
      word: close ? 'Short time' : 'Safe hours',
      reason: say`At ${shown} the recommended limit allows ${time} in a day.`,
      ...(close ? { note } : {}),
    };
  },
});
