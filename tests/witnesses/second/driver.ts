import { same, turns, type Identity } from '../identity.ts';
import { tweeter, woofer, woofer5 } from '../subjects.ts';

const at40 = 'DRIVER.OF("40 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")';
const claim = '"92 dB", "5.8 Ω"';
const sheet = { A1: 'Fs', A2: 'Qms', A3: 'Qes', A4: 'Vas', A5: 'Re', A6: 'Level', A7: 'Level basis', A8: 'Qts' };
const values = { B1: '38 Hz', B2: '4.8', B3: '0.42', B4: '28.52 L', B5: '5.8 ohm', B6: '90.2 dB', B7: 'at 2.83 V' };
const louder = { C1: '38 Hz', C2: '4.8', C3: '0.42', C4: '28.52 L', C5: '5.8 ohm', C6: '91.2 dB', C7: 'at 2.83 V' };
const qs = { A1: 'Qms', A2: 'Qes', A3: 'Qts', B1: '4.8', B2: '0.42', B3: '0.386', C1: '4.8', C2: '0.42', C3: '0.32' };

export const driverIdentities: readonly Identity[] = [
  same(
    'balance',
    'DRIVER.OF',
    `CURVE.AT(DRIVER.IMPEDANCE(${at40}), "40 Hz")`,
    'QTY("5.8 Ω")*(1+4.8/0.42)',
    'at resonance coil and suspension take power as their Qs say',
  ),
  same(
    'limit',
    'DRIVER.LEVEL',
    `DRIVER.LEVEL(${woofer5})`,
    `CURVE.AT(BOX.LEVEL(BAFFLE.BOX(${woofer5})), "20 kHz")`,
    'far above its resonance a driver in a wall plays its level',
    { within: 1e-6 },
  ),
  same(
    'scale law',
    'DRIVER.LEVEL_GAP',
    'DRIVER.LEVEL_GAP(DRIVER(A1:A7, C1:C7))-DRIVER.LEVEL_GAP(DRIVER(A1:A7, B1:B7))',
    'QTY("1 dB")',
    'a decibel more in print is a decibel more of gap',
    { cells: { ...sheet, ...values, ...louder } },
  ),
  same(
    'balance',
    'DRIVER.EFFICIENCY',
    `QTY("10 dB")*LOG10(DRIVER.EFFICIENCY(${woofer5})/DRIVER.EFFICIENCY(${tweeter}))`,
    `DRIVER.LEVEL(${woofer5}, "1 W in Re")-DRIVER.LEVEL(${tweeter}, "1 W in Re")`,
    'at a watt the levels of two drivers differ as their efficiencies do',
  ),
  same(
    'round trip',
    'LEVEL.FROM_WATT LEVEL.TO_WATT',
    'LEVEL.TO_WATT(LEVEL.FROM_WATT("88 dB", "4 Ω"), "4 Ω")',
    'QTY("88 dB")',
    'from a watt to 2.83 V and back',
  ),
  same(
    'another way',
    'DRIVER.AUDIT',
    'TABLE.AT(DRIVER.AUDIT(DRIVER(A1:A3, C1:C3)), 1, "Gap", 1)',
    '0.32/DRIVER.QTS(4.8, 0.42)-1',
    'the printed Qts over that of its parts',
    { cells: qs },
  ),
  turns(
    'DRIVER.CULPRIT',
    'DRIVER.CULPRIT(DRIVER(A1:A3, B1:B3))',
    'DRIVER.CULPRIT(DRIVER(A1:A3, C1:C3))',
    'a sheet without contradiction has no culprit, one with Qts 17 % off has',
    'good',
    { cells: qs },
  ),
  same(
    'scale law',
    'DRIVER.BANDWIDTH DRIVER.SERIES',
    `2*DRIVER.BANDWIDTH(DRIVER.SERIES(${woofer}, "5.8 Ω"))`,
    `DRIVER.BANDWIDTH(${woofer})`,
    'as many ohms again ahead of the coil halve its grip',
  ),
  same(
    'scale law',
    'DRIVER.GROUP',
    `BOX.QTC(CLOSED.BOX(DRIVER.GROUP(${woofer}, 2), "24 L"))`,
    `BOX.QTC(CLOSED.BOX(${woofer}, "12 L"))`,
    'two drivers in twice the box behave as one',
  ),
  same(
    'another way',
    'DRIVER.HOT_LOSS',
    'DRIVER.HOT_LOSS(100)',
    `DRIVER.LEVEL(${woofer5})-DRIVER.LEVEL(DRIVER.HOT(${woofer5}, 100))`,
    'the hot driver is that much softer',
  ),
  same(
    'balance',
    'DRIVER.HEATING',
    'DRIVER.HEATING("40 W", 1.9)',
    '1.9*40/10^(DRIVER.HOT_LOSS(DRIVER.HEATING("40 W", 1.9))/QTY("20 dB"))',
    'hot ohms draw fewer watts: the rise fits the watts that are left',
  ),
  same(
    'round trip',
    'CLAIM.CONSTANT CLAIM.BOUND CLAIM.VOLUME',
    `CLAIM.CONSTANT(${claim}, CLAIM.VOLUME(${claim}, "30 Hz", "closed"), "30 Hz")`,
    'CLAIM.BOUND("closed")',
    'the smallest box lies on the bound',
  ),
  same(
    'round trip',
    'CLAIM.CUTOFF',
    `CLAIM.CUTOFF(${claim}, CLAIM.VOLUME(${claim}, "30 Hz"))`,
    'QTY("30 Hz")',
    'the smallest box for 30 Hz reaches 30 Hz',
  ),
  same(
    'round trip',
    'CLAIM.LEVEL',
    `CLAIM.LEVEL("5.8 Ω", CLAIM.VOLUME(${claim}, "30 Hz"), "30 Hz")`,
    'QTY("92 dB")',
    'the smallest box for 92 dB allows 92 dB',
  ),
  turns(
    'CLAIM.CHECK',
    `CLAIM.CHECK(${claim}, 0.999*CLAIM.VOLUME(${claim}, "30 Hz"), "30 Hz")`,
    `CLAIM.CHECK(${claim}, 1.001*CLAIM.VOLUME(${claim}, "30 Hz"), "30 Hz")`,
    'the claim becomes possible at the smallest box',
    'fail',
  ),
];
