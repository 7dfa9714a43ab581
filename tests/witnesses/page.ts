import { catalogue } from '../../functions/index.ts';
import type { AnyFunction, Parameter } from '../../functions/define.ts';
import type { QuantityName } from '../../functions/quantities.ts';
import { sources } from '../../functions/sources.ts';
import type { SheetEngine } from '../../src/engine/types.ts';
import { show } from '../../src/units/show.ts';
import { ask } from './ask.ts';
import { apartOf } from './disagreement.ts';
import { identities } from './identities.ts';
import type { Identity } from './identity.ts';
import { witnesses } from './index.ts';
import { simulated } from './simulated.ts';
import { shareOf, vouchedBy, type Witness } from './witness.ts';

const confirmations = {
  read: 'text read',
  memory: 'from memory',
  computed: 'computed independently',
  practice: 'common practice, no source',
} as const;

function quantified(value: number, quantity: QuantityName | 'any'): string {
  const { number, unit } = show(value, { quantity: quantity === 'any' ? 'ratio' : quantity, system: 'metric' });
  return unit === '' ? number : `${number} ${unit}`;
}

/** What may be given for a parameter. */
function rangeOf(parameter: Parameter): string {
  if ('record' in parameter) return parameter.record;
  if ('choice' in parameter) return parameter.choice.join(', ');
  if ('table' in parameter) return 'range of cells';
  if (!('quantity' in parameter)) return 'text' in parameter ? 'text' : 'true or false';
  const { quantity, min, max, above, below, typical } = parameter;
  const limit = (word: string, value: number | undefined): string =>
    value === undefined ? '' : `, ${word} ${quantified(value, quantity)}`;
  const limits = `${limit('above', above)}${limit('from', min)}${limit('to', max)}${limit('below', below)}`;
  const usual =
    typical === undefined ? '' : `; usual ${typical.map((each) => quantified(each, quantity)).join(' to ')}`;
  return `${quantity}${limits}${usual}`;
}

function defaultOf(parameter: Parameter): string {
  if (!('default' in parameter)) return 'optional' in parameter ? 'may be left out' : '';
  const { default: value } = parameter;
  if (value === undefined) return '';
  return typeof value === 'number' && 'quantity' in parameter
    ? `when left out ${quantified(value, parameter.quantity)}`
    : `when left out ${String(value)}`;
}

/** A cell of a table: one line, its bars escaped. */
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ↵ ');
const row = (...cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

/** Difference from what is expected, relative where that is not nought. */
function difference({ gives }: Witness, got: number | string): string {
  if (typeof gives === 'string' || typeof got === 'string') return got === gives ? 'same' : 'another';
  const apart = Math.abs(got - gives);
  return gives === 0 ? apart.toExponential(1) : `${((100 * apart) / Math.abs(gives)).toPrecision(2)} %`;
}

/** A check as it is listed, and how far it is from its witness as a share of what is allowed. */
interface Row {
  readonly line: string;
  readonly share: number;
}

async function witnessRow(engine: SheetEngine, witness: Witness): Promise<Row> {
  const got = await ask(engine, witness);
  const share = shareOf(witness, got);
  const verdict = share <= 1 ? 'agrees' : `**disagrees${witness.disagrees === undefined ? '' : ', as expected'}**`;
  const why = witness.disagrees === undefined ? '' : ` ${witness.disagrees}`;
  const number = typeof got === 'number' ? String(Number(got.toPrecision(9))) : got;
  const cells = Object.entries(witness.cells ?? {}).map(([address, typed]) => `${address} ${typed}`);
  const asked = `\`${witness.formula}\`${cells.length === 0 ? '' : ` where ${cells.join(', ')}`}${witness.field === undefined ? '' : `, its ${witness.field}`}`;
  return {
    line: row(
      asked,
      String(witness.gives),
      number,
      difference(witness, got),
      `${verdict}: ${witness.source} (${confirmations[witness.confirmed]}).${why}`,
    ),
    share: witness.disagrees === undefined ? share : 0,
  };
}

function simulatedRows(name: string): readonly string[] {
  return simulated
    .filter(({ vouches }) => vouches.includes(name))
    .map((each) => {
      const apart = apartOf(each.name);
      const found =
        apart === undefined
          ? 'not measured here: run the tests'
          : `at most ${apart.decibels.toExponential(1)} dB and ${apart.degrees.toExponential(1)}° apart`;
      return `- Simulated circuit, ${each.name} (\`${each.test}\`): ${found}.`;
    });
}

const identitiesOf = (name: string): readonly Identity[] => identities.filter(({ vouches }) => vouches.includes(name));

/** The checks of another nature, and how far apart their two sides are. */
async function identityRows(engine: SheetEngine, name: string): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const { nature, formula, equals, cells, within, because } of identitiesOf(name)) {
    const given = cells === undefined ? {} : { cells };
    const [one, other] = [await ask(engine, { formula, ...given }), await ask(engine, { formula: equals, ...given })];
    const apart = Math.abs(Number(one) / Number(other) - 1);
    rows.push({
      line: `- ${nature.charAt(0).toUpperCase()}${nature.slice(1)}, ${apart.toExponential(1)} apart: ${because}; \`${formula}\` and \`${equals}\`.`,
      share: apart / within,
    });
  }
  return rows;
}

