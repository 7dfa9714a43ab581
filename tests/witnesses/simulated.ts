/** A circuit built from the values of its elements and solved by a simulator while the tests run, 10 Hz to 20 kHz. */
export interface Simulated {
  /** What is built, as its test is named. */
  readonly name: string;
  readonly test: string;
  readonly vouches: readonly string[];
}

const boxes = 'tests/functions/enclosure/simulated.test.ts';
const crossovers = 'tests/functions/crossover/circuit.test.ts';
const read = ['BOX.RESPONSE', 'BOX.LEVEL', 'BOX.TRAVEL', 'BOX.IMPEDANCE'];
const ways = ['WAY.OF', 'WAY.LEVEL', 'WAY.DRIVE', 'WAY.IMPEDANCE', 'SYSTEM.LEVEL', 'SYSTEM.IMPEDANCE', 'NETWORK.OF'];

export const simulated: readonly Simulated[] = [
  { name: 'closed box', test: boxes, vouches: ['CLOSED.BOX', ...read] },
  { name: 'closed box with filling, absorption and a leak', test: boxes, vouches: ['CLOSED.BOX', ...read] },
  { name: 'vented box with a leak', test: boxes, vouches: ['VENTED.BOX', 'BOX.PORT_SPEED', ...read] },
  { name: 'vented box with all three losses', test: boxes, vouches: ['VENTED.BOX', 'BOX.PORT_SPEED', ...read] },
  { name: 'passive radiator', test: boxes, vouches: ['RADIATOR.BOX', 'BOX.RADIATOR_TRAVEL', ...read] },
  { name: 'band-pass box', test: boxes, vouches: ['BANDPASS.BOX', 'BOX.PORT_SPEED', ...read] },
  { name: 'infinite baffle', test: boxes, vouches: ['BAFFLE.BOX', 'DRIVER.IMPEDANCE', ...read] },
  { name: 'two-way and three-way networks', test: crossovers, vouches: [...ways, 'NETWORK.JOIN', 'NETWORK.PAD'] },
];
