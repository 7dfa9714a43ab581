import { createAnalyst } from '../analysis/analyst.ts';
import type { CheapestQuestion, PricedSetting } from '../analysis/cheapest/types.ts';
import type { Varied } from '../analysis/combine/types.ts';
import type { Bound, Objective } from '../analysis/optimise/types.ts';
import { placeError, QuestionError } from '../analysis/subject/place-error.ts';
import { subjectOf } from '../analysis/subject/subject.ts';
import { typedValue, typedValues } from '../analysis/subject/typed-value.ts';
import type { Span } from '../analysis/types.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { namedDrivers } from '../document/take-over/drivers.ts';
import type { OctavoDocument } from '../document/types.ts';
import { keyOf } from '../engine/cell-index.ts';
import type { Place } from '../engine/types.ts';
import { seriesNames } from '../../functions/electrical/preferred.ts';
import type { QuestionWord } from './ask-arguments.ts';
import { cellAt, endsOf, namedPart, type Flags } from './ask-flags.ts';
import { askShortlist } from './ask-shortlist.ts';

const analyst = createAnalyst();

/** Answers the questions that choose among many.
 *  @throws In words for the reader. */
export async function askMany(
  document: OctavoDocument,
  word: Exclude<QuestionWord, 'sweep' | 'seek' | 'scatter' | 'drives'>,
  flags: Flags,
  shelf: readonly DriverEntry[],
): Promise<unknown> {
  switch (word) {
    case 'map':
      return analyst.map({
        document,
        across: await spanOf(document, flags, 'across'),
        up: await spanOf(document, flags, 'up'),
        result: flags.cell('result'),
        ...(flags.has('verdict') && { verdicts: flags.cells('verdict') }),
      });
    case 'combine':
      return analyst.combine(combineQuestion(document, flags));
    case 'best':
      return analyst.optimise({
        document,
        inputs: await Promise.all(flags.all('vary').map((text) => boundedOf(document, flags, text))),
        objective: await objectiveOf(document, flags),
        ...(flags.has('limit') && {
          limits: await Promise.all(flags.all('limit').map((text) => limitOf(document, flags, text))),
        }),
        ...(flags.has('good') ? { keep: 'good' as const } : flags.has('clear') ? { keep: 'clear' as const } : {}),
      });
    case 'cheapest':
      return analyst.cheapest(cheapestQuestion(document, flags, shelf));
    case 'shortlist':
      return askShortlist(flags, shelf);
  }
}

const SPAN = "NAME=FROM..TO, as in 'Volume=5 L..20 L'";

/** `Volume=5 L..20 L/30`. */
async function spanOf(document: OctavoDocument, flags: Flags, flag: string): Promise<Span> {
  const [name, range] = namedPart(flags.text(flag), flag, "NAME=FROM..TO/STEPS, as in 'Volume=5 L..20 L/30'");
  const [, ends = '', steps = '20'] = /^(.*?)(?:\/\s*(\d+))?$/s.exec(range) ?? [];
  const place = cellAt(document, name);
  const [from, to] = await typedEnds(flags, place, ends, flag);
  return { ...place, from, to, steps: Number(steps), spacing: 'linear' };
}

/** `Volume=5 L..20 L`, or `Volume` alone for its plausible range. */
async function boundedOf(document: OctavoDocument, flags: Flags, text: string): Promise<Place & { range?: Ends }> {
  const [name, ends] = text.includes('=') ? namedPart(text, 'vary', SPAN) : [text, undefined];
  const place = cellAt(document, name);
  return ends === undefined ? place : { ...place, range: await typedEnds(flags, place, ends, 'vary') };
}

type Ends = readonly [from: number, to: number];

async function typedEnds(flags: Flags, place: Place, text: string, flag: string): Promise<Ends> {
  const [from, to] = endsOf(text, flag);
  return [await flags.typedFor(place, from), await flags.typedFor(place, to)];
}

/** `Volume=8 L,10 L`. */
function variedOf(document: OctavoDocument, text: string): Varied {
  const [name, values] = namedPart(text, 'vary', "NAME=VALUES, as in 'Volume=8 L,10 L' or 'Volume=5 L..20 L/4'");
  return valuesFor(document, name, values);
}

