import { same, turns, type Identity } from '../identity.ts';
import { closed, woofer } from '../subjects.ts';

const tight = `CLOSED.BOX(${woofer}, "8 L")`;
const sample = `SPREAD.RESONANCE(${closed}, 0.12, 0.03, 0.03, 0.02)`;
const causes = `SPREAD.CAUSES(${closed}, "f3", 0.12, 0.03, 0.03, 0.02)`;
const share = (row: number): string => `TABLE.AT(${causes}, ${String(row)}, "Share of the variance", 1)`;
const good = 'CHECK.AT_LEAST(3, 2, , "Ratio")';
const bad = 'CHECK.AT_LEAST(1, 2, , "Ratio")';
const count = (status: string): string => `CHECK.COUNT("${status}", ${good}, ${bad}, ${good})`;
const points = '"5.8 Ω", "72.1 Ω", "38 Hz", "26.53 Hz", "54.44 Hz"';
const spl = (text: string): string => `MEASURE.LEVEL("${text}")`;
const bw3 = 'FILTER.SLOPE("1 kHz", "BW3", "low")';
const median = (call: string): string => `SPREAD.PERCENTILE(SPREAD.${call}, 0.5)`;
const mmsOnly = ', 0, 0, 0.05, 0, 0, 200)';

export const restIdentities: readonly Identity[] = [
  same(
    'limit',
    'SPREAD.RESONANCE',
    median(`RESONANCE(${closed})`),
    `BOX.RESONANCE(${closed})`,
    'where nothing varies every run is the box',
  ),
  same(
    'limit',
    'SPREAD.QTC',
    median(`QTC(${closed})`),
    `BOX.QTC(${closed})`,
    'where nothing varies every run is the box',
  ),
  same(
    'limit',
    'SPREAD.FALL',
    median(`FALL(${closed}, "6 dB")`),
    `BOX.CUTOFF(${closed}, "6 dB")`,
    'where nothing varies every run is the box',
    { within: 1e-4 },
  ),
  same(
    'limit',
    'SPREAD.PEAK',
    median(`PEAK(${tight})`),
    `BOX.PEAK(${tight})`,
    'where nothing varies every run is the box',
    { within: 1e-5 },
  ),
  same(
    'scale law',
    'SPREAD.LEVEL',
    `LEVEL.FROM_RATIO((${median(`RESONANCE(${closed}${mmsOnly}`)}/BOX.RESONANCE(${closed}))^2)`,
    `${median(`LEVEL(${closed}${mmsOnly}`)}-${median(`LEVEL(${closed})`)}`,
    'with the mass alone the level goes with the square of the resonance',
    { within: 1e-3 },
  ),
  same(
    'round trip',
    'SPREAD.PERCENTILE SPREAD.ODDS',
    `SPREAD.ODDS(${sample}, , SPREAD.PERCENTILE(${sample}, 0.25))`,
    '0.25',
    'a quarter of the runs lie below the first quarter',
    { within: 2e-3 },
  ),
  same(
    'balance',
    'SPREAD.CAUSES',
    `${share(1)}+${share(2)}+${share(3)}+${share(4)}+${share(5)}`,
    '1',
    'the causes together are the whole variance',
  ),
  turns(
    'CHECK.AT_LEAST',
    'CHECK.AT_LEAST("3.201 Ω", "3.2 Ω", "2.8 Ω", "Load")',
    'CHECK.AT_LEAST("3.199 Ω", "3.2 Ω", "2.8 Ω", "Load")',
    'the limit that was given',
  ),
  turns(
    'CHECK.AT_MOST',
    'CHECK.AT_MOST("16.99 m/s", "17 m/s", "20 m/s", "Air")',
    'CHECK.AT_MOST("17.01 m/s", "17 m/s", "20 m/s", "Air")',
    'the limit that was given',
  ),
  turns(
    'CHECK.WITHIN',
    'CHECK.WITHIN("9.99 dB", "0 dB", "10 dB", , "Pad")',
    'CHECK.WITHIN("10.01 dB", "0 dB", "10 dB", , "Pad")',
    'the upper end that was given',
  ),
  same(
    'turning point',
    'CHECK.NOTE',
    'CHECK.COUNT("good", CHECK.NOTE("109 dB", "110 dB", "Level", "Note"), CHECK.NOTE("111 dB", "110 dB", "Level", "Note"))',
    '2',
    'a note is no fault on either side of its limit',
  ),
  same(
    'symmetry',
    'CHECK.WORST',
    `CHECK.COUNT("fail", CHECK.WORST(${good}, ${bad}))+CHECK.COUNT("good", CHECK.WORST(${good}, ${good}))`,
    `CHECK.COUNT("fail", CHECK.WORST(${bad}, ${good}))+1`,
    'in any order the worst is the worst',
  ),
  same(
    'balance',
    'CHECK.COUNT',
    `${count('good')}+${count('caution')}+${count('fail')}`,
    '3',
    'every verdict is one of three',
  ),
  same(
    'balance',
    'MEASURE.QMS MEASURE.QES MEASURE.QTS',
    `DRIVER.QTS(MEASURE.QMS(${points}), MEASURE.QES(${points}))`,
    `MEASURE.QTS(${points})`,
    'the two Qs make the whole',
  ),
  same(
    'balance',
    'MEASURE.MASS',
    '38*SQRT(MEASURE.MASS("38 Hz", "29.51 Hz", "10 g")/(MEASURE.MASS("38 Hz", "29.51 Hz", "10 g")+QTY("10 g")))',
    '29.51',
    'so heavy a cone falls so far with the mass added',
  ),
  same(
    'round trip',
    'MEASURE.VAS',
    'CLOSED.RESONANCE("38 Hz", MEASURE.VAS("38 Hz", "69.6 Hz", "12 L"), "12 L")',
    'QTY("69.6 Hz")',
    'in its test box the driver resonates as measured',
  ),
  turns(
    'MEASURE.CHECK_SYMMETRY',
    'MEASURE.CHECK_SYMMETRY("100 Hz", "101.9 Hz", "101.9 Hz")',
    'MEASURE.CHECK_SYMMETRY("100 Hz", "102.1 Hz", "102.1 Hz")',
    'two hundredths off',
  ),
  turns(
    'MEASURE.CHECK_MASS',
    'MEASURE.CHECK_MASS("100 Hz", "84.9 Hz")',
    'MEASURE.CHECK_MASS("100 Hz", "85.1 Hz")',
    'a shift of fifteen hundredths',
  ),
  turns(
    'MEASURE.CHECK_OHMS',
    'MEASURE.CHECK_OHMS("10.29 Ω", "10 Ω")',
    'MEASURE.CHECK_OHMS("10.31 Ω", "10 Ω")',
    'three hundredths off',
  ),
  same(
    'limit',
    'MEASURE.LEVEL',
    `CURVE.AT(${spl('100 88,5\n1000 90,5')}, QTY("100 Hz")*SQRT(10))`,
    'QTY("89.5 dB")',
    'in the middle of two rows lies their mean',
    { within: 1e-6 },
  ),
  same(
    'limit',
    'MEASURE.IMPEDANCE',
    'CURVE.AT(MEASURE.IMPEDANCE("100; 6; 10\n1000; 8; 10"), QTY("100 Hz")*SQRT(10))',
    'QTY("7 Ω")',
    'in the middle of two rows lies their mean',
    { within: 1e-2 },
  ),
  same(
    'another way',
    'MEASURE.MINIMUM_PHASE',
    `CURVE.PHASE(MEASURE.MINIMUM_PHASE(${bw3}, 0 dB/oct, -18 dB/oct), "640 Hz")`,
    `CURVE.PHASE(${bw3}, "640 Hz")`,
    'the phase of the filter from its magnitude alone',
    { within: 2e-3 },
  ),
  turns(
    'MEASURE.CHECK_CURVE',
    `MEASURE.CHECK_CURVE(${spl('100 88 0\n1000 90 0')}, "200 Hz", "800 Hz")`,
    `MEASURE.CHECK_CURVE(${spl('100 88\n1000 90')}, "200 Hz", "800 Hz")`,
    'with phase curves can be summed, without they cannot',
  ),
  same(
    'scale law',
    'MEASURE.GATE_LIMIT',
    '2*MEASURE.GATE_LIMIT("8 ms")',
    'MEASURE.GATE_LIMIT("4 ms")',
    'twice as long, an octave lower',
  ),
  same(
    'scale law',
    'MEASURE.NEAR_OFFSET',
    'MEASURE.NEAR_OFFSET("528 cm²", "2 m")',
    'MEASURE.NEAR_OFFSET("132 cm²", "1 m")',
    'all twice as large',
  ),
];
