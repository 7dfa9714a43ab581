/** Invented drivers as formulas of cells. */
export const woofer =
  '=DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm", "0.55 mH", "70 W", "W-165 A")';
export const smallWoofer =
  '=DRIVER.OF("52 Hz", 4.2, 0.46, "10.91 L", "5.9 Ω", "85 cm²", "4.5 mm", "0.45 mH", "40 W", "W-130 A")';
export const lowOhmWoofer =
  '=DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "3.1 Ω", "132 cm²", "5.5 mm", "0.29 mH", "70 W", "W-165 A4")';
export const longThrow =
  '=DRIVER.OF("24 Hz", 5.5, 0.5, "51.84 L", "3.3 Ω", "335 cm²", "15 mm", "1.6 mH", "350 W", "L-250 T")';
export const middle =
  '=DRIVER.OF("72 Hz", 3.6, 0.4, "4.393 L", "5.8 Ω", "54 cm²", "2.2 mm", "0.25 mH", "40 W", "M-115 A")';
export const tweeter =
  '=DRIVER.OF("850 Hz", 2.6, 1.05, "0.007383 L", "5.6 Ω", "7 cm²", "0.35 mm", "0.03 mH", "10 W", "T-25 A")';