function valuesFor(document: OctavoDocument, name: string, values: string): Varied {
  const place = cellAt(document, name);
  const { inputs } = subjectOf(document, () => undefined);
  const input = inputs.find((each) => keyOf(each) === keyOf(place));
  if (!input) throw placeError(document, place, 'no input: name a cell with a typed number');
  return { ...place, values: typedValues(values, input) };
}

function combineQuestion(document: OctavoDocument, flags: Flags) {
  const by = flags.has('most') ? ('most' as const) : ('least' as const);
  return {
    document,
    inputs: flags.all('vary').map((text) => variedOf(document, text)),
    results: flags.cells('result'),
    ...((flags.has('least') || flags.has('most')) && { order: { result: flags.cell(by), by } }),
    ...(flags.has('works') && { works: true as const }),
    most: flags.number('rows', 20),
  };
}

async function objectiveOf(document: OctavoDocument, flags: Flags): Promise<Objective> {
  if (flags.has('flat')) {
    const band = { label: '--band', quantity: 'frequency', unit: 'Hz' } as const;
    const [from, to] = endsOf(flags.text('band'), 'band');
    return {
      kind: 'flattest',
      result: flags.cell('flat'),
      from: typedValue(from, band),
      to: typedValue(to, band),
    };
  }
  if (flags.has('nearest')) {
    const [name, target] = namedPart(flags.text('nearest'), 'nearest', "NAME=VALUE, as in 'Qtc=0.707'");
    const result = cellAt(document, name);
    return { kind: 'nearest', result, target: await flags.typedFor(result, target) };
  }
  return flags.has('most')
    ? { kind: 'most', result: flags.cell('most') }
    : { kind: 'least', result: flags.cell('least') };
}

/** `Fall3<=50 Hz`. */
async function limitOf(document: OctavoDocument, flags: Flags, text: string): Promise<Bound> {
  const [, name = '', sign, written = ''] = /^([^<>]+?)\s*([<>])=?\s*([^<>]+)$/.exec(text) ?? [];
  if (sign === undefined)
    throw new QuestionError(`--limit wants NAME<=Q or NAME>=Q, as in 'Fall3<=50 Hz', but got “${text}”.`);
  const place = cellAt(document, name);
  return { ...place, at: sign === '<' ? 'most' : 'least', value: await flags.typedFor(place, written) };
}

/** All drivers of the document may be changed where none is named. */
export function cheapestQuestion(
  document: OctavoDocument,
  flags: Flags,
  shelf: readonly DriverEntry[],
): CheapestQuestion {
  const all = document.sheets.flatMap((sheet) => namedDrivers(sheet).map(([name]) => name));
  const series = flags.choice('series', ['E12', ...seriesNames]);
  const cost = flags.text('cost', 'money');
  const settings = [
    ...flags.all('part').map((name) => valuesFor(document, name, series)),
    ...flags.all('vary').map((text) => variedOf(document, text)),
  ];
  return {
    document,
    shelf,
    drivers: flags.has('driver') ? flags.all('driver') : all,
    settings: priced(document, settings, flags.all('price')),
    cost: cost === 'money' || cost === 'changes' ? cost : cellAt(document, cost),
    changes: flags.number('changes', 2),
    ...(flags.has('clear') && { orCaution: true as const }),
  };
}

/** `Coil=4 + 0.9 * value`: what one of something that may be set costs. */
function priced(document: OctavoDocument, settings: readonly Varied[], prices: readonly string[]): PricedSetting[] {
  const all = new Map(settings.map((each): [string, PricedSetting] => [keyOf(each), each]));
  for (const text of prices) {
    const [name, price] = namedPart(text, 'price', "NAME=FORMULA, as in 'Coil=4 + 0.9 * value'");
    const place = cellAt(document, name);
    const setting = all.get(keyOf(place));
    if (!setting) throw placeError(document, place, 'priced, but may not be set: name it by --part or --vary too');
    all.set(keyOf(place), { ...setting, price });
  }
  return [...all.values()];
}
