import { parseAst } from 'vite';

export interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [part: string]: unknown;
}

/** What a code says: names by themselves, as of functions and classes; names of properties; and single words in quotes,
 *  which may be either. */
export interface Said {
  readonly names: Set<string>;
  readonly properties: Set<string>;
  readonly quoted: Set<string>;
}

export const nothingSaid = (): Said => ({ names: new Set(), properties: new Set(), quoted: new Set() });

/** What a module says of its own: neither what it imports nor what it hands on. */
export function saidIn(code: string): Said {
  const said = nothingSaid();
  hear(parseAst(code, { lang: 'ts' }).body, said);
  return said;
}

/** Notes what a part of a program says.
 *
 * @param otherwise - Deals with a part in its own way, and tells whether it has. */
export function hear(part: unknown, by: Said, otherwise: (node: Node) => boolean = () => false): void {
  if (Array.isArray(part)) for (const each of part) hear(each, by, otherwise);
  if (!isNode(part) || part.type === 'ImportDeclaration' || part['declaration'] === null || otherwise(part)) return;
  if (part.type === 'Identifier') by.names.add(nameOf(part));
  if (part.type === 'Literal' && typeof part['value'] === 'string' && /^[\w$]+$/.test(part['value']))
    by.quoted.add(part['value']);
  for (const [key, inner] of Object.entries(part)) {
    const isKey = (key === 'property' || key === 'key') && part['computed'] !== true;
    if (isKey && isNode(inner) && inner.type === 'Identifier') by.properties.add(nameOf(inner));
    else hear(inner, by, otherwise);
  }
}

export const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;
export const nameOf = (identifier: unknown): string => (identifier as { readonly name?: string }).name ?? '';
