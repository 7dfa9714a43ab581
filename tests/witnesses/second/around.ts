import { same, type Identity } from '../identity.ts';
import { tweeterWay } from '../subjects.ts';

const around = (name: string, at = '10 kHz'): string => `CURVE.AT(AROUND.${name}("220 mm", ${tweeterWay}), "${at}")`;
const aroundSmall = (name: string): string => `QTY("200 dB")+CURVE.AT(AROUND.${name}("50 mm", ${tweeterWay}), "20 Hz")`;
const freely = (name: string): string => `CURVE.AT(AROUND.${name}(, ${tweeterWay}), "100 Hz")`;

export const aroundIdentities: readonly Identity[] = [
  same(
    'another way',
    'AROUND.AXIS',
    `CURVE.AT(AROUND.AXIS(, ${tweeterWay}), "10 kHz")`,
    `CURVE.AT(WAY.LEVEL(${tweeterWay}), "10 kHz")`,
    'one way on its axis',
  ),
  same(
    'another way',
    'AROUND.AT',
    `CURVE.AT(AROUND.AT("horizontal", "45°", , ${tweeterWay}), "10 kHz")`,
    `CURVE.AT(WAY.OFF_AXIS(${tweeterWay}, "45°"), "10 kHz")`,
    'one way beside its axis',
  ),
  same('limit', 'AROUND.WINDOW', freely('WINDOW'), freely('AXIS'), 'long waves go everywhere before the panel alike', {
    within: 1e-4,
  }),
  same(
    'limit',
    'AROUND.EARLY',
    aroundSmall('EARLY'),
    aroundSmall('AXIS'),
    'long waves go everywhere before the panel alike',
    {
      within: 1e-4,
    },
  ),
  same(
    'balance',
    'AROUND.ROOM',
    around('ROOM'),
    `QTY("10 dB")*LOG10(0.12*10^(${around('WINDOW')}/QTY("10 dB"))+0.44*10^(${around('EARLY')}/QTY("10 dB"))+0.44*10^(${around('POWER')}/QTY("10 dB")))`,
    'twelve hundredths of the window, 44 of early reflections, 44 of all power',
    { within: 1e-5 },
  ),
  same(
    'balance',
    'AROUND.INDEX AROUND.POWER',
    around('INDEX'),
    `${around('WINDOW')}-${around('POWER')}`,
    'the window less the power',
    { within: 1e-6 },
  ),
  same(
    'balance',
    'AROUND.EARLY_INDEX',
    around('EARLY_INDEX'),
    `${around('WINDOW')}-${around('EARLY')}`,
    'the window less the early reflections',
    { within: 1e-6 },
  ),
  same(
    'another way',
    'ROOM.REFLECTION ROOM.DIP',
    'CURVE.LOWEST_AT(ROOM.REFLECTION("2.8 m", "0.9 m", "1 m", 0.7), "100 Hz", "500 Hz")',
    'ROOM.DIP("2.8 m", "0.9 m", "1 m")',
    'the reflection cancels where its detour is half a wave',
    { within: 2e-3 },
  ),
  same(
    'scale law',
    'ROOM.WALL_DIP',
    '2*ROOM.WALL_DIP("120 cm")',
    'ROOM.WALL_DIP("60 cm")',
    'twice as far away, half the frequency',
  ),
  same(
    'limit',
    'ROOM.WALLS',
    'CURVE.AT(ROOM.WALLS("1 cm", "1 cm", "1 cm"), "10 Hz")',
    'QTY("10 dB")*LOG10(8)',
    'in a corner eight sources work as one',
    { within: 1e-4 },
  ),
  same(
    'balance',
    'ROOM.LIFT ROOM.LOWEST_MODE',
    'CURVE.AT(ROOM.LIFT("5.2 m"), ROOM.LOWEST_MODE("5.2 m")/2)',
    'QTY("6 dB")',
    'an octave below the lowest mode it has risen by the slope',
    { within: 1e-6 },
  ),
];
