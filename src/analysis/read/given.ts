import { parseQuantity } from '../../units/parse.ts';
import { bestMatches, wordsOf } from './match.ts';
import { isSame, oneOf } from './cells.ts';
import type { Unread } from './types.ts';
import type { DocumentModel } from '../model/document-model.ts';
import type { Input, SetInput } from '../subject/types.ts';

/** `106 dB`, `target 106 dB`, `the box at 12 L`. */
export function readGiven(model: DocumentModel, words: string): SetInput | Unread {
  const [, phrase = '', written = ''] = /^(.*?)\s*([-+−]?[\d.,].*)$/.exec(words.trim()) ?? [];
  const quantity = parseQuantity(written);
  if (!quantity)
    return {
      wrong: `“${words.trim()}” is no quantity that could be set: give a number with its unit.`,
      suggestions: [],
    };
  const fitting = model.subject.inputs.filter(
    (each) => typeof each.present === 'number' && isSame(each.quantity, quantity),
  );
  const isNamed = wordsOf(phrase).length > 0;
  const meant = isNamed ? chosenOf(bestMatches(phrase, fitting)) : aimedAt(fitting);
  const input = meant ?? oneOf(isNamed ? phrase : written, fitting, 'input');
  if ('wrong' in input) return input;
  return { sheet: input.sheet, cell: input.cell, label: input.label, value: quantity.value, text: written.trim() };
}

/** A level given without a name is the one aimed at. */
function aimedAt(inputs: readonly Input[]): Input | undefined {
  const aimed = inputs.filter(({ label, name }) => wordsOf(`${label} ${name ?? ''}`).includes('target'));
  return chosenOf(aimed) ?? aimed[0];
}

/** Of several with one label the one that has a name, else the one that has a range: the others are its thresholds. */
function chosenOf(inputs: readonly Input[]): Input | undefined {
  const named = inputs.filter(({ name }) => name !== undefined);
  const [chosen, other] = named.length > 0 ? named : inputs.filter(({ isRangeGiven }) => isRangeGiven);
  return other ? undefined : chosen;
}
