import { isRefusal } from '../document/command.ts';
import type { OctavoDocument } from '../document/types.ts';
import { writeFile, readFile } from '../exchange/file.ts';

/** Hands the document to the browser as a file of our own format. */
export function saveToFile(document: OctavoDocument): void {
  const title = document.title.replace(/[^\p{L}\p{N} ._-]+/gu, '').trim() || 'sheet';
  offerFile(writeFile(document), `${title}.octavo.json`);
}

/** Hands a text to the browser as a file. */
export function offerFile(text: string, name: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = window.document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}

/** Lets the reader choose a file; a sentence where it is no document of ours, nothing where none was chosen. */
export async function openFromFile(): Promise<OctavoDocument | string | undefined> {
  const file = await chooseFile();
  if (!file) return undefined;
  const document = readFile(await file.text());
  return isRefusal(document) ? `${file.name}: ${document.refused}` : document;
}

/** Lets the reader choose a file; nothing where none was chosen. */
export function chooseFile(): Promise<File | undefined> {
  const input = window.document.createElement('input');
  input.type = 'file';
  input.accept = '.json,application/json';
  return new Promise((resolve) => {
    input.addEventListener('change', () => resolve(input.files?.[0]));
    input.addEventListener('cancel', () => resolve(undefined));
    input.click();
  });
}
