import { quantities, type QuantityName } from '../../../../functions/quantities.ts';
import type { PlotDraft } from '../../../components/plot-form/data.ts';
import type { UnitSystem } from '../../../document/types.ts';
import { defaultUnit } from '../../../units/defaults.ts';
import { parseQuantity } from '../../../units/parse.ts';
import { isAlike, type Saying } from './saying.ts';

type Ends = readonly [string, string];
const NONE: Ends = ['', ''];

/** The ends of an axis as a plot keeps them, both with their unit; none where they are empty or wrong. */
export function checkEnds(
  draft: PlotDraft,
  axis: 'horizontal' | 'vertical',
  quantity: QuantityName | undefined,
  system: UnitSystem,
  say: Saying,
): Ends {
  const typed = draft[axis];
  if (typed.every((text) => text.trim() === '')) return NONE;
  const [from, to] = typed.map((text, index) => endOf(text, `${axis}.${String(index)}`, quantity, system, say));
  if (!from || !to) return NONE;
  if (from.value >= to.value) {
    say.wrong(`${axis}.1`, `${to.text} is not above ${from.text}: the axis goes from the lower end to the higher.`);
    return NONE;
  }
  // Curves and windows stand over a logarithmic axis.
  if (axis === 'horizontal' && (draft.kind === 'curves' || draft.kind === 'window') && from.value <= 0) {
    say.wrong(`${axis}.0`, 'An axis of frequency begins above 0 Hz, as it is logarithmic: write 20 Hz.');
    return NONE;
  }
  return [from.text, to.text];
}

function endOf(
  typed: string,
  at: string,
  quantity: QuantityName | undefined,
  system: UnitSystem,
  say: Saying,
): { readonly text: string; readonly value: number } | undefined {
  const text = typed.trim();
  if (text === '') return say.wrong(at, 'Write this end too, or leave both empty.');
  const unit = quantity ? defaultUnit(quantity, system) : '';
  const parsed = parseQuantity(text);
  if (!parsed)
    return say.wrong(
      at,
      `“${text}” is no quantity: write a number${unit ? ` with its unit, such as 20 ${unit}` : ''}.`,
    );
  if (parsed.unit === '' && unit !== '') {
    const read = `${text} ${unit}`;
    say.note(at, `Read as ${read}.`);
    return { text: read, value: parseQuantity(read)?.value ?? parsed.value };
  }
  if (quantity && !isAlike(parsed.quantity, quantity))
    return say.wrong(
      at,
      `“${text}” is ${quantities[parsed.quantity].noun}, and this axis shows ${quantities[quantity].noun}.`,
    );
  return { text, value: parsed.value };
}
