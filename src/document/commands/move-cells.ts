import type { Area, Refusal } from '../command.ts';
import type { Place } from '../../engine/types.ts';
import type { OctavoDocument } from '../types.ts';
export function moveCells(document: OctavoDocument, _from: Area, _to: Place): OctavoDocument | Refusal {
  return document;
}
