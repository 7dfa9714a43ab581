import type { PictureSection, SheetImage } from '../../components/gallery/data.ts';
import { labelOf } from '../../document/labels.ts';
import { shownText } from '../../document/show-cell.ts';
import type { Sheet } from '../../document/types.ts';
import { countVerdicts } from '../../document/verdicts.ts';
import type { Workbook } from '../../document/workbook.ts';
import { parseAddress } from '../../formula/address.ts';
import { plotPicture } from '../plots/plot-picture.ts';

const FIGURES = 6;

/** What a sheet looks like, small, from what the engine made of it; before that, without verdicts and plot. */
export function sheetImageOf(workbook: Workbook, sheet: Sheet): SheetImage {
  const [plot] = sheet.plots;
  const picture = plot && plotPicture(workbook, sheet, plot);
  return {
    sections: sectionsOf(workbook, sheet),
    ...(picture?.kind === 'curves' && picture.data.series.length > 0 && { curves: picture.data }),
    ...(picture?.kind === 'window' && { window: picture.data }),
    ...(picture?.kind === 'drawing' && { drawing: picture.data }),
    ...(!plot && { figures: figuresOf(workbook, sheet) }),
  };
}

/** The sections in their order with the verdicts that stand in each, up to the next. */
function sectionsOf(workbook: Workbook, sheet: Sheet): readonly PictureSection[] {
  const cells = [...sheet.cells].map(([address, cell]) => ({ address, cell, row: parseAddress(address)?.row ?? 0 }));
  const heads = cells.filter(({ cell }) => cell.look === 'section').toSorted((a, b) => a.row - b.row);
  return heads.map(({ cell, row }, index) => {
    const end = heads[index + 1]?.row ?? Number.POSITIVE_INFINITY;
    const within = cells.filter((each) => each.row > row && each.row < end);
    const counts = countVerdicts(within.map(({ address }) => workbook.state(sheet.id, address)));
    // What a heading adds after its first words has no room in a picture.
    return { title: cell.text.split(/[,:]/u)[0] ?? cell.text, ...counts };
  });
}

/** The first numbers that have a name and are computed: what a sheet without plots is for. */
function figuresOf(workbook: Workbook, sheet: Sheet): NonNullable<SheetImage['figures']> {
  return [...sheet.names.values()]
    .filter((cell) => sheet.cells.get(cell)?.text.startsWith('=') && workbook.shown(sheet.id, cell)?.kind === 'number')
    .slice(0, FIGURES)
    .map((cell) => ({
      label: labelOf(sheet, cell),
      text: shownText(workbook.shown(sheet.id, cell) ?? { kind: 'empty' }),
    }));
}
