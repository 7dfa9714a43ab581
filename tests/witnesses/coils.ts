import { exactly, type Witness } from './witness.ts';

const brooks = {
  source: 'Brooks coil, L = 1.6994·10⁻⁶·a·N² (Grover 1946), solved with scipy',
  confirmed: 'computed',
} as const;
const byHand = { source: 'worked by hand', confirmed: 'computed' } as const;
const preferred = { source: 'IEC 60063, series E12: … 2.2, 2.7, 3.3 … 6.8, 8.2', confirmed: 'read' } as const;

export const coilsWitnesses: readonly Witness[] = [
  { formula: '=COIL.TURNS("1 mH", "1 mm")', gives: 166.29844, within: { relative: 0.0001 }, ...brooks },
  { formula: '=COIL.SIDE("1 mH", "1 mm")', gives: 0.014185243, within: { relative: 0.0001 }, ...brooks },
  { formula: '=COIL.WIRE_LENGTH("1 mH", "1 mm")', gives: 22.232898, within: { relative: 0.0001 }, ...brooks },
  {
    formula: '=COIL.RESISTANCE("1 mH", "1 mm")',
    gives: 0.48805487,
    within: { relative: 0.0001 },
    source: 'Brooks coil, L = 1.6994·10⁻⁶·a·N² (Grover 1946), solved with scipy, copper of IEC 60028',
    confirmed: 'computed',
  },
  {
    formula: '=COIL.WEIGHT("1 mH", "1 mm")',
    gives: 0.15523431,
    within: { relative: 0.0001 },
    source: 'Brooks coil, L = 1.6994·10⁻⁶·a·N² (Grover 1946), solved with scipy, copper of 8890 kg/m³',
    confirmed: 'computed',
  },
  { formula: '=COIL.PRICE("1 mH", "1 mm", 30 ¤)', gives: 4.6570293, within: { relative: 0.0001 }, ...brooks },
  {
    formula: '=COIL.WIRE("1 mH", "0.488055 Ω")',
    gives: 0.001,
    within: { relative: 0.0001 },
    source: 'the same turned round',
    confirmed: 'computed',
  },
  {
    formula: '=TABLE.AT(COIL.CHOICES("1 mH", 30 ¤), 4, "Resistance", 1 Ω)',
    vouches: ['COIL.CHOICES'],
    gives: 0.48805487,
    within: { relative: 0.0001 },
    source: 'Brooks coil, L = 1.6994·10⁻⁶·a·N² (Grover 1946), solved with scipy; fourth row is 1 mm',
    confirmed: 'computed',
  },
  { formula: '=COIL.Q("1.2 mH", "0.35 Ω", "2 kHz")', gives: 43.084699, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=COIL.INDUCTANCE(150, "30 mm", "15 mm", "15 mm")',
    gives: 0.0008541901,
    within: { relative: 1e-6 },
    source: 'Wheeler 1928: 0.8·a²·N²/(6a + 9b + 10c) in inches, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=COIL.TURNS_ON("0.85419010 mH", "30 mm", "15 mm", "15 mm")',
    gives: 150,
    within: { relative: 1e-5 },
    source: 'the same turned round',
    confirmed: 'computed',
  },
  {
    formula: '=WIRE.DIAMETER(18)',
    gives: 0.0010237,
    within: { absolute: 1e-6 },
    source: 'ASTM B258: 0.0403 in',
    confirmed: 'memory',
  },
  { formula: '=WIRE.AREA("1.382 mm")', gives: 1.5000508e-6, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=WIRE.RESISTANCE("21.2 m", "1 mm")',
    gives: 0.46538077,
    within: { relative: 1e-5 },
    source: 'IEC 60028, 0.017241 Ω·mm²/m, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=CABLE.RESISTANCE("5 m", "2.5 mm²")',
    gives: 0.068964,
    within: { relative: 1e-5 },
    source: 'IEC 60028, there and back, by hand',
    confirmed: 'computed',
  },
  { formula: '=CABLE.LOSS("10 m", "1.5 mm²", "4 Ω")', gives: 0.48536111, within: { absolute: 1e-5 }, ...byHand },
  { formula: '=CABLE.DAMPING("5 m", "2.5 mm²", "8 Ω")', gives: 116.00255, within: { relative: 1e-5 }, ...byHand },
  { formula: '=STANDARD.NEAREST("2.78 Ω", "E12")', gives: 2.7, within: exactly, ...preferred },
  { formula: '=STANDARD.BELOW("7.27 Ω", "E12")', gives: 6.8, within: exactly, ...preferred },
  { formula: '=STANDARD.ABOVE("7.27 Ω", "E12")', gives: 8.2, within: exactly, ...preferred },
  {
    formula: '=STANDARD.TOLERANCE("E24")',
    gives: 0.05,
    within: exactly,
    source: 'IEC 60063: E24 for 5 %',
    confirmed: 'read',
  },
  {
    formula: '=TABLE.AT(STANDARD.PAIRS("2.5 Ω"), 1, "Together", 1 Ω)',
    vouches: ['STANDARD.PAIRS'],
    gives: 2.4957983,
    within: { relative: 1e-5 },
    source: '2.7 and 33 in parallel, by hand',
    confirmed: 'computed',
  },
];
