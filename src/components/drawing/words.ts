/** A text that fits a width: its beginning and a sign that there is more. */
export function shortened(text: string, width: number, measure: (text: string) => number): string {
  if (measure(text) <= width) return text;
  let kept = text;
  while (kept.length > 1 && measure(`${kept}…`) > width) kept = kept.slice(0, -1).trimEnd();
  return `${kept}…`;
}
