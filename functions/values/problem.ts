import type { Sentence } from './say.ts';

/** Why a function has no result. A value, never thrown. `parameter` names the argument at fault. */
export class Problem {
  readonly message: Sentence;
  readonly parameter: string | undefined;

  constructor(message: Sentence, parameter?: string) {
    this.message = message;
    this.parameter = parameter;
  }
}
