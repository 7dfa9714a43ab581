import type { LessonInput, LessonStep } from '../../components/lesson/data.ts';
import { labelOf } from '../../document/labels.ts';
import { shownText } from '../../document/show-cell.ts';
import type { ShownCell } from '../../document/shown.ts';
import type { Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { parseQuantity } from '../../units/parse.ts';
import { plotPicture } from '../plots/plot-picture.ts';

const EMPTY: ShownCell = { kind: 'empty' };

/** The lesson of a sheet as it stands now. A name in braces within a text, as {Width}, stands for what that cell shows,
 *  and a sign that it is still to come before it is computed. */
export function lessonOf(workbook: Workbook, sheet: Sheet): readonly LessonStep[] {
  const addressOf = (cell: string): string => sheet.names.get(cell) ?? cell;
  const shown = (cell: string): ShownCell => workbook.shown(sheet.id, addressOf(cell)) ?? EMPTY;
  const filledIn = (text: string): string =>
    text.replaceAll(/\{(\w+)\}/gu, (_, name: string) => (shownText(shown(name)) || '…').replace(' °', '°'));
  const input = (cell: string): LessonInput => {
    const address = addressOf(cell);
    const held = sheet.cells.get(address);
    return {
      cell: address,
      label: labelOf(sheet, address),
      text: held?.text ?? '',
      unit: parseQuantity(held?.range?.[0] ?? '')?.unit ?? '',
      ...(held?.choices && { choices: held.choices }),
    };
  };
  // What can be answered is asked with the question; all else is kept for the answer.
  const isAsked = (cell: string): boolean => sheet.cells.get(addressOf(cell))?.choices !== undefined;
  return (sheet.lesson ?? []).map((step) => {
    const plot = sheet.plots.find(({ id }) => id === step.plot);
    const picture = plot && plotPicture(workbook, sheet, plot);
    return {
      title: step.title,
      text: filledIn(step.text),
      guess: input(step.guess),
      asked: step.reveal.filter(isAsked).map(input),
      reveal: step.reveal
        .filter((cell) => !isAsked(cell))
        .map((cell) => ({ label: labelOf(sheet, addressOf(cell)), shown: shown(cell) }))
        .filter((each) => each.shown.kind !== 'empty' && shownText(each.shown) !== ''),
      why: filledIn(step.why),
      next: filledIn(step.next),
      ...(picture?.kind === 'curves' && { curves: picture.data }),
      ...(picture?.kind === 'window' && { window: picture.data }),
      ...(picture?.kind === 'drawing' && { drawing: picture.data }),
    };
  });
}