async function section(engine: SheetEngine, definition: AnyFunction): Promise<string> {
  const { name, summary, parameters, returns, source, example, remarks } = definition;
  const own = witnesses.filter((witness) => vouchedBy(witness).includes(name));
  const rows = [];
  for (const witness of own) rows.push(await witnessRow(engine, witness));
  const again = await identityRows(engine, name);
  const worst = Math.max(0, ...[...rows, ...again].map(({ share }) => share));
  const gives = typeof example.gives === 'object' ? JSON.stringify(example.gives) : String(example.gives);
  return [
    `### ${name}`,
    summary,
    [
      row('Parameter', 'Means', 'Takes', ''),
      row('---', '---', '---', '---'),
      ...Object.entries(parameters).map(([key, each]) => row(key, each.summary, rangeOf(each), defaultOf(each))),
    ].join('\n'),
    `Gives: ${returns.summary}. Source: ${sources[source.source].title}; ${source.at}.`,
    `Example: \`${example.formula}\` gives ${gives} (SI).`,
    ...(remarks === undefined ? [] : [remarks]),
    [
      row('Witness', 'Expected', 'Got', 'Apart', 'Source'),
      row('---', '---', '---', '---', '---'),
      ...rows.map(({ line }) => line),
    ].join('\n'),
    ...simulatedRows(name),
    ...again.map(({ line }) => line),
    `Worst disagreement: ${(100 * worst).toPrecision(2)} % of what is allowed.`,
  ].join('\n\n');
}

/** The functions under the first word of their names, in the order of the catalogue. */
function byFamily(): ReadonlyMap<string, readonly AnyFunction[]> {
  const families = new Map<string, AnyFunction[]>();
  for (const definition of catalogue) {
    const family = definition.name.split('.')[0]!;
    families.set(family, [...(families.get(family) ?? []), definition]);
  }
  return families;
}

/** The reference page, Markdown: every function with what it takes, where it comes from and what vouches for it. */
export async function page(engine: SheetEngine): Promise<string> {
  const parts = [
    '# The functions and what vouches for them',
    `${String(catalogue.length)} functions, ${String(witnesses.length)} numbers from outside, ${String(simulated.length)} simulated circuits, ${String(identities.length)} second checks of another nature, ${String(witnesses.filter(({ disagrees }) => disagrees !== undefined).length)} published numbers that we do not come to. All values in SI.`,
  ];
  for (const [family, members] of byFamily()) {
    parts.push(`## ${family}`);
    for (const member of members) parts.push(await section(engine, member));
  }
  return `${parts.join('\n\n')}\n`;
}
