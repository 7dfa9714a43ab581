import { usual } from '../usual.ts';

/** Parameters that several enclosure functions share. */
export const driver = { record: 'driver', summary: 'the driver' } as const;
export const box = { record: 'box', summary: 'the box with its driver' } as const;
export const volume = {
  ...usual.volume,
  typical: [2e-5, 1],
  summary: 'net volume of air, without port, driver and braces',
} as const;
export const tuning = { ...usual.frequency, typical: [15, 120], summary: 'port tuning' } as const;
export const portDiameter = { ...usual.length, typical: [0.02, 0.25], summary: 'inner diameter of one port' } as const;
export const portLength = { ...usual.length, typical: [0.01, 1], summary: 'length of the port' } as const;
/** How many equal ones there are of something. */
export const howMany = (summary: string) =>
  ({ quantity: 'ratio', whole: true, min: 1, max: 16, default: 1, summary }) as const;
export const portCount = howMany('number of equal ports');
export const portEnds = {
  choice: ['flanged and free', 'both flanged', 'both free'],
  default: 'flanged and free',
  summary: 'how the ends of the port stand in the walls',
} as const;
export const seriesResistance = {
  quantity: 'resistance',
  min: 0,
  max: 1e6,
  default: 0,
  typical: [0, 2],
  summary: 'resistance between amplifier and driver, coil and cable',
} as const;
export const fill = {
  quantity: 'ratio',
  min: 1,
  max: 1.4,
  default: 1,
  typical: [1, 1.25],
  summary: 'how many times larger filling makes the box appear',
} as const;
export const leakageQ = {
  quantity: 'ratio',
  min: 2,
  max: 1e4,
  default: 7,
  typical: [3, 30],
  summary: 'leakage Q at the tuning',
} as const;
export const lossQ = (summary: string) => ({ ...usual.q, optional: true, typical: [3, 200], summary }) as const;
export const volts = {
  ...usual.volts,
  default: 2.83,
  typical: [0.1, 100],
  summary: 'drive, V rms',
} as const;
export const qts = { ...usual.q, typical: [0.12, 1.9], summary: 'total Q of the driver' } as const;
export const vas = { ...usual.volume, summary: 'equivalent volume of the suspension' } as const;
export const qtc = { ...usual.q, typical: [0.4, 1.5], summary: 'total Q wanted in the box' } as const;

/** A driver in one line, and boxes with it, for examples that stand on their own. */
export const demoDriver = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm", "0.55 mH")';
export const demoClosed = `CLOSED.BOX(${demoDriver}, "12.1 L")`;
export const demoVented = `VENTED.BOX(${demoDriver}, "22.3 L", "39.6 Hz")`;
export const demoRadiator = `RADIATOR.BOX(${demoDriver}, "20 L", "210 cm2", "120 g", "0.9 mm/N", "1.5 kg/s")`;
export const demoBandpass = `BANDPASS.BOX(${demoDriver}, "12 L", "8 L", "70 Hz")`;
