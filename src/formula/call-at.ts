/** The call in which a place of a formula stands. */
export interface CallAt {
  readonly name: string;
  /** Counted from 0. */
  readonly argument: number;
}

/** The innermost call around a position, also in a formula that is not finished. Reads words and brackets only. */
export function callAt(text: string, position: number): CallAt | undefined {
  const open: { name: string; argument: number }[] = [];
  const pieces = /"(?:[^"]|"")*"?|'(?:[^']|'')*'?|([\p{L}_$][\p{L}\p{N}_.$]*)?\s*\(|[),;]/gu;
  for (const match of text.slice(0, position).matchAll(pieces)) {
    const [piece, name = ''] = match;
    const last = open.at(-1);
    if (piece.endsWith('(') && !/^["']/.test(piece)) open.push({ name: name.toUpperCase(), argument: 0 });
    else if (piece === ')') open.pop();
    else if (last && (piece === ',' || piece === ';')) last.argument++;
  }
  return open.findLast(({ name }) => name !== '');
}
