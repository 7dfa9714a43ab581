import type { BassBox } from './types.ts';
import type { Ways } from './places.ts';

/** What a wish in plain words asks of a shortlist; texts as they would be typed. */
export interface Wish {
  readonly ways?: Ways;
  readonly price?: string;
  readonly reach?: string;
  readonly plays?: string;
  readonly box?: BassBox;
  readonly ranking?: string;
}

export interface WishRead {
  readonly wish: Wish;
  /** Each part that was understood, in the reader's words, and what it was taken for. */
  readonly understood: readonly { readonly words: string; readonly means: string }[];
  /** Phrases that were left out. */
  readonly left: readonly string[];
}

const NUMBER = String.raw`(\d{1,3}(?:[ \u00A0\u2009]\d{3})+(?:[.,]\d+)?|\d+(?:[.,]\d+)?)`;
const MONEY = String.raw`(?:[¤€$£]|euros?\b|eur\b|dollars?\b|pounds?\b|bucks\b|money\b)`;
const AT_MOST = String.raw`(?:[<≤]=?|\b(?:(?:for )?(?:under|below|less than|up to|at most|(?:no|not) more than|within|max(?:imum)?(?: of)?|around|about)|(?:(?:a|the|my) )?budget(?: is| of)?|(?:(?:(?:that|which) )?cost(?:s|ing)?|price[sd]?)(?: under| below| less than| up to| at most| of)?|price ?[:=]))`;
const EACH = String.raw`( (?:each|apiece|per (?:speaker|cabinet|side)|a (?:piece|side)))?(?: (?:(?:a|per|for (?:a|the)) pair|in all|in total|together))?`;
/** A limit from the wrong side is no wish that can be kept. */
const NOT_ABOVE = String.raw`(?<!\b(?:over|above|more than|at least|from) )`;
const NOT_BELOW = String.raw`(?<!\b(?:under|below|less than|at most) )`;
/** What a driver gives for a voltage or a watt is not how loud it plays. */
const NO_BASIS = String.raw`(?! ?(?:of |at |@ ?|/ ?|per )?(?:sensitivity|efficiency|2[.,]83|1 ?W|W\b|watt))`;
const NO_UNIT = String.raw`(?! ?(?:k?Hz|hertz|dB|decibels?|litres?|liters?|[mck]?m|k?g|W|watts?|ohms?|Ω|%)(?![\p{L}\d]))`;

interface Part {
  readonly what: keyof Wish;
  readonly pattern: RegExp;
  read(match: readonly (string | undefined)[]): { readonly value: string | 2 | 3; readonly means: string };
}

const of = (pattern: string): RegExp => new RegExp(pattern, 'giu');

