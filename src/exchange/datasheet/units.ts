import { LONGEST_UNIT, unitNamed, type Unit } from '../../units/table.ts';

/** Spellings of datasheets that nobody would type into a cell. */
const spellings: ReadonlyMap<string, string> = new Map(
  Object.entries({
    hertz: 'Hz',
    kilohertz: 'kHz',
    tm: 'T·m',
    'tesla m': 'T·m',
    'tesla metre': 'T·m',
    'tesla meter': 'T·m',
    't-m': 'T·m',
    't x m': 'T·m',
    txm: 'T·m',
    'n/amp': 'T·m',
    'newton/ampere': 'T·m',
    'um/n': 'µm/N',
    'mm/newton': 'mm/N',
    'kg/sec': 'kg/s',
    'kg·s-1': 'kg/s',
    'ns/m': 'kg/s',
    'n.s/m': 'kg/s',
    'n-s/m': 'kg/s',
    'mech. ohm': 'kg/s',
    'mechanical ohms': 'kg/s',
    'sq. cm': 'cm²',
    'sq.cm': 'cm²',
    'cm sq': 'cm²',
    'sq. in': 'in²',
    'sq. inches': 'in²',
    'square inches': 'in²',
    'cu. ft': 'ft³',
    'cubic ft': 'ft³',
    'cu. in': 'in³',
    millimeters: 'mm',
    millimetres: 'mm',
    ltr: 'L',
    'ltr.': 'L',
    mhenry: 'mH',
    millihenry: 'mH',
    millihenries: 'mH',
    mh: 'mH',
    uh: 'µH',
    wrms: 'W',
    watts: 'W',
    'w rms': 'W',
    gm: 'g',
    gms: 'g',
    grammes: 'g',
    ohms: 'Ω',
    r: 'Ω',
    '€': '¤',
    $: '¤',
    '£': '¤',
    eur: '¤',
    usd: '¤',
  }),
);

/** A unit in the spelling of the table or of a datasheet, in any case where the case says nothing. */
export function unitSpelt(text: string): Unit | undefined {
  const plain = text.trim().replaceAll(/\s+/g, ' ');
  if (plain === '') return undefined;
  return unitNamed(plain) ?? unitNamed(spellings.get(plain.toLowerCase()) ?? '\u0000');
}

/** What goes on behind a unit makes it part of a longer word. */
const WORD = /^[\p{L}\p{N}]/u;

/** The longest unit with which a text begins, and what is left of the text. */
export function unitAtStart(text: string): { readonly unit: Unit; readonly rest: string } | undefined {
  const start = text.trimStart();
  for (let length = Math.min(LONGEST_UNIT, start.length); length > 0; length--) {
    const spelling = start.slice(0, length);
    if (/\s$/.test(spelling) || WORD.test(start.slice(length))) continue;
    // A second number is no part of the unit, except the power in "cm 2".
    if (/\d/.test(spelling) && !/^[\p{L}. ^]+[23]$/u.test(spelling)) continue;
    const unit = unitSpelt(spelling);
    if (unit) return { unit, rest: start.slice(length) };
  }
  return undefined;
}
