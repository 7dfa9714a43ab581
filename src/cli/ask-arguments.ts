/** The questions over a whole sheet, by their words on the command line. */
export const questionWords = [
  'sweep',
  'seek',
  'scatter',
  'drives',
  'map',
  'combine',
  'best',
  'cheapest',
  'shortlist',
] as const;
export type QuestionWord = (typeof questionWords)[number];

export const questionUsage = `Questions over a whole sheet; cells as NAME, B4 or Sheet!B4, quantities as typed, JSON out:

  calc FILE sweep   --input NAME --from Q --to Q [--steps 20] [--spacing linear|logarithmic] --result NAME ...
  calc FILE seek    --ask 'which litres give Qtc 0.707?', 'smallest box that keeps every verdict', 'cheapest change'
                    or --input NAME --result NAME, --target Q or --good or --clear (of failure)
  calc FILE scatter --spread 'Woofer=cms 0.12 bl 0.03' --spread 'Volume=0.03' --result NAME ...
                    [--runs 2000] [--seed 1]
  calc FILE drives  --result NAME   what it depends on, or --input NAME for all that follows
  calc FILE map     --across 'Volume=5 L..20 L/30' --up 'NAME=FROM..TO/STEPS' --result NAME [--verdict NAME ...]
  calc FILE combine --vary 'Volume=8 L,10 L' --vary 'NAME=FROM..TO/COUNT' --result NAME ...
                    [--least NAME or --most NAME] [--works] [--rows 20]   every combination, the best given
  calc FILE best    --vary 'Volume=5 L..20 L' ... --least NAME or --most NAME or --nearest NAME=VALUE
                    or --flat CURVE --band '50 Hz..200 Hz' [--limit 'NAME<=Q' ...] [--good or --clear (of failure)]
                    the best within bounds
  calc FILE cheapest  [--driver NAME ...] [--part NAME ...] [--series E12] [--vary 'NAME=VALUES' ...]
                    [--price 'NAME=4 + 0.9 * value' ...] [--cost money|changes|NAME] [--changes 2] [--clear]
                    [--shelf FILE]   what turns every failure; a part costs what its price says of the number that is
                    typed, and 0 where none is given
  calc FILE shortlist [--wish 'a two-way under 300 that reaches 45 Hz and plays 103 dB'] [--ways 2|3|subs]
                    [--price Q] [--reach Q] [--box vented|closed] [--plays Q] [--works]
                    [--ranking 'window*10-price/100'] [--rule 'travel=0.6, 1'] [--rows 20] [--shelf FILE]
                    the drivers of a shelf that go together, the best three explained; FILE is any sheet, the shelf
                    the invented drivers where none is given`;

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
  map: ['across', 'up', 'result', 'verdict'],
  combine: ['vary', 'result', 'least', 'most', 'works', 'rows'],
  best: ['vary', 'least', 'most', 'nearest', 'flat', 'band', 'limit', 'good', 'clear'],
  cheapest: ['driver', 'part', 'series', 'vary', 'price', 'cost', 'changes', 'clear', 'shelf'],
  shortlist: ['wish', 'ways', 'price', 'reach', 'box', 'plays', 'works', 'ranking', 'rule', 'rows', 'shelf'],
};
/** Flags that stand alone. */
const bare = new Set(['good', 'clear', 'works', 'json']);

/** Reads a question; nothing where the arguments hold none. */
export function readAsking([file, second, ...rest]: readonly string[]):
  Asking | { readonly wrong: string } | undefined {
  const word = questionWords.find((each) => each === second);
  if (questionWords.some((each) => each === file))
    return { wrong: `The file comes before the question: calc FILE ${file} …; --help shows how it is written.` };
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
