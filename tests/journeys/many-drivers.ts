import { evenNumbers } from '../../functions/numeric/random.ts';
import { isRefusal } from '../../src/document/command.ts';
import { meaningOf, type DriverEntry, type RowMeaning } from '../../src/document/shelf/entry.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };

/** How far each number of a datasheet strays, as a share; what follows from them is left out, so that no sheet contradicts itself. */
const strays: Partial<Record<NonNullable<RowMeaning>, number>> = {
  fs: 0.15,
  qms: 0.2,
  qes: 0.2,
  re: 0.05,
  le: 0.2,
  sd: 0.1,
  mms: 0.1,
  xmax: 0.25,
  pe: 0.3,
  flange: 0.05,
  breakup: 0.15,
  price: 0.4,
  nominal: 0,
};

/** So many drivers about the invented ones, the same for the same seed. */
export function manyDrivers(count: number, seed: number): DriverEntry[] {
  const stray = evenNumbers(seed);
  const invented = decodeShelf(drivers);
  if (isRefusal(invented)) throw new Error(invented.refused);
  return Array.from({ length: count }, (_, index) => {
    const origin = invented[index % invented.length];
    if (!origin) throw new Error('There is no invented driver.');
    const rows = origin.rows.flatMap(({ label, text }) => {
      const meaning = meaningOf(label);
      const share = meaning === undefined ? undefined : strays[meaning];
      if (share === undefined) return [];
      const [number = '', ...unit] = text.split(' ');
      const value = Number((Number(number) * (1 + share * stray())).toPrecision(3));
      return [{ label, text: [value, ...unit].join(' ') }];
    });
    return { ...origin, id: `many-${index}`, name: `${origin.name} no. ${index + 1}`, rows, source: 'Scattered.' };
  });
}
