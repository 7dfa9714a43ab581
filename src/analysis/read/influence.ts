import { sameResult } from '../model/datum.ts';
import type { DocumentModel } from '../model/document-model.ts';
import type { Input, Result } from '../subject/types.ts';

/** The inputs of some that change any of the results when moved through their range; a reference alone is no influence, for a record
 *  carries more than is read from it. */
export async function influential(
  model: DocumentModel,
  inputs: readonly Input[],
  results: readonly Result[],
): Promise<readonly Input[]> {
  const found: Input[] = [];
  for (const input of inputs) {
    const runner = await model.runner([input], results);
    const tried = input.choices ?? (typeof input.present === 'number' ? [...input.range, input.present * 1.02] : []);
    for (const value of tried) {
      const there = await runner.at([value]);
      if (there.some((each, index) => !sameResult(each, results[index]?.present ?? each))) {
        found.push(input);
        break;
      }
    }
  }
  return found;
}
