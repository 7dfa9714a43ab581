/** Reads tab-separated text as copied from any sheet: quoted fields may hold tabs, quotes (doubled) and line breaks. */
export function readTable(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let position = 0;
  const ended = text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
  for (;;) {
    const [field, next] = readField(ended, position);
    row.push(field);
    const separator = ended[next];
    if (separator !== '\t') {
      rows.push(row);
      row = [];
    }
    if (separator === undefined) return rows;
    position = next + 1;
  }
}

/** One field and where it ends. A quote that is never closed is taken as an ordinary character. */
function readField(text: string, start: number): [field: string, end: number] {
  if (text[start] === '"') {
    const quoted = /"((?:[^"]|"")*)"(?=[\t\n]|$)/y;
    quoted.lastIndex = start;
    const match = quoted.exec(text);
    if (match) return [(match[1] ?? '').replaceAll('""', '"'), quoted.lastIndex];
  }
  const plain = /[^\t\n]*/y;
  plain.lastIndex = start;
  return [plain.exec(text)?.[0] ?? '', plain.lastIndex];
}
