/** Resistivity of annealed copper at 20 °C, Ω·m: 100 % of the International Annealed Copper Standard, IEC 60028. */
const copperResistivity = 1.7241e-8;
/** Rise of its resistance per kelvin, referred to 20 °C, IEC 60028. */
export const copperRise = 0.00393;
/** kg/m³ at 20 °C, IEC 60028. */
export const copperDensity = 8890;
/** 20 °C. */
export const roomTemperature = 293.15;

export const areaOf = (diameter: number): number => (Math.PI * diameter ** 2) / 4;

/** Ohms of a round copper wire. */
export const wireResistance = (length: number, area: number, temperature = roomTemperature): number =>
  ((copperResistivity * length) / area) * (1 + copperRise * (temperature - roomTemperature));
