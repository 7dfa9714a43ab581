import { layBars } from './bars.ts';
import type { DrawingData } from './data.ts';
import type { Laid, Room } from './laid.ts';
import { layPoints } from './points.ts';
import { layShapes } from './shapes.ts';

/** A drawing in its room. */
export function lay(data: DrawingData, room: Room): Laid {
  switch (data.form) {
    case 'bars':
      return layBars(data, room);
    case 'points':
    case 'lines':
      return layPoints(data, room);
    case 'shapes':
      return layShapes(data, room);
  }
}
