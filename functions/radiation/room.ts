import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';

const whole = { from: frequencies[0]!, to: frequencies.at(-1)! } as const;
const level = (title: string, y: Float64Array, phase?: Float64Array): Curve => ({
  kind: 'curve',
  title,
  quantity: 'level',
  y,
  ...(phase ? { phase } : {}),
  ...whole,
});
const metres = { quantity: 'distance', min: 0, max: 1000 } as const;
const bounce = {
  distance: { ...metres, min: 0.01, summary: 'from source to ear, measured along the surface' },
  source: { ...metres, summary: 'of the source from the surface: its height over the floor' },
  ear: { ...metres, summary: 'of the ear from the surface' },
} as const;

interface Bounce {
  readonly distance: number;
  readonly source: number;
  readonly ear: number;
}

/** Direct path, and the path by the image of the source behind the surface. */
const pathsOf = ({ distance, source, ear }: Bounce): readonly [number, number] => [
  Math.hypot(distance, source - ear),
  Math.hypot(distance, source + ear),
];

const image = { source: 'own', at: 'image source behind a plane surface' } as const;

export const roomReflection = define({
  name: 'ROOM.REFLECTION',
  summary: 'What one reflection from a floor or wall adds to the direct sound at the ear.',
  parameters: {
    ...bounce,
    strength: { quantity: 'ratio', min: 0, max: 1, default: 1, summary: 'share of the pressure that comes back' },
  },
  returns: { record: 'curve', of: 'level', summary: 'level over the direct sound' },
  source: image,
  example: {
    formula: '=CURVE.LOWEST_AT(ROOM.REFLECTION("2.8 m", "0.9 m", "1 m", 0.7), "100 Hz", "500 Hz")',
    gives: 295,
  },
  remarks:
    'A source that sends alike to all sides and one even surface. A carpet takes little below 500 Hz. Nulls are cut off at −60 dB.',
  compute(given) {
    const [direct, bounced] = pathsOf(given);
    const share = (given.strength * direct) / bounced;
    const turns = frequencies.map((frequency) => (2 * Math.PI * frequency * (bounced - direct)) / soundSpeed);
    return level(
      'With one reflection',
      turns.map((turn) =>
        Math.max(-60, 20 * Math.log10(Math.hypot(1 + share * Math.cos(turn), share * Math.sin(turn)))),
      ),
      turns.map((turn) => Math.atan2(-share * Math.sin(turn), 1 + share * Math.cos(turn))),
    );
  },
});

export const roomDip = define({
  name: 'ROOM.DIP',
  summary: 'The lowest frequency at which a reflection from a floor or wall cancels the direct sound at the ear.',
  parameters: {
    distance: bounce.distance,
    source: { ...bounce.source, min: 0.01 },
    ear: { ...bounce.ear, min: 0.01 },
  },
  returns: { quantity: 'frequency', summary: 'frequency where the paths differ by half a wavelength' },
  source: image,
  example: { formula: '=ROOM.DIP("2.8 m", "0.9 m", "1 m")', gives: 295 },
  remarks: 'Further dips stand at three, five, seven times as much.',
  compute(given) {
    const { distance, source, ear } = given;
    const [direct, bounced] = pathsOf({ distance, source, ear });
    // The difference of the squares is 4·source·ear: so written, nothing cancels.
    return (soundSpeed * (direct + bounced)) / (8 * source * ear);
  },
});

export const roomWallDip = define({
  name: 'ROOM.WALL_DIP',
  summary: 'The frequency at which the wall behind a loudspeaker cancels what goes to the front.',
  parameters: { distance: { ...metres, min: 0.01, summary: 'from the driver to the wall behind it' } },
  returns: { quantity: 'frequency', summary: 'frequency where the distance is a quarter of a wavelength' },
  source: { source: 'own', at: 'image source: twice the distance is half a wavelength' },
  example: { formula: '=ROOM.WALL_DIP("60 cm")', gives: 143 },
  remarks:
    'Put the driver so close that the dip falls above its range, or so far that it falls below. Above the edge step little goes to the back.',
  compute: (given) => soundSpeed / (4 * given.distance),
});

const sinc = (x: number): number => (Math.abs(x) < 1e-4 ? 1 - x ** 2 / 6 : Math.sin(x) / x);
const toWall = { ...metres, optional: true } as const;

export const roomWalls = define({
  name: 'ROOM.WALLS',
  summary: 'How much more power a small source gives off near one, two or three walls at right angles.',
  parameters: {
    a: { ...metres, summary: 'from the source to the nearest wall, or the floor' },
    b: { ...toWall, summary: 'to a second one at right angles' },
    c: { ...toWall, summary: 'to a third one at right angles' },
  },
  returns: { record: 'curve', of: 'level', summary: 'power over that far from all walls' },
  source: { source: 'allison1974', at: 'power of a source before hard walls, by its images' },
  example: { formula: '=CURVE.AT(ROOM.WALLS("20 cm", "60 cm", "90 cm"), "10 Hz")', gives: 8.97 },
  remarks:
    'Each wall lifts the lows by up to 3 dB of power. Equal distances add their dips at one frequency, near 0.3 wavelengths: choose unequal ones.',
  compute(given) {
    const distances = [given.a, given.b, given.c].filter((each) => each !== undefined);
    /** Distances of the source from its images: every choice of walls that mirror it. */
    const images = distances.reduce<readonly number[]>(
      (known, each) => [...known, ...known.map((other) => Math.hypot(other, 2 * each))],
      [0],
    );
    return level(
      'Power near walls',
      frequencies.map((frequency) => {
        const waveNumber = (2 * Math.PI * frequency) / soundSpeed;
        return 10 * Math.log10(images.reduce((sum, distance) => sum + sinc(waveNumber * distance), 0));
      }),
    );
  },
});

export const roomLowestMode = define({
  name: 'ROOM.LOWEST_MODE',
  summary: 'The lowest resonance of a room.',
  parameters: { length: { ...metres, min: 0.1, summary: 'longest inside length of the room' } },
  returns: { quantity: 'frequency', summary: 'frequency where the length is half a wavelength' },
  source: { source: 'own', at: 'standing wave between two walls, c/(2·length)' },
  example: { formula: '=ROOM.LOWEST_MODE("5.2 m")', gives: 33.0 },
  compute: (given) => soundSpeed / (2 * given.length),
});

export const roomLift = define({
  name: 'ROOM.LIFT',
  summary: 'How a small room lifts the bass below its lowest resonance, as a guess.',
  parameters: {
    length: { ...metres, min: 0.1, summary: 'longest inside length of the room' },
    slope: { quantity: 'slope', min: 0, max: 12.1, default: 6, summary: 'rise towards low frequencies' },
    most: { quantity: 'level', min: 0, max: 40, default: 9, summary: 'most that is counted on' },
  },
  returns: { record: 'curve', of: 'level', summary: 'lift, 0 above the lowest resonance' },
  source: { source: 'practice', at: 'up to 12 dB an octave below the lowest resonance in a stiff, shut room' },
  example: { formula: '=CURVE.AT(ROOM.LIFT("5.2 m"), "16.5 Hz")', gives: 6.0 },
  remarks:
    'Add it to the response of a box to see why F3 and what is heard differ. Only a car or a cellar comes near 12 dB an octave: doors, windows and light walls leak. What happens above is ruled by where things stand, and not told here.',
  compute(given) {
    const start = soundSpeed / (2 * given.length);
    return level(
      'Lift of a small room',
      frequencies.map((frequency) => Math.min(given.most, Math.max(0, given.slope * Math.log2(start / frequency)))),
    );
  },
});
