/** The engine takes exponents in lower case only. */
export const canonicalNumber = (text: string): string => text.toLowerCase();

/** A number as the engine reads it, negative ones in brackets so that no operator binds into them. */
export function engineNumber(value: number): string {
  const text = canonicalNumber(String(value));
  return value < 0 ? `(${text})` : text;
}
