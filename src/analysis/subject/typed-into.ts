import { withText } from '../../document/sheets.ts';
import type { OctavoDocument } from '../../document/types.ts';
import type { SetInput } from './types.ts';

/** A document in which some inputs are set to something else. */
export const typedInto = (document: OctavoDocument, given: readonly SetInput[]): OctavoDocument =>
  given.reduce((held, { sheet, cell, text }) => withText(held, { sheet, cell }, text), document);
