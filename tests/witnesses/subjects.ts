/** Drivers, boxes, filters and ways that several witnesses ask about, as parts of formulas. */
export const woofer = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm", "0.55 mH", "70 W")';
export const tweeter = 'DRIVER.OF("850 Hz", 2.6, 1.05, "0.007383 L", "5.6 ohm", "7 cm2", "0.35 mm", "0.03 mH")';
export const closed = `CLOSED.BOX(${woofer}, "12.1 L")`;
export const vented = `VENTED.BOX(${woofer}, "22.3 L", "39.6 Hz")`;
export const radiator = `RADIATOR.BOX(${woofer}, "20 L", "210 cm2", "120 g", "0.9 mm/N", "1.5 kg/s")`;
export const bandpass = `BANDPASS.BOX(${woofer}, "12 L", "8 L", "70 Hz")`;
export const lowPass = 'NETWORK.LOW("LR2", "1900 Hz", "5.8 ohm")';
export const highPass = 'NETWORK.HIGH("LR2", "1900 Hz", "5.9 ohm")';
export const low = `WAY.OF(${closed}, NETWORK.JOIN(${lowPass}, NETWORK.FLATTEN("5.8 ohm", "16.4 µF")))`;
export const high = `WAY.OF(${tweeter}, NETWORK.JOIN(${highPass}, NETWORK.PAD("2.7 ohm", "6.8 ohm")), 0, 0, 0, "reversed")`;
export const woofer5 = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")';
export const woofer3 = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "3.1 Ω", "132 cm²", "5.5 mm")';
export const sweep =
  '"10 7.175715 32.83643\n20 12.235882 53.42910\n25 17.846463 57.99933\n30 29.328059 55.97267\n34 49.403284 42.01554\n36 64.029841 25.05020\n38 72.085714 0.00000\n40 64.715665 -23.95647\n42 52.094734 -39.47465\n46 34.721859 -53.10090\n52 23.056099 -58.07209\n60 16.511564 -57.51302\n80 10.797937 -50.52228\n120 7.826189 -38.15002\n200 6.506285 -24.68771\n400 5.974819 -12.79619\n800 5.843613 -6.45910\n1600 5.810898 -3.23733", "5.8 Ω"';
export const tweeterWay = `WAY.OF(${tweeter}, ${highPass})`;
