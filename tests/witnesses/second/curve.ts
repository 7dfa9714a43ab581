import { same, type Identity } from '../identity.ts';
import { closed, vented } from '../subjects.ts';

const response = `BOX.RESPONSE(${vented})`;
const edge = 'EDGE.STEP("220 mm")';
const at = (curve: string, frequency = '700 Hz'): string => `CURVE.AT(${curve}, "${frequency}")`;
const ramp = 'CURVE.READ(A1:A2, B1:B2)';
const cells = { A1: '100 Hz', A2: '10 kHz', B1: '80 dB', B2: '100 dB' };
const pairs = 'STANDARD.PAIRS("2.5 Ω", "parallel", "E12", 3)';
const first = (row: number): string => `TABLE.AT(${pairs}, ${String(row)}, "First", 1 Ω)`;

export const curveIdentities: readonly Identity[] = [
  same(
    'round trip',
    'CURVE.READ CURVE.AT',
    `${at(ramp, '10 kHz')}-${at(ramp, '100 Hz')}`,
    'B2-B1',
    'a curve read at the frequencies of its table has the values of the table',
    { cells },
  ),
  same(
    'limit',
    'CURVE.MEAN',
    `CURVE.MEAN(${ramp}, "100 Hz", "10 kHz")`,
    'QTY("90 dB")',
    'a slope that is even in octaves has its mean in the middle',
    { cells, within: 1e-6 },
  ),
  same(
    'limit',
    'CURVE.SMOOTH',
    at(`CURVE.SMOOTH(${ramp})`, '1 kHz'),
    'QTY("90 dB")+QTY("10 dB")*LOG10(SINH(LN(2)/6)/(LN(2)/6))',
    'the mean power of an even slope over a third of an octave',
    {
      cells,
      within: 1e-6,
    },
  ),
  same(
    'another way',
    'CURVE.COLUMN',
    `SUM(CURVE.COLUMN(${ramp}, A1:A2))`,
    `${at(ramp, '100 Hz')}+${at(ramp, '10 kHz')}`,
    'each value of the column is read on its own',
    { cells },
  ),
  same(
    'another way',
    'CURVE.FALL BOX.CUTOFF',
    `CURVE.FALL(${response}, "3.010299956639812 dB")`,
    `BOX.CUTOFF(${vented})`,
    'half power of the drawn curve and of the solved one',
    { within: 1e-4 },
  ),
  same(
    'balance',
    'CURVE.RIPPLE',
    `CURVE.RIPPLE(${edge}, "200 Hz", "2 kHz")`,
    `CURVE.PEAK(${edge}, "200 Hz", "2 kHz")-CURVE.LOWEST(${edge}, "200 Hz", "2 kHz")`,
    'from the lowest to the highest',
  ),
  same(
    'round trip',
    'CURVE.CROSSES',
    `CURVE.AT(${edge}, CURVE.CROSSES(${edge}, "-2 dB"))`,
    'QTY("-2 dB")',
    'where it crosses it has that level',
  ),
  same(
    'another way',
    'CURVE.SUM',
    at(`CURVE.SUM(${ramp}, ${ramp}, CURVE.SHIFT(${ramp}, "3 dB"))`, '1280 Hz'),
    `LEVEL.SUM(${at(ramp, '1280 Hz')}, ${at(ramp, '1280 Hz')}, ${at(ramp, '1280 Hz')}+QTY("3 dB"))`,
    'powers of levels without phase',
    { cells },
  ),
  same(
    'round trip',
    'CURVE.ADD CURVE.DIFFERENCE',
    at(`CURVE.DIFFERENCE(CURVE.ADD(${edge}, ${response}), ${response})`),
    at(edge),
    'added and taken away',
  ),
  same(
    'round trip',
    'CURVE.SHIFT',
    at(`CURVE.SHIFT(CURVE.SHIFT(${edge}, "5 dB"), "-5 dB")`),
    at(edge),
    'up and down again',
  ),
  same(
    'limit',
    'CURVE.LIMIT',
    at(`CURVE.LIMIT(${edge}, "100 Hz", "2 kHz")`),
    at(edge),
    'inside the band nothing changes',
  ),
  same(
    'round trip',
    'CURVE.DIVIDE CURVE.SCALE',
    at(`CURVE.DIVIDE(CURVE.SCALE(BOX.IMPEDANCE(${closed}), 3), BOX.IMPEDANCE(${closed}))`),
    '3',
    'three times a curve over the curve',
  ),
  same(
    'limit',
    'CURVE.JOIN',
    at(`CURVE.JOIN(${edge}, ${edge}, "700 Hz")`),
    at(edge),
    'joined to itself a curve stays as it is',
  ),
  same(
    'another way',
    'CURVE.TABLE',
    `TABLE.AT(CURVE.TABLE(${edge}, 1, "100 Hz", "1 kHz"), 3, "Value", 1 dB)`,
    at(edge, '400 Hz'),
    'the third row lies two octaves up',
  ),
  same(
    'balance',
    'TABLE.TOTAL TABLE.AT TABLE.ROWS',
    `TABLE.TOTAL(${pairs}, "First", 1 Ω)/TABLE.ROWS(${pairs})`,
    `(${first(1)}+${first(2)}+${first(3)})/3`,
    'three rows add up',
  ),
  same(
    'round trip',
    'TABLE.TEXT TABLE.ROW',
    `TABLE.ROW(${pairs}, "Made of", TABLE.TEXT(${pairs}, 2, "Made of"))`,
    '2',
    'the row whose words were read',
  ),
  same(
    'another way',
    'TABLE.ROW_OF',
    `TABLE.AT(${pairs}, TABLE.ROW_OF(${pairs}, "First", "lowest"), "First", 1 Ω)`,
    `MIN(${first(1)}, ${first(2)}, ${first(3)})`,
    'the lowest of the three',
  ),
];
