/** What the command line asks for. */
export type Request =
  | { readonly kind: 'help' }
  | { readonly kind: 'functions'; readonly json: boolean }
  | { readonly kind: 'shelf'; readonly file: string | undefined; readonly find: string; readonly json: boolean }
  | { readonly kind: 'formula'; readonly formula: string; readonly json: boolean }
  | {
      readonly kind: 'document';
      readonly file: string;
      readonly set: readonly { readonly cell: string; readonly text: string }[];
      readonly get: readonly string[];
      readonly json: boolean;
    };

export const usage = `Calculates with the sheets of Octavo, without a browser.

  calc '=FORMULA'                    prints the result of a formula
  calc FILE                          prints the named cells of a document or a template
       --set 'NAME=12 L'             first types a text into a cell (NAME, B4, Sheet!B4)
       --get 'NAME'                  prints this cell only (NAME, B4, Sheet!B4)
  calc --functions                   lists the functions
  calc --shelf FILE                  lists the drivers of a shelf; without a file, the invented ones
       --find 'Fs < 900, Sd > 100 cm2'  only those that are like this

  --json prints JSON, numbers in SI units: for each cell value, unit, text and kind, for a problem its message.
  --set and --get may be given several times. What cannot be read or calculated ends with status 1 and the reason on
  standard error, and so does a --set that leaves a printed cell without its result; what it makes doubtful
  or takes from other cells is told there too. A cell that held a problem before is printed like any other.`;

/** Options without a value. */
const alone: ReadonlySet<string> = new Set(['--json', '--functions', '--help']);

/** Reads the arguments; gives what is wrong with them as an error whose message is for the reader. */
export function readArguments(given: readonly string[]): Request | { readonly wrong: string } {
  const set: { cell: string; text: string }[] = [];
  const get: string[] = [];
  const words: string[] = [];
  let json = false;
  let functions = false;
  let shelf = false;
  let find: string | undefined;
  for (let index = 0; index < given.length; index++) {
    const [option, inline] = splitOption(given[index] ?? '');
    if (inline !== undefined && alone.has(option)) return { wrong: `${option} takes no value, but got "${inline}".` };
    const value = (): string | undefined => inline ?? given[++index];
    if (option === '--help' || option === '-h') return { kind: 'help' };
    if (option === '--json') json = true;
    else if (option === '--functions') functions = true;
    else if (option === '--shelf') {
      shelf = true;
      if (inline !== undefined) words.push(inline);
    } else if (option === '--find') {
      find = value();
      if (find === undefined) return { wrong: `--find wants what is searched, as in --find 'Fs < 900'.` };
    } else if (option === '--set') {
      const change = splitChange(value());
      if ('wrong' in change) return change;
      set.push(change);
    } else if (option === '--get') {
      const cell = value()?.trim();
      if (!cell) return { wrong: '--get wants the cell to print, as in --get HandOver or --get Sheet!B4.' };
      get.push(cell);
    } else if (option.startsWith('-')) {
      return {
        wrong: `There is no option ${option}; known are --set, --get, --shelf, --find, --json, --functions and --help.`,
      };
    } else words.push(option);
  }
  const [first, second] = words.map((word) => (word.trimStart().startsWith('=') ? word.trim() : word));
  if (shelf || find !== undefined) {
    if (!shelf) return { wrong: '--find belongs to a shelf: calc --shelf FILE --find …' };
    if (functions || second !== undefined || set.length + get.length > 0) {
      return { wrong: '--shelf takes one file, and beside it only --find and --json.' };
    }
    return { kind: 'shelf', file: first, find: find ?? '', json };
  }
  if (functions) {
    return first === undefined && set.length + get.length === 0
      ? { kind: 'functions', json }
      : { wrong: '--functions takes nothing beside it but --json.' };
  }
  if (second !== undefined) return { wrong: `One file or formula is wanted, but "${second}" was given too.` };
  if (first === undefined || first.trim() === '') return { wrong: `A formula or a file is wanted.\n\n${usage}` };
  if (!first.startsWith('=')) return { kind: 'document', file: first, set, get, json };
  return set.length + get.length === 0
    ? { kind: 'formula', formula: first, json }
    : { wrong: '--set and --get belong to a file, not to a formula.' };
}

/** `--set=NAME=12 L` is `--set` and `NAME=12 L`. */
function splitOption(word: string): [option: string, inline?: string] {
  const [, option, inline] = /^(--[a-z]+)=([\s\S]*)$/.exec(word) ?? [];
  return option !== undefined && inline !== undefined ? [option, inline] : [word];
}

/** The cell ends at the first equals sign outside quotes; a formula is written with two: `B4==A4*2`. */
function splitChange(change: string | undefined): { cell: string; text: string } | { wrong: string } {
  const [, cell, text] = /^\s*((?:'(?:[^']|'')*')?[^=']+?)\s*=([\s\S]*)$/.exec(change ?? '') ?? [];
  return cell !== undefined && text !== undefined
    ? { cell, text: text.trim() }
    : { wrong: `--set wants NAME=TEXT, as in --set 'Volume=12 L'${change ? `, but got "${change}"` : ''}.` };
}
