import type { Refusal } from '../command.ts';
import type { OctavoDocument } from '../types.ts';
export function duplicateSheet(
  document: OctavoDocument,
  _sheet: string,
  _id: string,
  _name?: string,
): OctavoDocument | Refusal {
  return document;
}
