import { parseAst } from 'vite';

interface Property {
  readonly start: number;
  readonly end: number;
  readonly key: { readonly name?: string; readonly value?: string };
}
interface Assignment {
  readonly type: string;
  readonly expression?: {
    readonly left?: { readonly property?: { readonly name?: string } };
    readonly right?: { readonly properties?: readonly Property[] };
  };
}

/** A part of the calculation engine whose lists of functions and of their other names keep only what is wanted. */
export function withoutFunctions(code: string, isWanted: (name: string) => boolean): string {
  const lists = (parseAst(code).body as unknown as readonly Assignment[]).flatMap(({ expression }) =>
    /^(implementedFunctions|aliases)$/.test(expression?.left?.property?.name ?? '')
      ? [expression?.right?.properties ?? []]
      : [],
  );
  let lean = code;
  for (const { start, end, key } of lists.flat().toReversed())
    if (!isWanted(key.name ?? key.value ?? '')) lean = lean.slice(0, start) + lean.slice(end).replace(/^\s*,/, '');
  return lean;
}
