/** The questions over a whole sheet, by their words on the command line. */
export const questionWords = ['sweep', 'seek', 'scatter', 'drives'] as const;
export type QuestionWord = (typeof questionWords)[number];

export const questionUsage = `Questions over a whole sheet; cells as NAME, B4 or Sheet!B4, quantities as typed, JSON out:

  calc FILE sweep   --input NAME --from Q --to Q [--steps 20] [--spacing linear|logarithmic] --result NAME ...
  calc FILE seek    --ask 'which litres give Qtc 0.707?'
                    or --input NAME --result NAME, --target Q or --good or --clear (of failure)
  calc FILE scatter --spread 'Woofer=cms 0.12 bl 0.03' --spread 'Volume=0.03' --result NAME ...
                    [--runs 2000] [--seed 1]
  calc FILE drives  --result NAME   what it depends on, or --input NAME for all that follows`;

/** A question with its flags, each as often as it was given. */
export interface Asking {
  readonly file: string;
  readonly word: QuestionWord;
  readonly flags: ReadonlyMap<string, readonly string[]>;
}

const known: Readonly<Record<QuestionWord, readonly string[]>> = {
  sweep: ['input', 'from', 'to', 'steps', 'spacing', 'result'],
  seek: ['ask', 'input', 'result', 'target', 'good', 'clear'],
  scatter: ['spread', 'result', 'runs', 'seed'],
  drives: ['result', 'input'],
};
/** Flags that stand alone. */
const bare = new Set(['good', 'clear', 'json']);

/** Reads a question; nothing where the arguments hold none. */
export function readAsking([file, second, ...rest]: readonly string[]):
  Asking | { readonly wrong: string } | undefined {
  const word = questionWords.find((each) => each === second);
  if (file === undefined || !word) return undefined;
  const flags = new Map<string, string[]>();
  for (let index = 0; index < rest.length; index++) {
    const [, flag = '', inline] = /^--([a-z]+)(?:=([\s\S]*))?$/.exec(rest[index] ?? '') ?? [];
    if (!known[word].includes(flag) && flag !== 'json')
      return {
        wrong: `${word} does not take ${rest[index] ?? ''}; it takes ${known[word].map((each) => `--${each}`).join(', ')}.`,
      };
    const value = bare.has(flag) ? '' : (inline ?? rest[++index]);
    if (value === undefined) return { wrong: `--${flag} wants a value.` };
    flags.set(flag, [...(flags.get(flag) ?? []), value]);
  }
  return { file, word, flags };
}
