import { Simulation } from 'eecircuit-engine';
import { airDensity, soundSpeed } from '../../../functions/air.ts';

export interface Complex {
  readonly real: number;
  readonly img: number;
}

/** What a driver is made of, SI, with the net volume of its closed box where it has one. */
export interface Elements {
  readonly re: number;
  readonly le: number;
  readonly bl: number;
  readonly mms: number;
  readonly cms: number;
  readonly rms: number;
  readonly sd: number;
  readonly volume?: number;
}

/** Voltage-current loop, force-velocity loop and the air of the box as a circuit, coupled by controlled sources. The
 *  terminals are `at` and ground; the velocity of the cone is the current in Vv. */
export function driverNetlist(id: string, at: string, of: Elements): string[] {
  const air = of.volume === undefined ? undefined : of.volume / (airDensity * soundSpeed ** 2 * of.sd ** 2);
  return [
    `Re${id} ${at} ${id}in1 ${of.re}`,
    `Le${id} ${id}in1 ${id}in2 ${of.le}`,
    `Vi${id} ${id}in2 ${id}in3 0`,
    `Hb${id} ${id}in3 0 Vv${id} ${of.bl}`,
    `Hf${id} ${id}inm 0 Vi${id} ${of.bl}`,
    `Lm${id} ${id}inm ${id}inn ${of.mms}`,
    `Cm${id} ${id}inn ${id}inp ${of.cms}`,
    `Rm${id} ${id}inp ${id}inq ${of.rms}`,
    `Vv${id} ${id}inq ${air === undefined ? '0' : `${id}inr`} 0`,
    // Without a way for direct current between two capacitances the simulator first looks in vain for a place of rest.
    ...(air === undefined ? [] : [`Ca${id} ${id}inr 0 ${air}`, `Rr${id} ${id}inr 0 1e12`]),
  ];
}

/** Runs an alternating-current analysis on the frequencies of the grid, 48 an octave from 10 Hz. */
export async function simulate(netlist: readonly string[]): Promise<ReadonlyMap<string, readonly Complex[]>> {
  const simulation = new Simulation();
  await simulation.start();
  simulation.setNetList(['loudspeaker', ...netlist, '.ac oct 48 10 40960', '.save all', '.end', ''].join('\n'));
  const result = await simulation.runSim();
  if (result.dataType !== 'complex') throw new Error('the simulator gave no alternating-current result');
  return new Map(result.data.map(({ name, values }) => [name.toLowerCase(), values as Complex[]]));
}
