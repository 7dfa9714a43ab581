import { isRefusal } from '../document/command.ts';
import type { OctavoDocument } from '../document/types.ts';
import { writeFile, readFile } from '../exchange/file.ts';

/** Hands the document to the browser as a file of our own format. */
export function saveToFile(document: OctavoDocument): void {
  const url = URL.createObjectURL(new Blob([writeFile(document)], { type: 'application/json' }));
  const link = window.document.createElement('a');
  link.href = url;
  link.download = `${document.title.replace(/[^\p{L}\p{N} ._-]+/gu, '').trim() || 'sheet'}.octavo.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}

/** Lets the reader choose a file; a sentence where it is no document of ours, nothing where none was chosen. */
export async function openFromFile(): Promise<OctavoDocument | string | undefined> {
  const input = window.document.createElement('input');
  input.type = 'file';
  input.accept = '.json,application/json';
  const file = await new Promise<File | undefined>((resolve) => {
    input.addEventListener('change', () => resolve(input.files?.[0]));
    input.addEventListener('cancel', () => resolve(undefined));
    input.click();
  });
  if (!file) return undefined;
  const document = readFile(await file.text());
  return isRefusal(document) ? `${file.name}: ${document.refused}` : document;
}
