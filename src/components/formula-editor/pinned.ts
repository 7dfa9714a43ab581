const CELL = /(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d*)/g;

/** How a reference can stay put when it is copied, its column and its row, in the order in which a key leads through them. */
const ways: readonly (readonly [column: string, row: string])[] = [
  ['', ''],
  ['$', '$'],
  ['', '$'],
  ['$', ''],
];

/** A reference with its next way of staying put: `B4`, `$B$4`, `B$4`, `$B4` and round again; both ends of a range alike. */
export function pinned(reference: string): string {
  const from = reference.lastIndexOf('!') + 1;
  const cells = reference.slice(from);
  const [first] = cells.matchAll(CELL);
  const at = ways.findIndex(([column, row]) => column === first?.[1] && row === first[3]);
  const [column, row] = ways[(at + 1) % ways.length] ?? ['', ''];
  return (
    reference.slice(0, from) +
    cells.replaceAll(CELL, (_, _c, letters: string, _r, digits: string) => column + letters + row + digits)
  );
}
