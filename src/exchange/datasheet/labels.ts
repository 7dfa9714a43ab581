import { basisOf } from '../../../functions/driver/basis.ts';
import { bases, meaningOf, type RowMeaning } from '../../document/shelf/entry.ts';
import type { Unit } from '../../units/table.ts';
import { unitSpelt } from './units.ts';

/** What a label of a datasheet says: what it names, and what stands in it beside that. */
export interface LabelRead {
  readonly meaning: RowMeaning;
  /** Why nothing is taken from it, where it names something that only looks like a parameter. */
  readonly why?: string;
  readonly unit?: Unit | undefined;
}

/** Labels that hold a word of a parameter and name something else. */
const others: readonly (readonly [RegExp, string])[] = [
  [/\bmmd\b|without air/, 'the mass without its air load is no Mms'],
  [
    /\bx ?(?:mech|lim|damage)\b|mechanical (?:limit|travel|excursion)|(?:max|peak)\S* mechanical/,
    'the mechanical limit is no linear travel',
  ],
  [/\bvd\b|(?:peak|volume) displacement/, 'Sd times Xmax follows from the two'],
  [/thermal resistance|\brth\b/, 'no row of a driver'],
  [/max\S* (?:spl|level)|(?:spl|level) max/, 'the largest level is no sensitivity'],
  [/(?:long|short)[- ]term|\bpeak power|music power|program|max\S* power/, 'only the lasting power is a heat limit'],
  [/winding|coil (?:diam|height|length)|\bgap\b|magnet|former|weight|range|cut-?out|efficiency/, 'no row of a driver'],
  [/\b(?:min|max)\S* impedance|\bz(?:min|max)\b/, 'only the nominal ohms are a row'],
];

const more: readonly (readonly [RegExp, Exclude<RowMeaning, undefined>])[] = [
  [/^(?:name|driver|model|type|part(?: no\.?)?|driver name|model name|unit name)$/, 'name'],
  [/\bpower\b|^p ?(?:nom|rms)\b/, 'pe'],
  [/^(?:rated |nominal )?(?:impedance|z|zn|z nom)\b/, 'nominal'],
  [/\b(?:dcr|revc|r ?dc)\b/, 're'],
  [/\b(?:lvc|levc)\b/, 'le'],
  [/\bb ?[x*·×]? ?l\b/, 'bl'],
  [/\bx ?lin\b/, 'xmax'],
  [/\bspl\b|sensitivity/, 'level'],
  [/\bf ?(?:res|o)\b/, 'fs'],
];

/** Subscripts that copying set apart: "Q ts", "V as", "M ms". */
const SPLIT_SYMBOL = /(?<![\p{L}\p{N}])([qvfrlmcs])[ _](ts|es|ms|as|s|e|d)(?![\p{L}\p{N}])/giu;
const BRACKETS = /[([{]([^()[\]{}]*)[)\]}]/g;

export function readLabel(label: string): LabelRead {
  const joined = label.replaceAll(SPLIT_SYMBOL, '$1$2');
  const inside = [...joined.matchAll(BRACKETS)].map(([, words]) => words ?? '');
  const [, bare = joined.replaceAll(BRACKETS, ' '), behind = ''] =
    /^(.*?)(?:,| in |\/)\s*(\S[^,/]{0,12})$/.exec(joined.replaceAll(BRACKETS, ' ').trim()) ?? [];
  const unit = [...inside, behind].map(unitSpelt).find(Boolean);
  const outer = joined.replaceAll(BRACKETS, ' ');
  const plain = (unitSpelt(behind) ? bare : outer).trim().replaceAll(/\s+/g, ' ').toLowerCase();
  // What a symbol in brackets names counts too: "Resonance (Fs)".
  const whole = joined.trim().replaceAll(/\s+/g, ' ').toLowerCase();
  const other = others.find(([pattern]) => pattern.test(whole));
  if (other) return { meaning: undefined, why: other[1] };
  const meaning = more.find(([pattern]) => pattern.test(plain))?.[1] ?? meaningOf(plain) ?? symbolIn(inside);
  return {
    meaning: meaning === 'name' && !/^(?:name|driver|model|type|part|unit name)/.test(plain) ? undefined : meaning,
    unit,
  };
}

const symbolIn = (words: readonly string[]): RowMeaning => {
  for (const each of words) {
    const meaning = unitSpelt(each) ? undefined : meaningOf(each);
    if (meaning !== undefined && meaning !== 'name') return meaning;
  }
  return undefined;
};

/** The basis of a level that a label or a value prints. */
export function basisIn(text: string): { readonly basis: string; readonly remark?: string } | undefined {
  const read = basisOf(text) ?? (/dB ?\/ ?W\b/i.test(text) ? '1 W' : undefined);
  switch (read) {
    case '2.83 V':
      return { basis: bases[0] };
    case '1 W in Re':
      return { basis: bases[2] };
    case '1 W':
      return /nom/i.test(text)
        ? { basis: bases[1] }
        : { basis: bases[1], remark: '1 W is read as into the nominal ohms: change it if Re is meant' };
    default:
      return undefined;
  }
}

/** How a basis and the frequency of a measurement are printed beside a number: neither is the number. */
export const CONDITIONS =
  /@?\s*(?:\b(?:at|for)\s+)?(?:\b2[.,]8\d*\s*V(?:rms|olts?)?|(?<![\d.,])1\s*W(?:atts?)?)(?![\p{L}\p{N}])(?:\s*into\s+(?:Re|nominal)\b)?(?:\s*[/,@-]?\s*(?:at\s+)?1\s*m(?:et(?:er|re))?(?![\p{L}\p{N}]))?/giu;
export const AT_FREQUENCY = /(?:@|\bat\b)\s*\d[\d.,]*\s*k?Hz/gi;
