/** Ways in which something leaves the page: as a file, or through the clipboard. */

/** A title as the name of a file, without its ending. */
export const fileName = (title: string): string => title.replace(/[^\p{L}\p{N} ._,-]+/gu, '').trim() || 'sheet';

/** Hands something to the browser as a file. */
export function handOut(content: BlobPart, name: string, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = window.document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}

/** A byte order mark first: without it some spreadsheets take the letters of units for others. */
export const handOutCsv = (title: string, csv: string): void =>
  handOut(`\uFEFF${csv}`, `${fileName(title)}.csv`, 'text/csv;charset=utf-8');

/** Copies a text; whether the browser allowed it. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
