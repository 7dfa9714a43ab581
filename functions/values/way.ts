import type { Box } from './box.ts';
import type { Curve } from './curve.ts';
import type { Driver } from './driver.ts';
import type { Network } from './network.ts';

/** Where a driver sits on the front panel, in metres. */
export interface Position {
  /** To the right of the listening axis. */
  readonly x: number;
  /** Above the listening axis. */
  readonly y: number;
  /** Of the acoustic centre behind the panel, positive backwards. */
  readonly z: number;
}

/** One driver with its filter, as it takes part in the sum of a loudspeaker. */
export interface Way {
  readonly kind: 'way';
  readonly name: string;
  /** Level in dB at 1 m into half space for 2.83 V at the driver's terminals, with phase. */
  readonly pressure: Curve;
  /** Of the driver where it is mounted, with phase. */
  readonly impedance: Curve;
  /** Between amplifier and driver; without legs for a wire. */
  readonly network: Network;
  /** Radiating area; 0 when it is to be taken as a point. */
  readonly sd: number;
  readonly position: Position;
  readonly polarity: 1 | -1;
  /** Gain of an active filter or amplifier ahead of it, dB. */
  readonly gain: number;
  /** Delay ahead of it, seconds. */
  readonly delay: number;
  /** An active filter ahead of the amplifier, level in dB with phase. */
  readonly active?: Curve;
  /** One-way peak travel for 2.83 V at the driver's terminals. */
  readonly travel?: Curve;
  readonly driver?: Driver;
  readonly box?: Box;
  /** Whether its curves were measured or come from a model. */
  readonly basis: 'model' | 'measured';
}