/** In the order in which they are looked for: what was understood once is not looked at again. */
const parts: readonly Part[] = [
  {
    what: 'box',
    pattern: of(
      String.raw`\b(?:in )?(?:an? )?(closed|sealed|vented|ported|reflex|bass[- ]reflex)\b(?: (?:box|boxes|cabinets?|enclosures?)\b)?`,
    ),
    read: ([, kind = '']) => {
      const value = /closed|sealed/i.test(kind) ? 'closed' : 'vented';
      return { value, means: `a ${value} box` };
    },
  },
  {
    what: 'ways',
    pattern: of(String.raw`\b(two|2|three|3)[- ]?ways?\b`),
    read: ([, count = '']) => {
      const ways = /two|2/i.test(count) ? 2 : 3;
      return { value: ways, means: ways === 2 ? 'woofer and tweeter' : 'woofer, mid and tweeter' };
    },
  },
  {
    what: 'ways',
    pattern: of(
      String.raw`\b(?:(?:small )?(?:mains|satellites?|monitors) )?(?:with|and|plus) (?:(?:a|an|some|one or more|one|two|three|four|[1-4]) )?(?:\|+ )?sub(?:woofer)?s?\b|\bsub(?:woofer)?s? (?:with|and|plus) (?:small )?(?:mains|satellites?|monitors)\b`,
    ),
    read: () => ({ value: 'subs', means: 'mains with subs' }),
  },
  {
    what: 'plays',
    pattern: of(
      String.raw`\b(?:plays?|playing|(?:is |gets )?loud(?: enough for)?|levels?|peaks?)(?: ?[:=]| (?:up to|to|at least|at|of|over|above))*? ${NUMBER} ?(?:dB|decibels?)?(?: ?SPL)?${NO_BASIS}(?! ?(?:k?Hz|hertz)\b|\d)`,
    ),
    read: ([, number = '']) => ({ value: `${number} dB`, means: `${number} dB or more at 1 m` }),
  },
  {
    what: 'plays',
    pattern: of(
      String.raw`${NOT_BELOW}(?:\b(?:up to|to|at least|over|above) )?\b${NUMBER} ?(?:dB|decibels?)\b(?: ?SPL)?${NO_BASIS}`,
    ),
    read: ([, number = '']) => ({ value: `${number} dB`, means: `${number} dB or more at 1 m` }),
  },
  {
    what: 'reach',
    pattern: of(
      String.raw`\b(?:(?:reach(?:es|ing)?|goes|going|extends?|bass|F3)(?: ?[:=]| (?:down|of|at|to|below|as low as|at least))*|down to|as low as|from) ${NUMBER}(?: ?(?:Hz|hertz))?\b(?! ?(?:dB|decibels?|${MONEY}))`,
    ),
    read: ([, number = '']) => ({ value: `${number} Hz`, means: `${number} Hz or lower` }),
  },
  {
    what: 'reach',
    pattern: of(String.raw`\b${NUMBER} ?(?:Hz|hertz)\b`),
    read: ([, number = '']) => ({ value: `${number} Hz`, means: `${number} Hz or lower` }),
  },
  {
    what: 'price',
    pattern: of(
      String.raw`${NOT_ABOVE}(?:${AT_MOST} ?${MONEY}? ?${NUMBER}(?: ?${MONEY})?|\b(?:for )?${NUMBER} ?${MONEY}|${MONEY} ?${NUMBER}|\bfor ${NUMBER}|\b${NUMBER}(?= ?(?:max(?:imum)?|or less|at most|in all|in total|total)\b))(?![\d.,]*\d)${NO_UNIT}(?: ?(?:max(?:imum)?|or less|at most|total)\b)?${EACH}`,
    ),
    read: ([, first, second, third, fourth, fifth, each]) => {
      const typed = wholeThousands(first ?? second ?? third ?? fourth ?? fifth ?? '');
      const number =
        each === undefined ? typed : String(2 * Number(typed.replaceAll(/[ \u00A0\u2009]/g, '').replace(',', '.')));
      return { value: number, means: `${number} at most for the drivers of a pair` };
    },
  },
  {
    what: 'ranking',
    pattern: of(String.raw`\b(?:the )?(cheapest|deepest|lowest|loudest)\b(?: first)?`),
    read: ([, most = '']) => {
      const by = /cheapest/i.test(most) ? '-price' : /loudest/i.test(most) ? 'plays' : '-reach';
      return { value: by, means: `the ${most.toLowerCase()} first` };
    },
  },
];

/** Money has two decimals, if any: three digits behind a comma or a point are thousands. */
const wholeThousands = (money: string): string =>
  /^\d{1,3}[.,]\d{3}$/.test(money) ? money.replace(/[.,]/, '') : money;

/** Words that ask for nothing by themselves. */
const FILLING = new Set(
  'a an the that this which and with for of me i im we us want need would like looking look find show give get some any it its is are be can should must could to at on in my our please box cabinet cabinets speaker speakers loudspeaker loudspeakers pair pairs driver drivers one system m 1 meter metre something'.split(
    ' ',
  ),
);

/** Reads a wish such as “a two-way under 300 that reaches 45 Hz and plays 103 dB”. Nothing is guessed: what is not understood, or
 *  said a second time, is handed back in the reader's words. */
export function readWish(sentence: string): WishRead {
  const said = sentence.replaceAll(/\s+/g, ' ');
  let rest = said;
  const wish: { -readonly [What in keyof Wish]: Wish[What] } = {};
  const understood: { at: number; words: string; means: string }[] = [];
  for (const { what, pattern, read } of parts)
    rest = rest.replaceAll(pattern, (words: string, ...found: unknown[]) => {
      if (wish[what] !== undefined) return words;
      const at = found.find((each): each is number => typeof each === 'number') ?? 0;
      const { value, means } = read([words, ...(found as (string | undefined)[])]);
      Object.assign(wish, { [what]: value });
      understood.push({ at, words: said.slice(at, at + words.length).trim(), means });
      // What was understood parts what stands on its two sides; the places of the rest stay the same.
      return '|'.repeat(words.length);
    });
  return {
    wish,
    understood: understood.toSorted((a, b) => a.at - b.at).map(({ words, means }) => ({ words, means })),
    left: rest.split(/[|;,.!?()]+(?!\d)/).flatMap(phraseLeft),
  };
}

/** A phrase without the filling words at its ends, if anything is left of it. */
function phraseLeft(phrase: string): readonly string[] {
  const words = phrase.trim().split(' ');
  const isFilling = (word: string): boolean =>
    word === '' || FILLING.has(word.toLowerCase().replaceAll(/[^\p{L}\d]/gu, ''));
  const first = words.findIndex((word) => !isFilling(word));
  return first === -1 ? [] : [words.slice(first, words.findLastIndex((word) => !isFilling(word)) + 1).join(' ')];
}
