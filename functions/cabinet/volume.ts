import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { usual } from '../usual.ts';
import { insideOf } from './inside.ts';
import { depth, displaced, height, thickness, width } from './parameters.ts';

const geometry = { source: 'own', at: 'inner edges multiplied, less what stands inside' } as const;

export const cabinetNetVolume = define({
  name: 'CABINET.NET_VOLUME',
  summary: 'Net volume of a rectangular cabinet from its outside size.',
  parameters: { height, width, depth, thickness, displaced },
  returns: { quantity: 'volume', summary: 'air that the driver works on' },
  source: geometry,
  example: { formula: '=CABINET.NET_VOLUME("360 mm", "220 mm", "280 mm", "15 mm", "1.15 L")', gives: 0.014525 },
  remarks: 'Two panels go from each outside size, then driver, port and braces: nothing of them is added.',
  compute(given) {
    const inside = insideOf(given);
    if (inside instanceof Problem) return inside;
    const gross = inside.height * inside.width * inside.depth;
    if (given.displaced < gross) return gross - given.displaced;
    return new Problem(
      say`What stands inside takes ${measured(given.displaced, 'volume')}, but the cabinet holds only ${measured(gross, 'volume')}. Make the cabinet larger.`,
      'displaced',
    );
  },
});

export const cabinetDepthFor = define({
  name: 'CABINET.DEPTH_FOR',
  summary: 'Outside depth that gives a cabinet of a height and width a wanted net volume.',
  parameters: {
    volume: { ...usual.volume, summary: 'net volume wanted' },
    height,
    width,
    thickness,
    displaced,
  },
  returns: { quantity: 'length', summary: 'outside depth' },
  source: geometry,
  example: { formula: '=CABINET.DEPTH_FOR("14.525 L", "360 mm", "220 mm", "15 mm", "1.15 L")', gives: 0.28 },
  remarks: 'What stands inside is added to the litres that the driver needs, and two panels to the inside depth.',
  compute(given) {
    // Any depth will do to ask for the inner height and width.
    const inside = insideOf({ ...given, depth: 4 * given.thickness });
    if (inside instanceof Problem) return inside;
    return (given.volume + given.displaced) / (inside.height * inside.width) + 2 * given.thickness;
  },
});

export const cabinetHeightFor = define({
  name: 'CABINET.HEIGHT_FOR',
  summary: 'Outside height that gives a cabinet of a width and depth a wanted net volume.',
  parameters: {
    volume: { ...usual.volume, summary: 'net volume wanted' },
    width,
    depth,
    thickness,
    displaced,
  },
  returns: { quantity: 'length', summary: 'outside height' },
  source: geometry,
  example: { formula: '=CABINET.HEIGHT_FOR("14.525 L", "220 mm", "280 mm", "15 mm", "1.15 L")', gives: 0.36 },
  compute(given) {
    const inside = insideOf({ ...given, height: 4 * given.thickness });
    if (inside instanceof Problem) return inside;
    return (given.volume + given.displaced) / (inside.width * inside.depth) + 2 * given.thickness;
  },
});

export const braceVolume = define({
  name: 'BRACE.VOLUME',
  summary: 'Volume that level braces with openings take from a cabinet.',
  parameters: {
    width,
    depth,
    thickness,
    solid: { quantity: 'ratio', min: 0, max: 1, default: 0.5, summary: 'share of a brace that is left standing' },
    count: { quantity: 'ratio', whole: true, min: 0, max: 100, default: 1, summary: 'how many braces' },
  },
  returns: { quantity: 'volume', summary: 'volume of the braces' },
  source: geometry,
  example: { formula: '=BRACE.VOLUME("220 mm", "280 mm", "15 mm", 0.5, 1)', gives: 0.000356 },
  remarks: 'Width and depth are the outside ones, from which two panels go.',
  compute(given) {
    const inside = insideOf({ ...given, height: 4 * given.thickness });
    if (inside instanceof Problem) return inside;
    return inside.width * inside.depth * given.thickness * given.solid * given.count;
  },
});

export const cabinetClearance = define({
  name: 'CABINET.CLEARANCE',
  summary: 'Room between the back of a driver and the back panel; negative when it does not fit.',
  parameters: {
    depth,
    thickness,
    driverDepth: { ...usual.length, summary: 'depth of the driver behind its flange' },
    flush: {
      quantity: 'length',
      min: 0,
      max: 1,
      default: 0,
      summary: 'how deep the flange is let into the front, 0 when it lies on it',
    },
  },
  returns: { quantity: 'length', summary: 'free depth behind the magnet' },
  source: geometry,
  example: { formula: '=CABINET.CLEARANCE("280 mm", "15 mm", "78 mm")', gives: 0.187 },
  remarks:
    'Leave 25 mm or more behind the magnet for the air and the wires (common practice, no source). The flange lies on the outside of the front, so the front panel counts as room.',
  compute: (given) => given.depth - given.thickness - given.driverDepth - given.flush,
});
