/** Air at 20 °C, 101.325 kPa, dry: density in kg/m³. */
export const airDensity = 1.204;

/** Speed of sound in that air, m/s. */
export const soundSpeed = 343.2;

/** 0 dB of sound pressure level, Pa rms. */
export const referencePressure = 20e-6;

/** The usual voltage of a sensitivity figure, V rms: near to 1 W into 8 Ω, not exactly. */
export const standardVolts = 2.83;

/** Sound pressure level of 1 W of sound power at 1 m into half space, dB. */
export const halfSpaceWattLevel = 10 * Math.log10((airDensity * soundSpeed) / (2 * Math.PI) / referencePressure ** 2);
