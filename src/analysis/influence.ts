import { sameResult } from './datum.ts';
import type { SheetModel } from './sheet-model.ts';
import type { Input, Result } from './subject-types.ts';

/** The inputs of some that change a result when moved through their range; a reference alone is no influence, for a record
 *  carries more than is read from it. */
export async function influential(
  model: SheetModel,
  inputs: readonly Input[],
  result: Result,
): Promise<readonly Input[]> {
  const found: Input[] = [];
  for (const input of inputs) {
    const runner = await model.runner([input], [result]);
    const tried = input.choices ?? (typeof input.present === 'number' ? [...input.range, input.present * 1.02] : []);
    for (const value of tried) {
      const [there] = await runner.at([value]);
      if (there && !sameResult(there, model.present(result))) {
        found.push(input);
        break;
      }
    }
  }
  return found;
}
