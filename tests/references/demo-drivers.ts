import drivers from './demo-drivers.json' with { type: 'json' };

/** One of the invented drivers of demo-drivers.json. */
export function demoDriver(id: string): (typeof drivers.drivers)[number] {
  const found = drivers.drivers.find((driver) => driver.id === id);
  if (!found) throw new Error(`There is no driver ${id}`);
  return found;
}

/** What a person types for a driver, in the order of the rows of the two-driver check: from its name to its price. */
export function typedDriver(id: string): string[] {
  const driver = demoDriver(id);
  return [
    driver.id,
    `${driver.fs_hz} Hz`,
    `${driver.qms}`,
    `${driver.qes}`,
    `${driver.re_ohm} ohm`,
    `${driver.le_mh} mH`,
    `${driver.sd_cm2} cm2`,
    `${driver.mms_g} g`,
    `${driver.xmax_mm} mm`,
    `${driver.pe_w} W`,
    `${driver.spl_2v83_db} dB`,
    'at 2.83 V',
    `${driver.z_nom_ohm} ohm`,
    `${driver.flange_mm} mm`,
    `${driver.breakup_hz} Hz`,
    `${driver.price} ¤`,
  ];
}
